// A polygon as triangles, since the graphics card paints nothing else.
#pragma once

#include <imgui.h>

#include <span>
#include <vector>

namespace wallwright::app {

/// Three indices into `corners` for each triangle, by cutting off ears. The polygon is simple,
/// either way round, with at most 65,535 corners; one that crosses itself gives some triangles that
/// cover about it. Fewer than three corners, or no area, give none.
void triangulate(std::span<const ImVec2> corners, std::vector<ImDrawIdx>& triangles);

/// Twice the area in px2; positive when the corners go clockwise as seen on the screen.
double twice_area(std::span<const ImVec2> corners);

}  // namespace wallwright::app
