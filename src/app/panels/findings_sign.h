// A shape for each severity, so that colour is never the only sign.
#pragma once

#include "app/theme.h"
#include "wall/finding.h"

namespace wallwright::app {

/// An octagon for a stop, a triangle for a mind, a circle for a note, with a stroke in it.
void draw_sign(ImDrawList& list, ImVec2 centre, float radius, wall::Severity severity,
               const Theme& theme);
/// A circle with a hook in it.
void draw_good_sign(ImDrawList& list, ImVec2 centre, float radius, const Theme& theme);

}  // namespace wallwright::app
