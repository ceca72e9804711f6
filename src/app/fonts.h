// Letters from the system's fonts, sharp at every text size.
#pragma once

#include <imgui.h>

namespace wallwright::app {

/// Each face covers the European languages (Latin, Greek, Cyrillic), fractions and arrows as far as
/// the system's fonts do. Sizes are ImGui's: from the highest letter's top to the lowest one's
/// foot.
struct Fonts {
    ImFont* body = nullptr;       ///< 16 px at a scale of 1.
    ImFont* bold = nullptr;       ///< As large, semibold.
    ImFont* small = nullptr;      ///< 14 px.
    ImFont* title = nullptr;      ///< 20 px, semibold.
    ImFont* tiny = nullptr;       ///< 12 px: figures on the canvas.
    ImFont* tiny_bold = nullptr;  ///< As small, semibold.
    ImFont* large = nullptr;      ///< 30 px, semibold: read from a step away.
    ImFont* huge = nullptr;       ///< 88 px, semibold: numbers and ASCII alone, read from 2 m.
    float capitals = 0.6F;        ///< Height of a capital as a share of the size.
    float scale = 1;              ///< As they were built.
};

/// Pixels of the body font at a scale of 1.
inline constexpr float kBodyPixels = 16;

/// Builds the atlas of the current ImGui context anew; the renderer must upload it afterwards.
/// Finds Inter, or else the system's sans-serif, by fontconfig; without any, ImGui's own. Where the
/// letters would not fit into a texture of `largest` px a side, the scale is made smaller.
Fonts build_fonts(float scale, int largest = 16384);

}  // namespace wallwright::app
