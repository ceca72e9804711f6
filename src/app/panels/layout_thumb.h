// A small picture of a layout on its wall.
#pragma once

#include "app/ui.h"
#include "arrange/task.h"
#include "geometry/transform.h"

namespace wallwright::app {

struct Thumb {
    const wall::Project& project;
    const arrange::Task& task;  ///< Its items are the project's pieces, in order.
    const arrange::Layout& layout;
    geometry::Transform<geometry::Wall, geometry::Screen> to_screen;
};

/// Wall, furniture, fixtures and the pieces with their frames and colours, in the box; edges on
/// whole pixels.
void paint_thumb(const Ui& ui, ImDrawList& list, const Thumb& thumb, const ImVec4& box);

}  // namespace wallwright::app
