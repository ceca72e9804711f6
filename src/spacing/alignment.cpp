#include "spacing/alignment.h"

#include "spacing/rounding.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>

namespace wallwright::spacing {

namespace {

/// Middles come first: they line up when both edges are as far out.
constexpr std::array kLines{Line::centre, Line::low, Line::high};

auto nearest_first(const Alignment& alignment) {
    return std::tuple(without_rounding(std::abs(alignment.off)), alignment.line != Line::centre,
                      alignment.pair, alignment.line);
}

}  // namespace

double line_at(const WallRect& place, Axis axis, Line line) {
    const double low = axis == Axis::horizontal ? place.min.x : place.min.y;
    const double high = axis == Axis::horizontal ? place.max.x : place.max.y;
    switch (line) {
        case Line::low:
            return low;
        case Line::centre:
            return (low + high) / 2;
        case Line::high:
            return high;
    }
    return low;
}

std::vector<Alignment> near_alignments(const Layout& layout, std::span<const Facing> neighbours,
                                       double within) {
    std::vector<Alignment> alignments;
    for (const Facing& facing : neighbours) {
        const Pair pair = pair_of(facing);
        if (layout.body(pair.first).held && layout.body(pair.second).held) {
            continue;
        }
        const Axis across = facing.axis == Axis::horizontal ? Axis::vertical : Axis::horizontal;
        for (const Line line : kLines) {
            const double off = line_at(layout.place(pair.second), across, line) -
                               line_at(layout.place(pair.first), across, line);
            if (std::abs(off) <= within + geometry::kLengthEps) {
                alignments.push_back({pair, across, line, off});
            }
        }
    }
    std::ranges::sort(alignments, {}, nearest_first);
    return alignments;
}

bool line_up(Layout& layout, const Alignment& alignment) {
    // From low edge to low edge, as separations are.
    const auto [first, second] = alignment.pair;
    const auto to_line = [&](std::uint32_t body) {
        const WallRect place = layout.body(body).place;
        return line_at(place, alignment.axis, alignment.line) -
               line_at(place, alignment.axis, Line::low);
    };
    return layout.add(alignment.axis, {first, second, to_line(first) - to_line(second), true},
                      {Cause::Kind::lined_up, alignment.pair, 0, alignment.line});
}

}  // namespace wallwright::spacing
