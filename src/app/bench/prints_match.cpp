#include "app/bench/prints_parts.h"
#include "app/row.h"
#include "app/widgets.h"
#include "desk/bench/match_moves.h"
#include "mounts/match/match_words.h"
#include "wall/titles.h"

#include <fmt/format.h>

namespace wallwright::app {

namespace {

using desk::Matched;
using mounts::Pair;

constexpr float kPadding = 3;  ///< px at a scale of 1.

/// A line of the list: two titles, how it stands, and what it costs.
struct Line {
    std::string title;
    std::string state;
    std::string cost;
    bool changes = false;
};

Line line_of(const wall::Project& project, const Pair& pair) {
    Line line;
    line.title = fmt::format("{} → {}", title_of(project, pair.print),
                             desk::frame_title(project, pair.piece));
    line.state = pair.kept ? "kept" : pair.moves ? "better so" : "so today, and best";
    line.changes = pair.moves;
    if (pair.fitting)
        line.cost = mounts::points_text(pair.fitting->cost());
    return line;
}

float line_height(const Ui& ui) {
    return ImGui::GetFontSize() + ui.fonts.small->FontSize + ui.px(2 * kPadding);
}

void draw(const Ui& ui, const Line& line, ImVec2 at, float width) {
    ImDrawList& list = *ImGui::GetWindowDrawList();
    const Theme& theme = ui.theme();
    const float y = at.y + ui.px(kPadding) / 2;
    list.AddText({at.x + ui.px(2), y}, theme.text, fitted(line.title, width - ui.px(4)).c_str());
    const float below = y + ImGui::GetFontSize() + ui.px(1);
    const ImFont* small = ui.fonts.small;
    list.AddText(small, small->FontSize, {at.x + ui.px(2), below},
                 line.changes ? theme.accent : theme.quiet_text, line.state.c_str());
    const float cost = width_in(small, line.cost);
    list.AddText(small, small->FontSize, {at.x + width - cost - ui.px(2), below}, theme.quiet_text,
                 line.cost.c_str());
}

void pair_line(Ui& ui, State& state, const Pair& pair, int number) {
    const ScopedId id(number);
    const Line line = line_of(state.session.kept(), pair);
    const ImVec2 at = ImGui::GetCursorScreenPos();
    const float width = ImGui::GetContentRegionAvail().x;
    const bool chosen = state.prints.hand.chosen == pair.print;
    if (ImGui::Selectable("##pair", chosen, 0, {0, line_height(ui)})) {
        state.prints.hand.chosen = pair.print;
        state.session.selection.clear();
    }
    ui.probe.note(fmt::format("prints/pair/{}", number));
    tip(ui, pair.text);
    if (ImGui::IsItemVisible())
        draw(ui, line, at, width);
}

/// All that is to be said of the chosen pair, under its line.
void pair_words(Ui& ui, const Pair& pair) {
    hint(ui, pair.text);
    for (const mounts::Alternative& other : pair.alternatives)
        hint(ui, other.text);
}

void left_over(Ui& ui, const Matched& found) {
    const auto& match = found.match;
    if (match.left_prints.empty() && match.left_pieces.empty())
        return;
    if (!section(ui, "prints/left", "Left over", true))
        return;
    for (const mounts::LeftPrint& left : match.left_prints)
        hint(ui, left.text);
    for (const mounts::LeftPiece& left : match.left_pieces)
        hint(ui, left.text);
}

void one_more(Ui& ui, const Matched& found) {
    if (found.more.empty() || !section(ui, "prints/more", "One more frame", true))
        return;
    for (const mounts::OneMore& one : found.more)
        hint(ui, one.text);
}

}  // namespace

void match_list(Ui& ui, State& state) {
    const Matched* found = state.prints.choice.found();
    if (found == nullptr)
        return;
    // A copy: pressing something may bring another.
    const Matched shown = *found;
    if (!shown.match.pairs.empty() && section(ui, "prints/match", "The match", true)) {
        int number = 0;
        for (const Pair& pair : shown.match.pairs) {
            pair_line(ui, state, pair, ++number);
            if (state.prints.hand.chosen == pair.print)
                pair_words(ui, pair);
        }
        value_row(ui, "In all", mounts::points_text(shown.match.total),
                  "Points for uneven, thin and wide borders, for lost picture and for colours that "
                  "do not go together; fewer are better.");
    }
    left_over(ui, shown);
    one_more(ui, shown);
}

}  // namespace wallwright::app
