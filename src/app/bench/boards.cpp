#include "app/bench/boards.h"

#include "desk/bench/match_moves.h"
#include "edits/prints.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using desk::BenchView;

constexpr double kBetweenLooks = 0.05;  // s, at what has been found

bool shows(const State& state, BenchView view) {
    return state.step == desk::Step::mounts && state.bench.view == view;
}

/// The next print of the drawer in the order in which they lie there.
void choose_print(State& state, int by) {
    const auto& items = state.prints.layout.prints.items;
    if (items.empty())
        return;
    auto& chosen = state.prints.hand.chosen;
    const auto now = std::ranges::find(items, chosen, &desk::BoardItem::print);
    const auto count = static_cast<std::ptrdiff_t>(items.size());
    const std::ptrdiff_t before = by > 0 ? -1 : count;
    const std::ptrdiff_t next = (now == items.end() ? before : now - items.begin()) + by;
    chosen = items[static_cast<std::size_t>((next + count) % count)].print;
    state.session.selection.clear();
}

void keep_chosen_print(State& state) {
    const auto& chosen = state.prints.hand.chosen;
    auto piece = state.session.selection.one_piece();
    if (chosen)
        piece = desk::piece_with(state.session.kept(), *chosen);
    const wall::Piece* of = piece ? find(state.session.kept(), *piece) : nullptr;
    if (of == nullptr)
        state.session.notice =
            desk::Notice{false, chosen ? "This print is in no frame that it could stay in."
                                       : "Choose a print or a frame first."};
    else
        desk::keep_print(state.session, of->id, !of->keeps_print);
}

}  // namespace

void follow_boards(Ui& ui, State& state) {
    desk::MatchView& prints = state.prints;
    if (shows(state, BenchView::prints) && !prints.hand.is_busy()) {
        prints.choice.follow(state.session);
        if (prints.choice.is_running())
            ui.memory.wake(kBetweenLooks);
    }
    desk::CardView& card = state.card;
    if (!shows(state, BenchView::card))
        return card.choice.pause();
    card.choice.follow(state.session, card.hand.is_busy());
    card.hand.follow(card.choice);
    card.hand.keep_only_in(state.session.project());
    if (card.choice.is_running())
        ui.memory.wake(kBetweenLooks);
}

void give_boards_up(State& state) {
    desk::give_up(state.prints);
    desk::give_up(state.card);
}

bool is_board_hand_busy(const State& state) {
    return state.prints.hand.is_busy() || state.card.hand.is_busy();
}

void let_go_of_boards(State& state) {
    state.prints.hand.cancel();
    state.card.hand.cancel();
}

void keep_chosen(State& state) {
    if (shows(state, BenchView::prints))
        return keep_chosen_print(state);
    const auto chosen = state.card.hand.chosen;
    if (shows(state, BenchView::card) && chosen)
        desk::keep_or_free(state.session, state.card.scene(), *chosen);
    else
        state.session.notice =
            desk::Notice{false, "Choose a print, or a blank of card, on the bench first."};
}

void turn_blank(State& state) {
    if (shows(state, BenchView::card) && state.card.hand.is_busy())
        state.card.hand.turn(state.session, state.card.scene());
    else
        state.session.notice = desk::Notice{false, "Hold a blank of card in the hand to turn it."};
}

bool board_key(State& state, std::string_view key) {
    if (!shows(state, BenchView::prints))
        return false;
    if (key == "Left" || key == "Up")
        choose_print(state, -1);
    else if (key == "Right" || key == "Down")
        choose_print(state, 1);
    else if (key == "Delete" && state.prints.hand.chosen)
        remove_print(state, *state.prints.hand.chosen);
    else
        return false;
    return true;
}

void remove_print(State& state, const wall::PrintId& print) {
    state.session.apply(
        fmt::format("Take {} out of the drawer", title_of(state.session.kept(), print)),
        edits::remove_print(state.session.kept(), print));
}

}  // namespace wallwright::app
