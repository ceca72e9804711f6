#include "app/panels/panels.h"
#include "app/panels/search_button.h"
#include "app/row.h"
#include "app/widgets.h"

#include <fmt/format.h>

#include <optional>

namespace wallwright::app {

namespace {

constexpr float kNumberWidth = 20;  ///< px at a scale of 1, as are these.
constexpr float kPadding = 4;

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
    std::string title;  ///< "A3, 337 × 460 mm"
    std::string totals;
    bool is_better = false;
    std::string reason;  ///< And the print that would fit.
};

Words words_of(const wall::Project& project, const arrange::Suggestion& suggestion,
               std::size_t index) {
    const std::string print = desk::print_words(project, suggestion);
    return {std::to_string(index + 1),
            fmt::format("{}, {}", desk::shop_name(suggestion.size_name),
                        desk::outside_words(suggestion, project.unit)),
            fmt::format("{:.0f} → {:.0f}", suggestion.before, suggestion.after),
            suggestion.after > suggestion.before,
            print.empty() ? suggestion.reason : fmt::format("{} {}", suggestion.reason, print)};
}

float height_of(const Ui& ui, const Words& words, float width) {
    const ScopedFont small(ui.fonts.small);
    const float inner = width - ui.px(kNumberWidth);
    return ImGui::CalcTextSize(words.reason.c_str(), nullptr, false, inner).y;
}

void draw(Ui& ui, const Words& words, ImVec2 at, float width) {
    ImDrawList& list = *ImGui::GetWindowDrawList();
    const Theme& theme = ui.theme();
    const float left = at.x + ui.px(kNumberWidth);
    const float totals = ImGui::CalcTextSize(words.totals.c_str()).x;
    const float size = ImGui::GetFontSize();
    list.AddText(ui.fonts.bold, size, at, theme.accent, words.number.c_str());
    const std::string title = fitted(words.title, width - totals - ui.px(kNumberWidth + 8));
    list.AddText(ui.fonts.bold, size, {left, at.y}, theme.text, title.c_str());
    list.AddText({at.x + width - totals, at.y}, words.is_better ? theme.good : theme.quiet_text,
                 words.totals.c_str());
    list.AddText(ui.fonts.small, ui.fonts.small->FontSize,
                 {left, at.y + ImGui::GetTextLineHeight() + ui.px(2)}, theme.quiet_text,
                 words.reason.c_str(), nullptr, width - ui.px(kNumberWidth));
}

/// True when it was pressed.
bool suggestion_item(Ui& ui, State& state, std::size_t index) {
    const ScopedId id(static_cast<int>(index));
    const Words words = words_of(state.session.kept(), state.suggestions.list()[index], index);
    const ImVec2 at = ImGui::GetCursorScreenPos();
    const float width = ImGui::GetContentRegionAvail().x;
    const float height = ImGui::GetTextLineHeight() + ui.px(2) + height_of(ui, words, width);
    const bool pressed = ImGui::Selectable("##suggestion", state.suggestions.pointed_out() == index,
                                           0, {0, height + ui.px(kPadding)});
    ui.probe.note(fmt::format("suggest/{}", index + 1));
    if (ImGui::IsItemHovered())
        state.suggestions.point_out(index);
    draw(ui, words, {at.x, at.y + ui.px(kPadding / 2)}, width);
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

}  // namespace

void suggestions_panel(Ui& ui, State& state) {
    if (!section(ui, "suggest", "What to buy next", true))
        return;
    look_button(ui, state);
    if (state.suggestions.is_stale())
        hint(ui, "The wall is another now than the one that frames were found for.");
    else if (state.suggestions.found_nothing())
        hint(ui, "No usual size does the wall any good beside the group.");
    list_of(ui, state);
}

}  // namespace wallwright::app
