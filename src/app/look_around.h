// Looking around in what is drawn in mm: wheel, middle button, space; all of it in sight.
#pragma once

#include "app/ui.h"
#include "desk/bench/bench.h"

#include <functional>

namespace wallwright::app {

/// The middle button, or space with the left one, is held.
bool is_panning();

/// Wheel: zoom about the pointer; with Shift or sideways: pan. Middle button or space: drag. Of an
/// item that the pointer is on, or that has the mouse. True when the view changed.
bool look_around(desk::View& view, bool hovered, bool active);

/// mm on paper for one mm of what the view shows.
double paper_scale(const Ui& ui, const desk::View& view);

/// Keeps all of it in the middle of the area, px, as long as the person did not zoom or pan.
/// `extent_at` says what is to be seen at a scale as paper_scale() gives it: figures take more room
/// the smaller what they measure is drawn. It is asked when `now`, with the area and the text's
/// scale that are filled in here, is another than it was.
void keep_fitted(const Ui& ui, desk::Look& look, const geometry::Rect<geometry::Screen>& area,
                 desk::Sight now,
                 const std::function<geometry::Rect<geometry::Wall>(double)>& extent_at);

}  // namespace wallwright::app
