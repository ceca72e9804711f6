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

/// Along `axis`, toward its high side or its low side.
struct Course {
    Axis axis = Axis::horizontal;
    bool high_side = false;
};

/// mm of the two that lie beside each other as seen along the axis; negative apart.
double shared_across(const WallRect& a, const WallRect& b, Axis axis) {
    return axis == Axis::horizontal ? geometry::overlap_y(a, b) : geometry::overlap_x(a, b);
}

/// How far `moving` goes along the course until it is the gap beyond what is still.
double needed_move(const WallRect& moving, const WallRect& still, double gap, Course course) {
    const Span from = span_of(moving, course.axis);
    const Span past = span_of(still, course.axis);
    return course.high_side ? past.high + gap - from.low : past.low - gap - from.high;
}

/// With the block shifted along the other axis already: how far to move it along the course so that
/// it is the gap beyond what stays. Nothing when it slides past.
std::optional<double> contact(const Task& task, const Layout& block, std::span<const Spot> fixed,
                              WallVec shifted, Course course) {
    std::optional<double> move;
    bool faces = false;
    for (const Spot& spot : block)
        for (const Spot& other : fixed) {
            const WallRect place = spot.place.moved(shifted);
            const double shared = shared_across(place, other.place, course.axis);
            if (shared <= geometry::kLengthEps - task.gap)
                continue;
            const double needed = needed_move(place, other.place, task.gap, course);
            const double ahead = move ? (course.high_side ? needed - *move : *move - needed) : 1;
            if (ahead > 0)
                faces = false;
            if (ahead >= 0) {
                move = needed;
                faces = faces || shared > geometry::kLengthEps;
            }
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
        if (const auto move = contact(task, block, fixed, {0, up}, {Axis::horizontal, high_side}))
            moves.push_back({*move, up});
    }
}

}  // namespace

std::vector<WallVec> touching_moves(const Task& task, const Layout& block,
                                    std::span<const Spot> fixed, std::size_t most) {
    std::vector<WallVec> moves;
    add_climbing_moves(task, block, fixed, moves);
    for (const bool level : {true, false})
        for (const double shift :
             lining_up(block, fixed, level ? Axis::vertical : Axis::horizontal, most))
            for (const bool high_side : {false, true}) {
                const Course course{level ? Axis::horizontal : Axis::vertical, high_side};
                const WallVec shifted = level ? WallVec{0, shift} : WallVec{shift, 0};
                if (const auto move = contact(task, block, fixed, shifted, course))
                    moves.push_back(level ? WallVec{*move, shift} : WallVec{shift, *move});
            }
    return moves;
}

}  // namespace wallwright::arrange
