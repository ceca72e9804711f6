#include "app/hang/page_preview.h"

#include "app/state.h"
#include "draw/placed.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using geometry::Page;
using geometry::Wall;
using Work = desk::Background<MadePages>;

constexpr geometry::Transform<Page, Wall> kOntoTheDesk{{0, 0}, 1};

MadePages made_for(const SheetChoice& choice, const SheetJob& job, const Work::Tell& tell) {
    MadePages made{choice, {}};
    for (const pages::Sheet& sheet : make_sheets(job, [&tell] { return tell(0, std::nullopt); }))
        made.pages.push_back(shown_page(sheet));
    return made;
}

}  // namespace

PagePreview::PagePreview() : made("Making the pages", [](wall::Project same) { return same; }) {}

ShownPage shown_page(const pages::Sheet& sheet) {
    return {sheet.part, draw::placed(sheet.page, kOntoTheDesk)};
}

draw::PageDrawing printed_page(const ShownPage& page) {
    return draw::placed(page.drawing, kOntoTheDesk.inverse());
}

const std::vector<ShownPage>& PagePreview::pages() const {
    static const std::vector<ShownPage> kNone;
    return made.answer() ? made.answer()->pages : kNone;
}

void PagePreview::go_to(std::size_t wanted) {
    const std::size_t count = pages().size();
    page = count == 0 ? 0 : std::min(wanted, count - 1);
    strip_follows = true;
}

void PagePreview::go_by(int by) {
    const std::size_t back = by < 0 ? static_cast<std::size_t>(-by) : 0;
    if (back > page)
        return go_to(0);
    go_to(page - back + (by > 0 ? static_cast<std::size_t>(by) : 0));
}

void follow_pages(Ui& ui, State& state) {
    constexpr double kBetweenLooks = 0.05;  // s, at what has been made
    if (state.step != desk::Step::hang || state.hang_view != desk::HangView::pages)
        return;
    PagePreview& preview = state.preview;
    preview.made.compare(state.session);
    const std::uint64_t before = preview.made.number();
    preview.made.take(state.session);
    if (preview.made.number() != before)
        preview.go_to(preview.page);
    const bool is_wanted = !preview.made.has_tried() || preview.asked != preview.choice;
    // What runs comes to its end first, for the window does not wait for anything.
    if (is_wanted && !preview.made.is_at_work()) {
        preview.asked = preview.choice;
        preview.made.begin([choice = preview.choice, job = sheet_job(state, preview.choice)](
                               const Work::Tell& tell) { return made_for(choice, job, tell); });
    }
    if (preview.made.is_at_work())
        ui.memory.wake(kBetweenLooks);
}

std::string_view words_for(pages::SheetPart part) {
    constexpr std::string_view kWords[] = {
        "Elevation",          "Marks",     "Loads",          "Cautions and findings",
        "Shopping and tools", "Card plan", "Cutting sheets", "Templates"};
    static_assert(std::size(kWords) == kSheetParts);
    return kWords[static_cast<std::size_t>(part)];
}

std::string page_words(const PagePreview& preview) {
    const std::vector<ShownPage>& pages = preview.pages();
    if (pages.empty())
        return "";
    return fmt::format("Page {} of {}  ·  {}", preview.page + 1, pages.size(),
                       words_for(pages[std::min(preview.page, pages.size() - 1)].part));
}

}  // namespace wallwright::app
