// What stands between a group and the place that it is to grow to.
#pragma once

#include "arrange/task.h"

#include <optional>
#include <span>
#include <string>

namespace wallwright::arrange {

/// The straight way of one more piece from the group to the target.
struct Way {
    WallRect from;         ///< The piece of the group that is nearest to the target.
    WallRect target;       ///< Apart from it.
    geometry::Size piece;  ///< Of the piece that would go up next.
    double gap = 60;       ///< mm, kept from pieces and from things alike.

    [[nodiscard]] WallPoint start() const;  ///< The point of `from` nearest to the target.
    [[nodiscard]] WallPoint end() const;    ///< The point of the target nearest to `from`.
    /// Where the next piece would be: on the line, at the gap.
    [[nodiscard]] WallRect next() const;
};

struct InTheWay {
    std::string title;
    bool fits_before = false;  ///< The piece has room between it and the group.
};

/// The thing nearest to the group that the line meets, kept clear by the gap; or else that a piece
/// led along the line would meet before it is up. Things at the target's side that the piece fits
/// before are not in the way.
std::optional<InTheWay> in_the_way(const Way& way, std::span<const spacing::Obstacle> things);

}  // namespace wallwright::arrange
