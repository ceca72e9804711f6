#include "app/panels/panels.h"
#include "app/panels/search_button.h"
#include "app/scoped.h"
#include "app/widgets.h"

#include <fmt/format.h>

#include <optional>
#include <utility>

namespace wallwright::app {

namespace {

constexpr float kNumberWidth = 20;  ///< px at a scale of 1, as are these.
constexpr float kPadding = 4;
constexpr float kApart = 8;

/// A search was begun whose list has not been shown yet.
bool& is_list_awaited() {
    return *ImGui::GetStateStorage()->GetBoolRef(ImGui::GetID("awaited"), false);
}

void look_button(Ui& ui, State& state) {
    desk::Suggestions& suggestions = state.suggestions;
    const SearchButton said{
        "suggest/go",
        suggestions.is_stale() ? "Look again" : "Look for a frame to buy",
        "Stop",
        "Tries every usual size in every place beside the group.",
        "Shows what it has found so far.",
        suggestions.is_running() ? "" : desk::Suggestions::hindrance(state.session)};
    switch (search_button(ui, said, suggestions.is_running(), suggestions.done())) {
        case SearchPress::begin:
            state.stages.leave(state.session);  // They are for the wall once all stages hang.
            suggestions.start(state.session);
            is_list_awaited() = true;
            break;
        case SearchPress::end:
            suggestions.stop();
            break;
        case SearchPress::none:
            break;
    }
}

struct Words {
    std::string number;
    std::string title;  ///< "Frame for A3, outside 337 × 460 mm", in two lines.
    std::string totals;
    bool is_better = false;
    std::string reason;  ///< And the print that would fit.
};

Words words_of(const wall::Project& project, const arrange::Suggestion& suggestion,
               std::size_t index) {
    const std::string print = desk::print_words(project, suggestion);
    return {std::to_string(index + 1),
            fmt::format("Frame for {},\noutside {}", desk::shop_name(suggestion.size_name),
                        desk::outside_words(suggestion, project.unit)),
            fmt::format("{:.1f} → {:.1f}", suggestion.before, suggestion.after),
            suggestion.after > suggestion.before,
            print.empty() ? suggestion.reason : fmt::format("{} {}", suggestion.reason, print)};
}

/// How wide and high the words are, px, in as many lines as it takes.
struct Extent {
    float title_width = 0;
    float title_height = 0;
    float totals_width = 0;
    float reason_width = 0;
    float reason_height = 0;
};

float height_in(ImFont* font, const std::string& words, float width) {
    const ScopedFont used(font);
    return ImGui::CalcTextSize(words.c_str(), nullptr, false, width).y;
}

Extent extent_of(const Ui& ui, const Words& words, float width) {
    Extent extent;
    extent.totals_width = ImGui::CalcTextSize(words.totals.c_str()).x;
    extent.reason_width = width - ui.px(kNumberWidth);
    extent.title_width = extent.reason_width - extent.totals_width - ui.px(kApart);
    extent.title_height = height_in(ui.fonts.bold, words.title, extent.title_width);
    extent.reason_height = height_in(ui.fonts.small, words.reason, extent.reason_width);
    return extent;
}

void draw(Ui& ui, const Words& words, const Extent& extent, ImVec2 at) {
    ImDrawList& list = *ImGui::GetWindowDrawList();
    const Theme& theme = ui.theme();
    const float left = at.x + ui.px(kNumberWidth);
    const float size = ImGui::GetFontSize();
    list.AddText(ui.fonts.bold, size, at, theme.accent, words.number.c_str());
    list.AddText(ui.fonts.bold, size, {left, at.y}, theme.text, words.title.c_str(), nullptr,
                 extent.title_width);
    list.AddText({left + extent.reason_width - extent.totals_width, at.y},
                 words.is_better ? theme.good : theme.quiet_text, words.totals.c_str());
    list.AddText(ui.fonts.small, ui.fonts.small->FontSize,
                 {left, at.y + extent.title_height + ui.px(2)}, theme.quiet_text,
                 words.reason.c_str(), nullptr, extent.reason_width);
}

/// True when it was pressed.
bool suggestion_item(Ui& ui, State& state, std::size_t index) {
    const ScopedId id(static_cast<int>(index));
    const Words words = words_of(state.session.kept(), state.suggestions.list()[index], index);
    const ImVec2 at = ImGui::GetCursorScreenPos();
    const Extent extent = extent_of(ui, words, ImGui::GetContentRegionAvail().x);
    const float height = extent.title_height + ui.px(2) + extent.reason_height;
    const bool pressed = ImGui::Selectable("##suggestion", state.suggestions.pointed_out() == index,
                                           0, {0, height + ui.px(kPadding)});
    ui.probe.note(fmt::format("suggest/{}", index + 1));
    if (ImGui::IsItemHovered())
        state.suggestions.point_out(index);
    draw(ui, words, extent, {at.x, at.y + ui.px(kPadding / 2)});
    return pressed;
}

void list_of(Ui& ui, State& state) {
    const std::size_t count = state.suggestions.list().size();
    std::optional<std::size_t> pressed;
    if (count > 0)
        hint(ui, arrange::none_betters(state.suggestions.list())
                     ? "The group looks finished as it is: each of these takes a little of its "
                       "score. Press one to wish for it all the same."
                     : "Press one to wish for it: a planned piece that is not bought yet.");
    for (std::size_t i = 0; i < count; ++i)
        if (suggestion_item(ui, state, i))
            pressed = i;
    if (count > 0 && button(ui, "suggest/clear", "Put these away",
                            "Takes the dashed frames off "
                            "the wall."))
        state.suggestions.clear();
    if (pressed)
        state.suggestions.take(state.session, *pressed);
}

/// Once a search has come to its end its list is brought into sight, which begins at `top`.
void bring_into_sight(const desk::Suggestions& suggestions, float top) {
    if (!suggestions.is_running() && std::exchange(is_list_awaited(), false) &&
        !suggestions.list().empty())
        ImGui::SetScrollFromPosY(top - ImGui::GetScrollY(), 0);
}

}  // namespace

void suggestions_panel(Ui& ui, State& state) {
    const float top = ImGui::GetCursorPosY();
    if (!section(ui, "suggest", "What to buy next", true))
        return;
    bring_into_sight(state.suggestions, top);
    look_button(ui, state);
    if (state.suggestions.is_stale())
        hint(ui, "The wall is another now than the one that frames were found for.");
    else if (state.suggestions.found_nothing())
        hint(ui, "No usual size does the wall any good beside the group.");
    list_of(ui, state);
}

}  // namespace wallwright::app
