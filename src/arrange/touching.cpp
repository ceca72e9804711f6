#include "arrange/touching.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace wallwright::arrange {

namespace {

using geometry::Span;
using spacing::Axis;

Span span_of(const WallRect& place, Axis axis) {
    if (axis == Axis::horizontal)
        return {place.left(), place.right()};
    return {place.bottom(), place.top()};
}

void add_lines(std::vector<double>& shifts, Span moving, Span still) {
    shifts.push_back(still.low - moving.low);
    shifts.push_back(still.high - moving.high);
    shifts.push_back((still.low + still.high - moving.low - moving.high) / 2);
}

/// The first ones that are more than rounding apart.
std::vector<double> first_different(std::span<const double> shifts, std::size_t most) {
    std::vector<double> kept;
    for (const double shift : shifts)
        if (kept.size() < most && std::ranges::none_of(kept, [shift](double other) {
                return geometry::is_same_length(shift, other);
            }))
            kept.push_back(shift);
    return kept;
}

/// Shifts along the axis after which something of the block is in line with something that stays.
/// The wholes' own lines come first, so that they are among the kept.
std::vector<double> lining_up(const Layout& block, std::span<const Spot> fixed, Axis axis,
                              std::size_t most) {
    const Span whole = span_of(bounds_of(block), axis);
    const Span still = span_of(bounds_of(fixed), axis);
    std::vector<double> shifts;
    add_lines(shifts, whole, still);
    const double about = shifts[2];
    std::vector<double> finer;
    for (const Spot& moving : block)
        for (const Spot& other : fixed)
            add_lines(finer, span_of(moving.place, axis), span_of(other.place, axis));
    std::ranges::sort(finer, {},
                      [about](double shift) { return std::pair(std::abs(shift - about), shift); });
    shifts.insert(shifts.end(), finer.begin(), finer.end());
    return first_different(shifts, most);
}

/// With the block shifted along the other axis already: how far to move it along `axis` so that it
/// is the gap beyond what stays, on the high side or the low side. Nothing when it slides past.
std::optional<double> contact(const Task& task, const Layout& block, std::span<const Spot> fixed,
                              WallVec shifted, Axis axis, bool high_side) {
    const Axis across = axis == Axis::horizontal ? Axis::vertical : Axis::horizontal;
    std::optional<double> move;
    bool faces = false;
    for (const Spot& spot : block)
        for (const Spot& other : fixed) {
            const WallRect place = spot.place.moved(shifted);
            const Span moving = span_of(place, axis);
            const Span still = span_of(other.place, axis);
            const Span moving_across = span_of(place, across);
            const Span still_across = span_of(other.place, across);
            const double shared = std::min(moving_across.high, still_across.high) -
                                  std::max(moving_across.low, still_across.low);
            if (shared <= geometry::kLengthEps - task.gap)
                continue;
            const double needed =
                high_side ? still.high + task.gap - moving.low : still.low - task.gap - moving.high;
            if (!move || (high_side ? needed > *move : needed < *move)) {
                move = needed;
                faces = false;
            }
            if (needed == *move)
                faces = faces || shared > geometry::kLengthEps;
        }
    return faces ? move : std::nullopt;
}

/// On a stair: beside what stays, with its middle as high over the floor.
void add_climbing_moves(const Task& task, const Layout& block, std::span<const Spot> fixed,
                        std::vector<WallVec>& moves) {
    if (task.floor.is_level())
        return;
    const WallRect still = bounds_of(fixed);
    const WallRect moving = bounds_of(block);
    for (const bool high_side : {false, true}) {
        const double x = high_side ? still.right() + task.gap - moving.left()
                                   : still.left() - task.gap - moving.right();
        Layout there = block;
        for (Spot& spot : there)
            spot.place = spot.place.moved({x, 0});
        const double up =
            std::round(middle_above_floor(task, fixed) - middle_above_floor(task, there));
        if (const auto move = contact(task, block, fixed, {0, up}, Axis::horizontal, high_side))
            moves.push_back({*move, up});
    }
}

}  // namespace

std::vector<WallVec> touching_moves(const Task& task, const Layout& block,
                                    std::span<const Spot> fixed, std::size_t most) {
    std::vector<WallVec> moves;
    add_climbing_moves(task, block, fixed, moves);
    for (const Axis axis : {Axis::horizontal, Axis::vertical}) {
        const bool level = axis == Axis::horizontal;
        for (const double shift :
             lining_up(block, fixed, level ? Axis::vertical : Axis::horizontal, most)) {
            const WallVec shifted = level ? WallVec{0, shift} : WallVec{shift, 0};
            for (const bool high_side : {false, true})
                if (const auto move = contact(task, block, fixed, shifted, axis, high_side))
                    moves.push_back(level ? WallVec{*move, shift} : WallVec{shift, *move});
        }
    }
    return moves;
}

}  // namespace wallwright::arrange
