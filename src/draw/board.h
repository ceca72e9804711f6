// The drawing board: what the parts of an elevation share while it is drawn.
#pragma once

#include "draw/easel.h"
#include "draw/elevation.h"

#include <span>
#include <string>

namespace wallwright::draw {

struct Board : Easel {
    const wall::Project& project;
    const rules::Assessment& assessment;
    const ElevationOptions& options;
    geometry::Rect<geometry::Wall> wall;  ///< Around the wall's outline.
    Paint plate;                          ///< The wash on the wall, to stand labels on.

    /// Adds the first text whose room is free and inside the wall's outline; false when there is
    /// none.
    bool add_first_free(std::span<const Text<geometry::Wall>> choices);
};

/// A label in a dimension's ink on the wall's own colour.
Text<geometry::Wall> label_on(const Board& board, geometry::Point<geometry::Wall> at,
                              std::string text, Align align);

}  // namespace wallwright::draw
