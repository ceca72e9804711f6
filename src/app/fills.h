// Areas on the canvas: polygons with smooth edges, boxes with sharp ones, soft shadows.
#pragma once

#include "app/flatten.h"

#include <vector>

namespace wallwright::app {

class FillPen {
  public:
    /// What lies outside `clip` is left out.
    FillPen(ImDrawList& list, const ImVec4& clip) : list_(list), clip_(clip) {}

    void fill(std::span<const ImVec2> corners, ImU32 colour);
    void box(const ImVec4& box, ImU32 colour);
    /// Falls to the lower right of the box, since the light comes from the upper left; `depth` px.
    void shadow(const ImVec4& of, float depth, ImU32 colour);

  private:
    /// Of a polygon with corners clockwise.
    void concave(ImU32 colour);
    /// Full colour in the core, fading to nothing at `reach` px around it.
    void soft_box(const ImVec4& core, float reach, ImU32 colour);

    ImDrawList& list_;
    ImVec4 clip_;
    std::vector<ImVec2> corners_;
    std::vector<ImVec2> spare_;
    std::vector<ImDrawIdx> triangles_;
};

}  // namespace wallwright::app
