#include "mounts/match/fitting.h"

#include "mounts/design/mount_design.h"
#include "units/length.h"
#include "wall/lab.h"

#include <algorithm>
#include <cmath>

namespace wallwright::mounts {

namespace {

using geometry::kLengthEps;
using geometry::Size;

/// mm of card that must be seen beside a print: what a floating one keeps clear.
constexpr double kShownLeast = kFloatClear;

double narrowest(const Borders& borders) {
    return std::min({borders.left, borders.right, borders.top, borders.bottom});
}

bool goes_into(Size sheet, Size room) {
    return sheet.width <= room.width + kLengthEps && sheet.height <= room.height + kLengthEps;
}

void charge(Fitting& fitting, Flaw flaw, double measured) {
    // What is left by rounding is no flaw.
    const double real = measured > kLengthEps ? measured : 0;
    fitting.flaws[static_cast<std::size_t>(flaw)] = {
        flaw, real, static_cast<Cost>(std::llround(100 * points_for(flaw) * real))};
}

/// Wherever the sheet slips to in the rebate, the lip still covers its edges.
std::optional<Fitting> bare(const wall::Frame& frame, const wall::Print& print) {
    const Size sight = sight_size(frame);
    const Size least{sight.width + frame.rebate_width, sight.height + frame.rebate_width};
    if (!goes_into(least, print.size))
        return std::nullopt;
    Fitting fitting;
    charge(fitting, Flaw::colour, colour_distance(frame.colour, print.colour));
    return fitting;
}

bool is_open(const MountDesign& design) {
    const auto opens = [](const Window& window) {
        return window.back.width() > 0 && window.back.height() > 0;
    };
    return std::ranges::all_of(design.layers.back().windows, opens);
}

std::optional<Fitting> behind(wall::Mount mount, const wall::Frame& frame,
                              const wall::Print& print) {
    mount.openings.clear();
    mount.by_hand.reset();
    const MountDesign design = design_mount(frame, mount, {print});
    const double least = narrowest(design.seen);
    if (least < kShownLeast - kLengthEps || !is_open(design))
        return std::nullopt;
    Fitting fitting;
    fitting.mounted = true;
    fitting.seen = design.seen;
    const LaidPrint& laid = design.prints.front();
    charge(fitting, Flaw::uneven,
           std::abs((design.seen.left + design.seen.right) / 2 - design.seen.top));
    charge(fitting, Flaw::thin, mount.border_least - least);
    charge(fitting, Flaw::crop,
           design.floats ? 0 : std::max(laid.across, laid.down) - mount.overlap);
    charge(fitting, Flaw::wide, least - border_most(print.size));
    charge(fitting, Flaw::colour,
           (colour_distance(frame.colour, print.colour) +
            colour_distance(mount.colour, print.colour)) /
               2);
    return fitting;
}

std::optional<Fitting> cheaper(const std::optional<Fitting>& first,
                               const std::optional<Fitting>& second) {
    if (!first || (second && second->cost() < first->cost()))
        return second;
    return first;
}

std::optional<Fitting> fitting_as(const Holder& holder, bool turned, const wall::Print& print) {
    const wall::Frame frame = as_hung(holder.frame, turned);
    if (!goes_into(print.size, blank_size(frame)))
        return std::nullopt;
    std::optional<Fitting> best = cheaper(bare(frame, print), behind(holder.mount, frame, print));
    if (best)
        best->turned = turned;
    return best;
}

}  // namespace

double border_most(Size print) {
    constexpr double kUsual = 3 * units::kMmPerInch;
    constexpr double kUpTo = 10 * units::kMmPerInch;
    return kUsual + std::max(0.0, std::max(print.width, print.height) - kUpTo) / 4;
}

Cost Fitting::cost() const {
    Cost cost = 0;
    for (const FlawCost& one : flaws)
        cost += one.cost;
    return cost;
}

std::optional<Fitting> best_fitting(const Holder& holder, const wall::Print& print) {
    const std::optional<Fitting> as_now = fitting_as(holder, holder.turned, print);
    return holder.may_turn ? cheaper(as_now, fitting_as(holder, !holder.turned, print)) : as_now;
}

}  // namespace wallwright::mounts
