// Texts of a drawing, in the window's fonts.
#pragma once

#include "app/flatten.h"
#include "app/fonts.h"

#include <string>

namespace wallwright::app {

/// A text at the size it has in the window.
struct TextLook {
    ImFont* font = nullptr;
    float size = 0;      ///< ImGui's, px.
    float capitals = 0;  ///< Height of its capitals, px.
    float width = 0;     ///< px
};

class CanvasText {
  public:
    CanvasText(const Fonts& fonts, double pixels_per_paper_mm, bool on_paper)
        : fonts_(fonts), pixels_per_paper_mm_(pixels_per_paper_mm), on_paper_(on_paper) {}

    /// Without a font where the text is too small to be read. A size near one of the fonts' own
    /// becomes that, since those letters are sharp; not on paper, where they have their true size.
    [[nodiscard]] TextLook look_of(const draw::Text<geometry::Wall>& text) const;
    /// What the capitals cover and `air` px around them.
    [[nodiscard]] static ImVec4 box_of(const draw::Text<geometry::Wall>& text, const TextLook& look,
                                       ImVec2 at, float air);
    static void paint(ImDrawList& list, const draw::Text<geometry::Wall>& text,
                      const TextLook& look, ImVec2 at, ImU32 colour);

  private:
    const Fonts& fonts_;
    double pixels_per_paper_mm_;
    bool on_paper_;
};

}  // namespace wallwright::app
