#include "app/actions.h"
#include "app/bench/board_parts.h"
#include "app/look_around.h"
#include "wall/titles.h"

#include <fmt/format.h>

namespace wallwright::app {

namespace {

using desk::CardView;
using geometry::Wall;

void keep_in_sight(const Ui& ui, State& state, const ScreenArea& area) {
    if (state.card.hand.is_busy())
        return;
    keep_fitted(ui, state.bench.look(), area, {.found = state.card.choice.plan_number()},
                [&](double) { return state.card.layout.extent; });
}

void point(State& state, const BoardMouse& mouse) {
    CardView& view = state.card;
    const desk::View& look = state.bench.look().view;
    const desk::CardEvent event{board_point(look), look.mm(1), ImGui::GetIO().KeyAlt};
    move_hand(
        view.hand, state.session, [&view] { return view.scene(); }, event, mouse);
}

std::string key_of(const desk::BlankName& name) {
    return fmt::format("{}-{}", name.piece.text, name.layer + 1);
}

/// "board/blank/kelp-1", "board/blank-lock/kelp-1", "board/sheet/1-1".
void note_things(Ui& ui, const State& state) {
    const CardView& view = state.card;
    const desk::View& look = state.bench.look().view;
    for (const desk::LaidSheet& sheet : view.layout.sheets)
        note_on_board(ui, look,
                      fmt::format("board/sheet/{}-{}", sheet.at.lot + 1, sheet.at.sheet + 1),
                      sheet.place);
    for (const desk::LaidBlank& blank : view.blanks) {
        const std::string key = key_of(desk::name_of(*view.choice.plan(), blank));
        note_on_board(ui, look, "board/blank/" + key, blank.place);
        const auto lock = desk::lock_of(blank, 1 / view.scale);
        note_on_board(ui, look, "board/blank-lock/" + key,
                      geometry::Rect<Wall>{lock, lock}.grown(look.mm(4)));
    }
}

std::string blank_words(const State& state, const desk::BlankName& name) {
    const wall::Project& project = state.session.project();
    const CardView& view = state.card;
    for (const desk::LaidBlank& blank : view.blanks) {
        if (desk::name_of(*view.choice.plan(), blank) != name)
            continue;
        const bool kept = desk::is_kept(*view.choice.plan(), blank);
        const std::string title = title_of(project, name.piece);
        if (view.hand.is_on_lock())
            return kept ? fmt::format("The blank for {} stays here. Press to free it.", title)
                        : fmt::format(
                              "Press to keep the blank for {} here while all others are "
                              "laid about it.",
                              title);
        return fmt::format("The blank for {}, {} × {}. Drag it to another place or sheet{}.", title,
                           units::format_number(blank.place.width(), project.unit),
                           units::format_length(blank.place.height(), project.unit),
                           kept ? "; it stays where you put it" : "");
    }
    return "";
}

void tell(Ui& ui, const State& state) {
    const desk::CardHand& hand = state.card.hand;
    if (!hand.hovered() || hand.is_busy())
        return board_tip(ui, "", "");
    board_tip(ui, key_of(*hand.hovered()) + (hand.is_on_lock() ? "/lock" : ""),
              blank_words(state, *hand.hovered()));
}

/// Where there are no sheets to show.
std::string empty_words(const State& state) {
    const desk::CardChoice& choice = state.card.choice;
    if (choice.plan() == nullptr)
        return choice.is_running() ? "Laying out the card..." : "";
    if (!choice.plan()->lots.empty())
        return "";
    const std::string why = cutting_hindrance(state.session.kept());
    return why.empty() ? "No mount can be cut as it is. The column says why." : why;
}

}  // namespace

void bench_card(Ui& ui, State& state, const ScreenArea& area) {
    if (area.width() < 1 || area.height() < 1)
        return;
    const BoardMouse mouse = take_board(ui, "bench/card", area);
    CardView& view = state.card;
    if (!view.hand.is_busy())
        desk::lay_out(view, paper_of(ui, area));
    if (const std::string words = empty_words(state); !words.empty())
        return say_on_board(ui, area, words);
    keep_in_sight(ui, state, area);
    desk::View& look = state.bench.look().view;
    if (look_around(look, mouse.hovered, mouse.active))
        state.bench.look().fitted = false;
    desk::draw(view, board_scale(ui, look, area));
    point(state, mouse);
    if (mouse.hovered || view.hand.is_busy())
        ImGui::SetMouseCursor(view.hand.hovered() || view.hand.is_busy() ? ImGuiMouseCursor_Hand
                                                                         : ImGuiMouseCursor_Arrow);
    note_things(ui, state);
    paint_board(
        ui, look, area,
        {view.shapes, desk::card_overlay(view.scene(), view.hand, sight_of(ui, look, area))});
    tell(ui, state);
}

}  // namespace wallwright::app
