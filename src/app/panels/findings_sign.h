// A shape for each severity, so that colour is never the only sign.
#pragma once

#include "app/ui.h"
#include "wall/finding.h"

#include <string>

namespace wallwright::app {

/// An octagon for a stop, a triangle for a mind, a circle for a note, with a stroke in it.
void draw_sign(ImDrawList& list, ImVec2 centre, float radius, wall::Severity severity,
               const Theme& theme);
/// A circle with a hook in it.
void draw_good_sign(ImDrawList& list, ImVec2 centre, float radius, const Theme& theme);

/// px at a scale of 1, from the sign's left edge to that of the words beside it.
inline constexpr float kSaidAt = 26;
/// What is found, its upper left corner at `at`: sign, severity, and the sentence wrapped.
void show_said(const Ui& ui, ImVec2 at, wall::Severity severity, const std::string& text);
/// At the cursor: the good sign and words. `name` is for the probe.
void show_nothing_said(Ui& ui, const char* words, const char* name);

}  // namespace wallwright::app
