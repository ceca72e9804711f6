#include "app/actions.h"
#include "app/hang/hang_parts.h"
#include "app/panels/bar_button.h"
#include "app/row.h"
#include "app/scoped.h"

namespace wallwright::app {

namespace {

using desk::HangView;
using Buttons = std::vector<BarButton>;

constexpr float kEdge = 14;  ///< px at a scale of 1, as are these.
constexpr float kApart = 22;
constexpr float kBesideWords = 8;

struct Choice {
    HangView view;
    const char* name;
    const char* words;
    const char* why;
};

constexpr Choice kChoices[] = {
    {HangView::wall, "hang/view-wall", "Wall", "Where everything goes (Escape)"},
    {HangView::pages, "hang/view-pages", "Pages", "What will be printed, page by page (V)"},
    {HangView::day, "hang/view-day", "Step by step",
     "On the day: one mark at a time in large figures, to tick off (M)"}};

Buttons view_buttons(const State& state) {
    Buttons buttons;
    for (const Choice& choice : kChoices)
        buttons.push_back({choice.name, choice.words, choice.why, state.hang_view == choice.view,
                           true, [view = choice.view](State& changed) {
                               let_go(changed);
                               changed.hang_view = view;
                           }});
    return buttons;
}

Buttons page_button(const State& state, bool next) {
    const PagePreview& preview = state.preview;
    const bool enabled = next ? preview.page + 1 < preview.pages().size() : preview.page > 0;
    if (next)
        return {{"pages/next", "→", "The next page (Page Down)", false, enabled,
                 [](State& changed) { changed.preview.go_by(1); }}};
    return {{"pages/before", "←", "The page before (Page Up)", false, enabled,
             [](State& changed) { changed.preview.go_by(-1); }}};
}

/// Which page it is, between the buttons to the one before and the one after.
struct PageRow {
    Buttons before;
    std::string words;
    Buttons next;
    float width = 0;
};

PageRow page_row(const Ui& ui, const State& state) {
    if (state.hang_view != HangView::pages || state.preview.pages().empty())
        return {};
    PageRow row{page_button(state, false), page_words(state.preview), page_button(state, true)};
    row.width = width_of(ui, row.before) + width_of(ui, row.next) +
                width_in(ui.fonts.body, row.words) + 2 * ui.px(kBesideWords);
    return row;
}

void show_page_row(Ui& ui, State& state, const PageRow& row, float x, float top) {
    show_buttons(ui, state, row.before, x, top);
    x += width_of(ui, row.before) + ui.px(kBesideWords);
    ImGui::SetCursorPos({x, top + (ui.px(kTopBarHeight) - ImGui::GetTextLineHeight()) / 2});
    ImGui::TextUnformatted(row.words.c_str());
    ui.probe.note("pages/where");
    x += width_in(ui.fonts.body, row.words) + ui.px(kBesideWords);
    show_buttons(ui, state, row.next, x, top);
}

/// Gives the height of what it took, px: a second row where one is too short.
float show_rows(Ui& ui, State& state, float width) {
    const Buttons views = view_buttons(state);
    const float row = ui.px(kTopBarHeight);
    const float edge = ui.px(kEdge);
    const PageRow pages = page_row(ui, state);
    const bool in_one = edge + width_of(ui, views) + ui.px(kApart) + pages.width + edge <= width;
    show_buttons(ui, state, views, edge);
    if (pages.words.empty())
        return row;
    if (in_one)
        show_page_row(ui, state, pages, width - edge - pages.width, 0);
    else
        show_page_row(ui, state, pages, edge, row - ui.px(8));
    return in_one ? row : 2 * row - ui.px(8);
}

}  // namespace

void hang_views(Ui& ui, State& state) {
    const ImVec2 at = ImGui::GetCursorScreenPos();
    const ImVec2 size = ImGui::GetContentRegionAvail();
    if (size.x < 1 || size.y < 1)
        return;
    const float row = show_rows(ui, state, size.x);
    if (size.y <= row)
        return;
    if (state.hang_view == HangView::wall) {
        ImGui::SetCursorScreenPos({at.x, at.y + row});
        return canvas(ui, state);
    }
    // The wall is out of sight, and so is the hand on it.
    state.pointer.cancel(state.session);
    state.pointer_at.reset();
    const ScreenArea area{{at.x, at.y + row}, {at.x + size.x, at.y + size.y}};
    if (state.hang_view == HangView::pages)
        pages_view(ui, state, area);
    else
        day_view(ui, state, area);
}

}  // namespace wallwright::app
