#include "arrange/measures/all.h"
#include "arrange/measures/scratch.h"

#include <fmt/format.h>

#include <algorithm>
#include <span>

namespace wallwright::arrange {

namespace {

constexpr double kHalfAt = 0.25;  ///< Mean step, as a share of the size across, that counts half.

/// A piece as seen along one axis: the stretch that it covers, and how near it comes to both sides.
struct Bar {
    double from = 0;
    double to = 0;
    double low = 0;
    double high = 0;
};

/// With `margin` mm more at both ends of the stretch.
Bar bar_of(const WallRect& place, spacing::Axis across, double margin) {
    return across == spacing::Axis::vertical
               ? Bar{place.left() - margin, place.right() + margin, place.bottom(), place.top()}
               : Bar{place.bottom() - margin, place.top() + margin, place.left(), place.right()};
}

/// The nearest that any piece comes to the low and to the high side.
struct Nearest {
    double low = 0;
    double high = 0;
};

void fill_edges(std::span<const Bar> bars, std::span<double> edges) {
    for (std::size_t i = 0; i < bars.size(); ++i) {
        edges[2 * i] = bars[i].from;
        edges[2 * i + 1] = bars[i].to;
    }
    std::ranges::sort(edges);
}

/// Between each edge and the next: `nearest` as far as the bars come.
void bring_near(std::span<const Bar> bars, std::span<const double> edges,
                std::span<Nearest> nearest) {
    for (const Bar& bar : bars) {
        const auto first = std::ranges::lower_bound(edges, bar.from);
        auto at = static_cast<std::size_t>(first - edges.begin());
        for (; at < edges.size() && edges[at] < bar.to; ++at) {
            nearest[at].low = std::min(nearest[at].low, bar.low);
            nearest[at].high = std::max(nearest[at].high, bar.high);
        }
    }
}

/// mm from the two sides that bound the group across the axis to the first piece seen from them, on
/// average over both; where none is seen, the whole size. Pieces cover half of the gaps beside
/// them.
double mean_step(const View& view, spacing::Axis across) {
    const double margin = view.task().gap / 2;
    const Bar bounds = bar_of(view.bounds_from_floor(), across, 0);
    Scratch<Bar, 32> bars(view.size());
    for (std::size_t i = 0; i < view.size(); ++i)
        bars.all()[i] = bar_of(view.from_floor(i), across, margin);
    Scratch<double, 64> room(2 * view.size());
    const std::span<double> edges = room.all();
    fill_edges(bars.all(), edges);
    Scratch<Nearest, 64> nearest(edges.size());
    std::ranges::fill(nearest.all(), Nearest{bounds.high, bounds.low});
    bring_near(bars.all(), edges, nearest.all());
    double area = 0;
    for (std::size_t i = 0; i + 1 < edges.size(); ++i) {
        const Nearest& one = nearest.all()[i];
        area += (edges[i + 1] - edges[i]) * (one.low - bounds.low + bounds.high - one.high);
    }
    return area / 2 / (edges.back() - edges.front());
}

double value(const View& view) {
    const double upright =
        mean_step(view, spacing::Axis::vertical) / view.bounds_from_floor().height();
    const double sideways =
        mean_step(view, spacing::Axis::horizontal) / view.bounds_from_floor().width();
    const double ratio = (upright + sideways) / 2 / kHalfAt;
    return 1 / (1 + ratio * ratio);
}

std::string says(const View& view, units::LengthUnit unit) {
    return fmt::format("The outline steps in by {} on average at top and bottom, {} at the sides.",
                       units::format_length(mean_step(view, spacing::Axis::vertical), unit),
                       units::format_length(mean_step(view, spacing::Axis::horizontal), unit));
}

}  // namespace

const Measure kRaggedEdge{
    "ragged_edge",
    "Calm outline",
    "with r the mean over the four sides of the distance to the first piece seen from it, over the "
    "size across: 1 / (1 + (4 r)^2)",
    "our choice, no source",
    1.5,
    value,
    says,
};

}  // namespace wallwright::arrange
