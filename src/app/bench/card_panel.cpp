#include "app/actions.h"
#include "app/bench/card_parts.h"
#include "app/panels/action_button.h"
#include "app/widgets.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

std::string counted(std::size_t count, const char* one) {
    return fmt::format("{} {}{}", count, one, count == 1 ? "" : "s");
}

std::string counts(const desk::CardChoice& choice) {
    if (choice.plan() == nullptr)
        return "Sheets of card, and the blanks that are cut from them.";
    if (choice.plan()->lots.empty())
        return "Nothing is left to cut.";
    std::size_t blanks = 0;
    std::size_t sheets = 0;
    for (const mounts::CardLot& lot : choice.plan()->lots) {
        blanks += lot.task.blanks.size();
        sheets += lot.plan.count;
    }
    return fmt::format("{} from {} for {}. Drag a blank to put it elsewhere.",
                       counted(blanks, "blank"), counted(sheets, "sheet"),
                       counted(choice.plan()->cost.mounts, "mount"));
}

/// Whose mounts are cut, in the wall's order.
std::vector<wall::PieceId> cut_in_order(const wall::Project& project,
                                        const mounts::AfterCutting& after) {
    std::vector<wall::PieceId> pieces;
    for (const wall::Piece& piece : project.pieces)
        if (std::ranges::find(after.cut, piece.id) != after.cut.end())
            pieces.push_back(piece.id);
    return pieces;
}

/// "The mounts of Kelp, Dune and 3 more are cut; 2 offcuts joined the card."
std::string cut_words(const wall::Project& project, const mounts::AfterCutting& after) {
    constexpr std::size_t kMostNamed = 3;
    int offcuts = 0;
    for (const wall::CardSheet& sheet : after.left)
        offcuts += sheet.count;
    const bool is_one = after.cut.size() == 1;
    const std::string done =
        after.cut.empty()
            ? "The card that was used is off the stock"
            : fmt::format("The mount{} of {} {} cut", is_one ? "" : "s",
                          titles_of(project, cut_in_order(project, after), kMostNamed),
                          is_one ? "is" : "are");
    const std::string left =
        offcuts == 0 ? "no offcut is large enough to keep"
                     : fmt::format("{} joined the card",
                                   counted(static_cast<std::size_t>(offcuts), "offcut"));
    return fmt::format("{}; {}.", done, left);
}

void take_off_stock(State& state) {
    desk::CardChoice& choice = state.card.choice;
    const std::string words =
        cut_words(state.session.kept(), mounts::after_cutting(*choice.plan()));
    if (choice.take_off_stock(state.session))
        state.session.notice = desk::Notice{false, words};
}

void after_part(Ui& ui, State& state) {
    const desk::CardChoice& choice = state.card.choice;
    const bool any = !choice.is_stale() && !choice.plan()->lots.empty();
    heading(ui, "When it is cut");
    if (button(ui, "card/use", "Take it off the stock",
               "The sheets that are used go, the offcuts worth keeping join those at hand.",
               ButtonLook::plain, -1, any))
        take_off_stock(state);
    action_button(ui, state, ActionId::card_plan, "card-plan");
    action_button(ui, state, ActionId::plan_and_cutting, "plan-and-cutting", ButtonLook::plain,
                  cutting_hindrance(state.session.kept()));
}

}  // namespace

void card_panel(Ui& ui, State& state) {
    panel_title(ui, "Card", counts(state.card.choice));
    card_plan_part(ui, state);
    card_cost_part(ui, state);
    card_stock_part(ui, state);
    after_part(ui, state);
}

}  // namespace wallwright::app
