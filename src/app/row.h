// One row of the column: a label at the left in the quiet ink, something at the right.
#pragma once

#include "app/scoped.h"
#include "app/ui.h"

#include <string>

namespace wallwright::app {

/// From its making to its end one row. Puts the cursor where the right part begins, which is on the
/// next line where both do not fit beside each other. At its end the whole row gets the tooltip.
class Row : Scoped {
  public:
    /// Whether the right part is a field, so that the label stands as high as its words.
    enum class Holds { field, words };

    /// `width`: px that the right part would like.
    Row(Ui& ui, const char* label, float width, const std::string& why, Holds holds = Holds::field);
    ~Row();

    /// What it gets, px.
    [[nodiscard]] float width() const { return width_; }

  private:
    Ui& ui_;
    std::string why_;
    float width_;
};

/// Usual width of a number's field, px.
float field_width(const Ui& ui);

/// px that the words take in one line of the font.
float width_in(const ImFont* font, const std::string& words);

/// The words, shortened with an ellipsis where they are wider than so many px.
std::string fitted(const std::string& words, float width);

/// Draws words at the right end of the item before, as in a field.
void draw_at_right(const std::string& words, ImU32 colour);

}  // namespace wallwright::app
