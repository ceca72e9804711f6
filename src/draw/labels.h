// Where labels may go without running into each other. Painting is a floor higher, so the width of
// a text is estimated here.
#pragma once

#include "draw/drawing.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace wallwright::draw {

/// mm on paper, on the wide side for the fonts in use: shares of the font's size by the kind of
/// letter, capitals being 0.727 of that size.
double estimated_width(std::string_view text, double size, bool bold = false);

/// Broken at spaces into lines of at most `width` mm on paper as estimated; what does not fit into
/// `most` lines is cut off with three dots.
std::vector<std::string> wrapped(const std::string& text, double size, double width,
                                 std::size_t most);

/// What the text covers on the wall at `scale` mm of paper for a mm of wall: capitals above the
/// base line, tails below it.
geometry::Rect<geometry::Wall> estimated_box(const Text<geometry::Wall>& text, double scale);

/// Remembers what is taken.
class LabelRoom {
  public:
    void take(const geometry::Rect<geometry::Wall>& place) { taken_.push_back(place); }
    /// True when nothing taken reaches more than rounding into the place.
    [[nodiscard]] bool is_free(const geometry::Rect<geometry::Wall>& place) const;

  private:
    std::vector<geometry::Rect<geometry::Wall>> taken_;
};

}  // namespace wallwright::draw
