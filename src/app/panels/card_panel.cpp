#include "app/actions.h"
#include "app/panels/action_button.h"
#include "app/panels/card_parts.h"
#include "app/widgets.h"

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

void after_part(Ui& ui, State& state) {
    const desk::CardChoice& choice = state.card.choice;
    const bool any = !choice.is_stale() && !choice.plan()->lots.empty();
    heading(ui, "When it is cut");
    if (button(ui, "card/use", "Take it off the stock",
               "The sheets that are used go, the offcuts worth keeping join those at hand.",
               ButtonLook::plain, -1, any))
        state.card.choice.take_off_stock(state.session);
    action_button(ui, state, ActionId::card_plan, "card-plan");
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
