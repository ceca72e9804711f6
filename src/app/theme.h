// Colours and measures of the window, light and dark. Text keeps a contrast of at least 4.5 to 1
// on its ground (WCAG 2.1, 1.4.3), lines on the canvas one of 3 to 1 (1.4.11).
#pragma once

#include "draw/drawing.h"

#include <imgui.h>

namespace wallwright::app {

struct Theme {
    ImU32 desk;   ///< Behind the wall.
    ImU32 panel;  ///< Column, bars.
    ImU32 line;   ///< Between panels.
    ImU32 text;
    ImU32 quiet_text;
    ImU32 accent;     ///< What is chosen, the main button.
    ImU32 on_accent;  ///< Text on it.
    ImU32 field;      ///< Behind a number that can be typed over.
    ImU32 stop;
    ImU32 mind;
    ImU32 good;
};

const Theme& theme(bool dark);

/// The colour with that alpha instead of its own, 0 to 1.
ImU32 with_alpha(ImU32 colour, double alpha);

/// The colour of a drawing's line or fill in the window; on the light theme that of the pages. The
/// wall and what is on it keep their own light colours in the dark theme too, while the desk and
/// the floor are dark, so that inks for lines are tones that can be seen on both.
ImU32 colour_of(const draw::Paint& paint, bool dark);

/// What a text stands on: the wall, a plate, paper; or the dark theme's desk and floor.
enum class Ground { light, dark };
/// The colour of letters.
ImU32 letters_on(Ground ground, const draw::Paint& paint);

/// Sets ImGui's own style from the theme; sizes are for a text scale of 1 times `scale`.
void apply_theme(const Theme& theme, float scale);

}  // namespace wallwright::app
