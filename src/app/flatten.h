// Paths as points of the window.
#pragma once

#include "draw/drawing.h"

#include <imgui.h>

#include <span>
#include <vector>

namespace wallwright::app {

using ToScreen = geometry::Transform<geometry::Wall, geometry::Screen>;

ImVec2 on_screen(const ToScreen& to_screen, geometry::Point<geometry::Wall> point);
/// From (x, y) to (z, w), as ImGui's clip rectangles are.
ImVec4 on_screen(const ToScreen& to_screen, const geometry::Rect<geometry::Wall>& rect);

/// Curves become lines that stay within a tenth of a pixel of them. Points in one place count
/// once.
void flatten(const draw::Path<geometry::Wall>& path, const ToScreen& to_screen,
             std::vector<ImVec2>& points);

ImVec4 bounds_of(std::span<const ImVec2> points);
bool is_apart(const ImVec4& one, const ImVec4& other);
bool is_inside(const ImVec4& one, const ImVec4& other);
ImVec4 grown(const ImVec4& rect, float margin);

bool is_convex(std::span<const ImVec2> corners);
/// Every line is level or plumb.
bool is_upright(std::span<const ImVec2> points, bool closed);

/// The part of the polygon in `rect`; parts of a polygon that is not convex are joined along the
/// edge (Sutherland and Hodgman's method). `spare` is working room.
void clip_polygon(std::vector<ImVec2>& corners, const ImVec4& rect, std::vector<ImVec2>& spare);

}  // namespace wallwright::app
