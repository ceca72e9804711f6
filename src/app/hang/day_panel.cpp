#include "app/hang/hang_parts.h"
#include "app/row.h"
#include "app/scoped.h"
#include "app/widgets.h"
#include "desk/hang/deed_words.h"
#include "draw/letters.h"
#include "wall/titles.h"

#include <fmt/format.h>

namespace wallwright::app {

namespace {

using desk::Companion;
using desk::UpToday;

std::string under_title(const Companion& day) {
    const auto today = day.today();
    std::size_t left = 0;
    for (const UpToday& piece : today)
        left += piece.hangs ? 0 : 1;
    if (today.empty())
        return "Nothing is to be hung.";
    return left == 0 ? fmt::format("All {} of today hang.", today.size())
                     : fmt::format("{} of {} pieces are still to go up.", left, today.size());
}

/// A click goes to the first thing that is to be done for the piece.
void piece_row(Ui& ui, State& state, const UpToday& piece) {
    Companion& day = state.day;
    const std::string letter = draw::letter_of(*day.before(), piece.piece);
    const ScopedId id(piece.piece.text.c_str());
    const std::string words = desk::state_words(day, piece);
    const bool chosen = day.at() >= piece.first && day.at() < piece.first + piece.count;
    const float width = ImGui::GetContentRegionAvail().x;
    const std::string name =
        fmt::format("{}  {}", letter, wall::title_of(*day.before(), piece.piece));
    const float room = width - width_in(ui.fonts.body, words) - ui.px(12);
    const bool pressed = ImGui::Selectable(fitted(name, room).c_str(), chosen);
    ui.probe.note(fmt::format("day/piece/{}", letter));
    const ImVec2 low = ImGui::GetItemRectMin();
    const float right = ImGui::GetWindowPos().x + ImGui::GetWindowContentRegionMax().x;
    ImGui::GetWindowDrawList()->AddText(
        {right - width_in(ui.fonts.body, words), low.y + ImGui::GetStyle().ItemSpacing.y / 2},
        piece.hangs ? ui.theme().good : ui.theme().quiet_text, words.c_str());
    if (!pressed)
        return;
    std::size_t open = piece.first;
    while (open + 1 < piece.first + piece.count && day.is_done(open))
        ++open;
    day.go_to(open);
}

void list_pieces(Ui& ui, State& state) {
    heading(ui, state.day.stage() > 0 ? fmt::format("Stage {}", state.day.stage()).c_str()
                                      : "Today, in this order");
    for (const UpToday& piece : state.day.today())
        piece_row(ui, state, piece);
}

void list_later(Ui& ui, const Companion& day) {
    const wall::Project& project = *day.before();
    const auto later = day.later();
    const auto not_bought = day.not_bought();
    const auto without = day.without_fixing();
    if (later.empty() && not_bought.empty() && without.empty())
        return;
    heading(ui, "Not today");
    for (const desk::UpLater& stage : later)
        hint(ui, fmt::format("Stage {}: {}.", stage.stage, wall::titles_of(project, stage.pieces)));
    if (!not_bought.empty())
        hint(ui, fmt::format("Not bought yet: {}.", wall::titles_of(project, not_bought)));
    if (!without.empty())
        hint(ui, fmt::format("No fixing carries {}.", wall::titles_of(project, without)));
}

bool is_begun(const Companion& day) {
    for (std::size_t i = 0; i < day.deeds().size(); ++i)
        if (day.is_done(i))
            return true;
    return false;
}

}  // namespace

void day_panel(Ui& ui, State& state) {
    Companion& day = state.day;
    if (!day.before())
        return;
    panel_title(ui, "Step by step", under_title(day));
    if (!day.deeds().empty())
        list_pieces(ui, state);
    list_later(ui, day);
    if (day.deeds().empty())
        return;
    ImGui::Dummy({0, ui.px(4)});
    const bool begun = is_begun(day);
    if (button(ui, "day/again", "Hang all of today again",
               begun ? "From the start: nothing is done, and what went up today is planned again."
                     : "Nothing of it is done yet.",
               ButtonLook::plain, -1, begun))
        day.again(state.session);
}

}  // namespace wallwright::app
