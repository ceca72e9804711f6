// Who faces whom across a gap.
#pragma once

#include "wall/project.h"

#include <cstddef>
#include <span>
#include <vector>

namespace wallwright::spacing {

using WallRect = geometry::Rect<geometry::Wall>;

enum class Axis { horizontal, vertical };  ///< The direction in which a gap is measured.

/// Two rectangles that look at each other, by index.
struct Facing {
    std::size_t first = 0;  ///< Left of, or below, `second`.
    std::size_t second = 0;
    Axis axis = Axis::horizontal;
    double size = 0;  ///< mm; 0 or more.
    WallRect place;   ///< The empty rectangle between them.
};

/// Every two rectangles no farther than `reach` mm apart whose facing spans overlap by more than
/// rounding and that no third one parts. Overlapping rectangles do not face each other. Ordered by
/// index, the smaller one of each two first.
std::vector<Facing> facing_pairs(std::span<const WallRect> places, double reach);

/// Every two rectangles of which only the corners look at each other, nearer than `reach` mm along
/// both axes: `axis` is the one along which they are farther apart, `place` what lies between the
/// corners.
std::vector<Facing> corner_pairs(std::span<const WallRect> places, double reach);

/// The clear distance between two pieces that look at each other with nothing between them.
struct Gap {
    wall::PieceId first;  ///< Left of, or below, `second`.
    wall::PieceId second;
    Axis axis = Axis::horizontal;
    double size = 0;  ///< mm; 0 or more.
    WallRect place;   ///< The empty rectangle between them.
    bool operator==(const Gap&) const = default;
};

/// As facing_pairs(), for pieces.
std::vector<Gap> facing_gaps(std::span<const wall::Placed> pieces, double reach);

}  // namespace wallwright::spacing
