#include "spacing/even.h"

#include "base/contract.h"
#include "spacing/evener.h"
#include "spacing/group.h"
#include "spacing/squeeze.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace wallwright::spacing {

namespace {

using wall::Placed;

constexpr double kMovedEps = 1e-6;    // mm; less is rounding
constexpr double kNoticeable = 0.02;  // mm; files keep hundredths, so less cannot be told from none
constexpr double kBeyondReach = 1;    // mm that other groups stay beyond reach
constexpr int kMostPasses = 4;

/// The number of the group each piece belongs to.
std::vector<std::uint32_t> groups_of(std::span<const Placed> pieces, double reach) {
    std::map<wall::PieceId, std::uint32_t> group_of;
    std::uint32_t number = 0;
    for (const Group& group : find_groups(pieces, reach)) {
        for (const wall::PieceId& id : group.pieces) {
            group_of[id] = number;
        }
        ++number;
    }
    std::vector<std::uint32_t> groups;
    for (const Placed& piece : pieces) {
        groups.push_back(group_of.at(piece.id));
    }
    return groups;
}

std::vector<Body> bodies_of(std::span<const Placed> pieces, std::span<const Obstacle> obstacles) {
    std::vector<Body> bodies;
    for (const Placed& piece : pieces) {
        bodies.push_back({piece.place, piece.fixed, false, 0});
    }
    for (const Obstacle& obstacle : obstacles) {
        bodies.push_back({obstacle.place, true, true, 0});
    }
    return bodies;
}

double moved_squared(std::span<const Placed> from, std::span<const Placed> to) {
    double sum = 0;
    for (std::size_t i = 0; i < from.size(); ++i) {
        const double way = geometry::distance(from[i].place.min, to[i].place.min);
        sum += way * way;
    }
    return sum;
}

bool has_moved(std::span<const Placed> from, std::span<const Placed> to) {
    for (std::size_t i = 0; i < from.size(); ++i) {
        if (geometry::distance(from[i].place.min, to[i].place.min) > kMovedEps) {
            return true;
        }
    }
    return false;
}

/// What did not move keeps its place to the last bit.
std::vector<Placed> places_in(const Layout& layout, std::span<const Placed> pieces) {
    std::vector<Placed> result(pieces.begin(), pieces.end());
    for (std::size_t i = 0; i < result.size(); ++i) {
        const WallRect place = layout.place(i);
        if (!result[i].fixed && geometry::distance(place.min, result[i].place.min) > kMovedEps) {
            result[i].place = place;
        }
    }
    return result;
}

/// How far apart two are along the axis where they are farther apart.
double clearance(const WallRect& a, const WallRect& b) {
    return std::max(-geometry::overlap_x(a, b), -geometry::overlap_y(a, b));
}

/// Pieces of different groups stay too far apart to be taken for one group, as far as they are now.
Layout layout_of(std::span<const Placed> pieces, std::span<const Obstacle> obstacles,
                 const EvenOptions& options) {
    const double group_gap = options.reach + kBeyondReach;
    std::vector<Body> bodies = bodies_of(pieces, obstacles);
    const std::vector<std::uint32_t> groups = groups_of(pieces, options.reach);
    for (std::size_t i = 0; i < groups.size(); ++i) {
        bodies[i].group = groups[i];
    }
    Layout layout(std::move(bodies), options.gap, group_gap);
    for (std::uint32_t i = 0; i < pieces.size(); ++i) {
        for (std::uint32_t j = i + 1; j < pieces.size(); ++j) {
            const double apart = clearance(pieces[i].place, pieces[j].place);
            if (groups[i] != groups[j] && apart < group_gap) {
                layout.allow({i, j}, std::max(apart, options.gap));
            }
        }
    }
    return layout;
}

Gap gap_of(const EvenResult& result, const Facing& facing) {
    return {result.pieces[facing.first].id, result.pieces[facing.second].id, facing.axis,
            facing.size, facing.place};
}

void report_uneven(EvenResult& result, const Evener& evener, double wanted) {
    for (const Facing& facing : evener.neighbours()) {
        if (std::abs(facing.size - wanted) > kNoticeable) {
            result.uneven.push_back({gap_of(result, facing), evener.why_uneven(facing)});
        }
    }
    for (const Facing& corners : evener.near_corners()) {
        if (corners.size < wanted - kNoticeable) {
            result.uneven.push_back({gap_of(result, corners), evener.why_near(corners)});
        }
    }
}

void report_unaligned(EvenResult& result, const Evener& evener, double within) {
    std::map<std::pair<Pair, Axis>, Alignment> nearest;
    for (const Alignment& alignment :
         near_alignments(evener.layout(), evener.neighbours(), within)) {
        nearest.try_emplace({alignment.pair, alignment.axis}, alignment);
    }
    for (const auto& [key, alignment] : nearest) {
        if (std::abs(alignment.off) > kNoticeable) {
            result.unaligned.push_back({result.pieces[alignment.pair.first].id,
                                        result.pieces[alignment.pair.second].id,
                                        name_of_line(alignment.axis, alignment.line), alignment.off,
                                        evener.why_unaligned(alignment)});
        }
    }
}

void report_blocked(EvenResult& result, std::span<const Obstacle> obstacles) {
    for (std::size_t i = 0; i < result.pieces.size(); ++i) {
        for (std::size_t j = i + 1; j < result.pieces.size(); ++j) {
            if (geometry::overlaps(result.pieces[i].place, result.pieces[j].place)) {
                const bool first_moves = !result.pieces[i].fixed;
                result.blocked.emplace_back(result.pieces[first_moves ? i : j].id,
                                            result.pieces[first_moves ? j : i].id.text);
            }
        }
        for (const Obstacle& obstacle : obstacles) {
            if (geometry::overlaps(result.pieces[i].place, obstacle.place)) {
                result.blocked.emplace_back(result.pieces[i].id, obstacle.name);
            }
        }
    }
}

EvenResult one_pass(std::span<const Placed> pieces, std::span<const Obstacle> obstacles,
                    const EvenOptions& options) {
    Layout layout = layout_of(pieces, obstacles, options);
    const Layout::Mark before = layout.mark();
    const Parted parted = part_or_squeeze(layout, options.reach);
    const double cost = layout.cost();
    layout.undo(before);
    const Solution sides = improve(layout, {parted.partings, cost, false}, options.effort / 2);

    const Reasons reasons(pieces, obstacles);
    Evener evener(std::move(layout), sides.partings, pieces.size(), options, reasons);
    evener.run();
    EvenResult result;
    result.least_proved = evener.improve_sides(options.effort / 2) && parted.stuck.empty();
    result.pieces = places_in(evener.layout(), pieces);
    report_uneven(result, evener, options.gap);
    report_unaligned(result, evener, options.align_within);
    report_blocked(result, obstacles);
    return result;
}

}  // namespace

EvenResult even(std::span<const Placed> pieces, std::span<const Obstacle> obstacles,
                const EvenOptions& options) {
    WW_EXPECT(options.gap >= 0 && options.reach >= options.gap,
              "pieces are pulled together from at least the gap");
    EvenResult result = one_pass(pieces, obstacles, options);
    // Another pass moves nothing, as a rule. Where it does, the group was not at rest yet.
    for (int pass = 1; pass < kMostPasses; ++pass) {
        EvenResult next = one_pass(result.pieces, obstacles, options);
        if (!has_moved(result.pieces, next.pieces)) {
            break;
        }
        result = std::move(next);
        result.least_proved = false;
    }
    result.moved_squared = moved_squared(pieces, result.pieces);
    return result;
}

EvenResult part(std::span<const Placed> pieces, double gap, std::uint64_t effort) {
    Layout layout(bodies_of(pieces, {}), gap);
    const Layout::Mark before = layout.mark();
    const Parted parted = part_or_squeeze(layout, std::numeric_limits<double>::infinity());
    const double cost = layout.cost();
    layout.undo(before);
    const Solution best = improve(layout, {parted.partings, cost, false}, effort);
    for (const Parting& parting : best.partings) {
        layout.part(parting.pair, parting.side);
    }
    EvenResult result;
    result.pieces = places_in(layout, pieces);
    result.moved_squared = moved_squared(pieces, result.pieces);
    result.least_proved = best.least_proved && parted.stuck.empty();
    report_blocked(result, {});
    return result;
}

}  // namespace wallwright::spacing
