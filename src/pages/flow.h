// Content that runs down one upright sheet and on to the next.
#pragma once

#include "pages/sheet.h"

#include <string>
#include <vector>

namespace wallwright::pages {

class Flow {
  public:
    /// Opens the first sheet and writes its name at the top; later ones say that they continue.
    explicit Flow(SheetStyle style);

    [[nodiscard]] const Area& content() const { return content_; }
    /// Where the next thing begins.
    [[nodiscard]] double top() const { return top_; }
    [[nodiscard]] double room() const { return content_.max.y - top_; }
    /// Shapes of the sheet that is open.
    Shapes& shapes() { return sheets_.back().shapes; }

    /// Goes on to a new sheet unless so much room is left; true when it did.
    bool need(double height);
    void advance(double height) { top_ += height; }

    /// Lines of text over the full width.
    void add_text(const std::string& text, const Type& type, draw::Ink ink = draw::Ink::text);
    /// A heading that stays together with at least `following` mm after it.
    void add_heading(const std::string& text, double following);

    [[nodiscard]] std::vector<draw::PageDrawing> take() { return std::move(sheets_); }

  private:
    void open_sheet();

    SheetStyle style_;
    Area content_;
    double top_ = 0;
    std::vector<draw::PageDrawing> sheets_;
};

}  // namespace wallwright::pages
