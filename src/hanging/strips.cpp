#include "hanging/strips.h"

#include "base/contract.h"

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

namespace {

constexpr double kInset = 3;  ///< mm from the frame's edges to the strip.
constexpr double kBetween =
    5;  ///< mm between strips one above the other, so that a tab can be gripped; our choice.
constexpr double kRounding = 1e-9;  ///< A count that misses a whole number by less is that number.

double inset_of(geometry::Size footprint, const FrameBack& back) {
    const double spare_across = std::min(back.moulding_width, back.outside.width) - footprint.width;
    const double spare_down = back.outside.height - footprint.height;
    return std::clamp(std::min(spare_across, spare_down) / 2, 0.0, kInset);
}

/// Middles of the strips across the frame: left and right, or one in the middle of a very narrow
/// frame.
std::vector<double> columns(geometry::Size footprint, const FrameBack& back, double inset) {
    const double width = back.outside.width;
    const double edge = inset + footprint.width / 2;
    if (2 * edge + footprint.width <= width)
        return {edge, width - edge};
    if (footprint.width <= width)
        return {width / 2};
    return {};
}

/// Middles of at most `most` strips down the frame, in the order in which they are used: top,
/// bottom, then below the top.
std::vector<double> rows(geometry::Size footprint, const FrameBack& back, double inset, int most) {
    const double step = footprint.height + kBetween;
    const double room = back.outside.height - 2 * inset + kBetween;
    const int count = static_cast<int>(std::min(std::floor(room / step + kRounding), 1.0 * most));
    const double top = inset + footprint.height / 2;
    if (count < 1)
        return {};
    std::vector<double> middles{top};
    if (count > 1)
        middles.push_back(back.outside.height - top);
    for (int row = 1; row + 1 < count; ++row)
        middles.push_back(top + row * step);
    return middles;
}

}  // namespace

int pairs_needed(Kilograms mass, Kilograms rated, double margin) {
    WW_EXPECT(rated.value > 0, "a strip is rated for more than nothing");
    const double pairs = std::ceil(margin * (mass / rated) - kRounding);
    return static_cast<int>(std::clamp(pairs, 2.0, 1e6));
}

Newtons top_pull(Newtons weight, double x, double h) {
    WW_EXPECT(h > 0, "the top strips are above the frame's lower edge");
    return (x / h) * weight;
}

std::vector<Share> shares_of(const std::vector<BackPoint>& middles, geometry::Size outside) {
    const auto count = static_cast<double>(middles.size());
    BackPoint centre;
    for (const BackPoint& middle : middles)
        centre = {centre.across + middle.across / count, centre.down + middle.down / count};
    double spread = 0;
    for (const BackPoint& middle : middles)
        spread +=
            std::pow(middle.across - centre.across, 2) + std::pow(middle.down - centre.down, 2);
    const double off = outside.width / 2 - centre.across;
    const double turn = spread > 0 ? off / spread : 0;
    std::vector<Share> shares;
    for (const BackPoint& middle : middles)
        shares.push_back({1 / count + turn * (middle.across - centre.across),
                          -turn * (middle.down - centre.down)});
    return shares;
}

std::vector<BackPoint> lay_out(int pairs, geometry::Size footprint, const FrameBack& back) {
    const double inset = inset_of(footprint, back);
    const std::vector<double> across = columns(footprint, back, inset);
    std::vector<BackPoint> middles;
    for (const double down : rows(footprint, back, inset, pairs))
        for (const double x : across)
            if (static_cast<int>(middles.size()) < pairs)
                middles.push_back({x, down});
    return middles;
}

}  // namespace wallwright::hanging
