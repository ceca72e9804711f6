// The pages as they will be printed, to look at: made in the background, kept until the wall or the
// choice is another.
#pragma once

#include "app/hang/sheet_job.h"
#include "app/ui.h"
#include "desk/bench/bench.h"
#include "desk/followed.h"

#include <string_view>

namespace wallwright::app {

/// A page on the desk. Its shapes are those of the page, only that up is up as on a wall, since
/// that is what the window paints.
struct ShownPage {
    pages::SheetPart part = pages::SheetPart::elevation;
    draw::WallDrawing drawing;
};

struct MadePages {
    SheetChoice choice;  ///< They were made for.
    std::vector<ShownPage> pages;
};

ShownPage shown_page(const pages::Sheet& sheet);
/// The page that is shown, as it was made.
draw::PageDrawing printed_page(const ShownPage& page);

struct PagePreview {
    PagePreview();

    SheetChoice choice{};
    SheetChoice asked{};         ///< Of the work that was begun last.
    std::size_t page = 0;        ///< That is looked at; pages() says how many there are.
    bool strip_follows = false;  ///< The small pages are to be scrolled to it.
    desk::Look look{};
    desk::Followed<MadePages> made;

    /// The last that were made.
    [[nodiscard]] const std::vector<ShownPage>& pages() const;
    /// They are of another wall or of another choice, or there are none yet.
    [[nodiscard]] bool is_stale() const {
        return made.is_stale() || made.answer()->choice != choice;
    }
    void go_to(std::size_t wanted);
    void go_by(int pages);
};

/// Once a frame, while the pages are looked at: takes those that are made, has others made, and
/// asks for more frames as long as that is under way.
void follow_pages(Ui& ui, State& state);

/// "Cautions and findings".
std::string_view words_for(pages::SheetPart part);
/// "Page 2 of 9  ·  Marks"; empty without pages.
std::string page_words(const PagePreview& preview);

}  // namespace wallwright::app
