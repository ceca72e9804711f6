// Lines on the canvas: thin, dashed, clipped.
#pragma once

#include <imgui.h>

#include <span>
#include <vector>

namespace wallwright::app {

struct LineLook {
    ImU32 colour = 0;
    float width = 1;                 ///< px; less than 1 is painted as 1.
    std::span<const double> dashes;  ///< Dash, gap, ... in widths; empty for an unbroken line.
};

class StrokePen {
  public:
    /// Lines are cut off where they leave `clip`.
    StrokePen(ImDrawList& list, const ImVec4& clip) : list_(list), clip_(clip) {}

    /// Through all points and, when closed, back to the first. Thin lines that are level or plumb
    /// are put on whole pixels.
    void stroke(std::span<const ImVec2> points, bool closed, const LineLook& look);

  private:
    void whole(std::span<const ImVec2> points, bool closed, const LineLook& look);
    void clipped(std::span<const ImVec2> points, bool closed, const LineLook& look);
    void dashed(std::span<const ImVec2> points, bool closed, const LineLook& look);
    /// The pieces of one straight line on which the pattern is drawn; `along` is how far into the
    /// pattern it starts, px.
    void dash_line(ImVec2 from, ImVec2 to, double along, const LineLook& look);
    void end_run(const LineLook& look);

    ImDrawList& list_;
    ImVec4 clip_;
    std::vector<ImVec2> snapped_;
    std::vector<ImVec2> run_;  ///< Of a dash that goes round corners, or of a part in sight.
};

}  // namespace wallwright::app
