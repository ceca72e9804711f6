// Looks into drawings for tests: their texts, paths and points.
#pragma once

#include "draw/drawing.h"
#include "draw/elevation.h"

#include <string>
#include <vector>

namespace wallwright::test {

using geometry::Rect;
using geometry::Wall;
using WallText = draw::Text<Wall>;
using WallPath = draw::Path<Wall>;

/// All shapes of one kind, in the drawing's order.
template <class OneShape>
std::vector<OneShape> shapes_in(const std::vector<draw::Shape<Wall>>& shapes) {
    std::vector<OneShape> found;
    for (const draw::Shape<Wall>& shape : shapes)
        if (const auto* one = std::get_if<OneShape>(&shape))
            found.push_back(*one);
    return found;
}

std::vector<WallText> texts_in(const draw::WallDrawing& drawing);
/// How many texts read so.
int count_text(const draw::WallDrawing& drawing, const std::string& words);
/// How many strokes have this line type.
int count_lines(const draw::WallDrawing& drawing, draw::LineType type);
/// Every point that a shape names, controls of curves and corners of its area too.
std::vector<geometry::Point<Wall>> points_of(const draw::Shape<Wall>& shape);
/// The smallest rectangle around the path's points.
Rect<Wall> bounds_of(const WallPath& path);

/// Assessed with the small catalogue and drawn.
draw::WallDrawing drawn(const wall::Project& project, const draw::ElevationOptions& options = {});

/// Texts that run into each other as estimated at this scale, or leave the drawing's extent; none
/// on a good drawing.
std::vector<std::string> clashes(const draw::WallDrawing& drawing, double scale);

/// Compares with tests/golden/draw/<name>; with WW_ACCEPT=1 in the environment writes it instead. A
/// failure shows the first line that differs.
void check_golden(const std::string& name, const std::string& actual);

}  // namespace wallwright::test
