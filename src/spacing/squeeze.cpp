#include "spacing/squeeze.h"

#include "spacing/rounding.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace wallwright::spacing {

namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr double kNarrowerBy = 1e-6;  // mm; squeezing by less would not be worth another round

bool is_gap(const Layout& layout, const Cause& cause) {
    return (cause.kind == Cause::Kind::kept_apart || cause.kind == Cause::Kind::even_gap) &&
           !layout.body(cause.pair.first).obstacle && !layout.body(cause.pair.second).obstacle;
}

/// The gaps that run one way round the ring, each to become what they are on average and `more`
/// shared.
std::optional<Adjustment> share(const Layout& layout, const std::vector<RingPart>& ring,
                                bool forward, double more) {
    Adjustment adjustment;
    double sum = more;
    for (const RingPart& part : ring) {
        if (part.forward == forward && is_gap(layout, part.cause)) {
            adjustment.pairs.push_back(part.cause.pair);
            sum += part.cause.gap;
        }
    }
    adjustment.gap = sum / static_cast<double>(adjustment.pairs.size());
    if (adjustment.pairs.empty() || adjustment.gap < 0) {
        return std::nullopt;
    }
    return adjustment;
}

Side nearest_side(const Layout& layout, Pair pair) {
    return *std::ranges::min_element(
        kSides, {}, [&](Side side) { return without_rounding(layout.shortfall(pair, side)); });
}

/// True when the row was squeezed, so that some pairs may now be nearer to each other.
bool squeeze(Layout& layout, const std::vector<RingPart>& ring) {
    if (let_groups_meet(layout, ring)) {
        return true;
    }
    const std::optional<Adjustment> narrower = adjustment_of(layout, ring);
    if (!narrower) {
        return false;
    }
    bool changed = false;
    for (const Pair pair : narrower->pairs) {
        changed = changed || narrower->gap < layout.distance(pair) - kNarrowerBy;
        layout.allow(pair, std::min(narrower->gap, layout.distance(pair)));
    }
    return changed;
}

Obstruction obstruction_of(Layout& layout, Pair pair, Side nearest) {
    Obstruction obstruction{pair, axis_of(nearest), {}};
    const Layout::Mark before = layout.mark();
    if (layout.part(pair, nearest)) {
        layout.undo(before);
    } else {
        obstruction.ring = layout.ring(obstruction.axis);
    }
    return obstruction;
}

}  // namespace

std::optional<Adjustment> adjustment_of(const Layout& layout, const std::vector<RingPart>& ring) {
    double excess = 0;
    for (const RingPart& part : ring) {
        excess += part.forward ? part.gap : -part.gap;
    }
    if (std::optional<Adjustment> wider = share(layout, ring, excess < 0, std::abs(excess))) {
        return wider;
    }
    return share(layout, ring, excess > 0, -std::abs(excess));
}

bool let_groups_meet(Layout& layout, const std::vector<RingPart>& ring) {
    bool any = false;
    for (const RingPart& part : ring) {
        if (part.cause.kind == Cause::Kind::other_group) {
            layout.allow(part.cause.pair, layout.gap());
            any = true;
        }
    }
    return any;
}

std::optional<Obstruction> part_nearby(Layout& layout, std::vector<Parting>& partings, double far) {
    while (const std::optional<Conflict> conflict = layout.deepest_conflict()) {
        const Pair pair = conflict->pair;
        const std::optional<Trial> best = cheapest_side(layout, pair);
        const Side nearest = nearest_side(layout, pair);
        if (!best || (best->side != nearest && layout.shortfall(pair, best->side) > far)) {
            return obstruction_of(layout, pair, nearest);
        }
        layout.part(pair, best->side);
        partings.push_back({pair, best->side});
    }
    return std::nullopt;
}

Parted part_or_squeeze(Layout& layout, double far) {
    const Layout::Mark before = layout.mark();
    Parted parted;
    while (const std::optional<Obstruction> obstruction =
               part_nearby(layout, parted.partings, far)) {
        const Pair pair = obstruction->pair;
        if (!obstruction->ring.empty() && squeeze(layout, obstruction->ring)) {
            layout.undo(before);
            parted.partings.clear();
        } else if (const std::optional<Trial> best = cheapest_side(layout, pair)) {
            layout.part(pair, best->side);
            parted.partings.push_back({pair, best->side});
        } else {
            layout.allow(pair, -kInfinity);
            parted.stuck.push_back(pair);
        }
    }
    return parted;
}

}  // namespace wallwright::spacing
