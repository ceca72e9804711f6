#include "app/bench/card_parts.h"
#include "app/panels/search_button.h"
#include "app/price_row.h"
#include "app/scoped.h"
#include "app/widgets.h"
#include "edits/card.h"
#include "mounts/card/plan_words.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using mounts::CardCost;
using mounts::CardLot;

/// As high while it runs as else, so that nothing below jumps under the hand.
void search_row(Ui& ui, State& state) {
    constexpr float kBar = 4;  // px at a scale of 1
    desk::CardChoice& choice = state.card.choice;
    const bool is_running = choice.is_running();
    const SearchButton said{"card/search",
                            "Look for a better plan",
                            "Stop looking for a better plan",
                            "Tries other ways to lay out the same blanks.",
                            "What it has found so far is the plan.",
                            ""};
    switch (search_button(ui, said, is_running, choice.done())) {
        case SearchPress::begin:
            choice.again();
            break;
        case SearchPress::end:
            choice.stop();
            break;
        case SearchPress::none:
            break;
    }
    if (!is_running)
        ImGui::Dummy({1, ui.px(kBar)});
}

/// A sheet that the plan uses and nobody recorded, a full one: it can be put among those to buy.
const mounts::NestSheet* assumed_sheet(const CardLot& lot) {
    const auto used = std::ranges::find_if(lot.plan.sheets, [&lot](const mounts::CutSheet& cut) {
        return !lot.origins[cut.sheet].id && !lot.origins[cut.sheet].drop_out;
    });
    return used == lot.plan.sheets.end() ? nullptr : &lot.task.sheets[used->sheet];
}

void record(State& state, const CardLot& lot, const mounts::NestSheet& assumed) {
    wall::CardSheet sheet;
    sheet.card = lot.card;
    sheet.colour = lot.colour;
    sheet.to_buy = true;
    sheet.title = "Full sheet";
    sheet.size = assumed.size;
    if (assumed.has_grain)
        sheet.grain = wall::Grain::upright;
    wall::CardSheetId made;
    auto changed = edits::add_card(state.session.kept(), sheet, made);
    if (state.session.apply("Add a sheet of card", std::move(changed)))
        state.card.open_sheet = made;
}

void lot_words(Ui& ui, State& state, const mounts::CardPlan& plan, std::size_t index) {
    const CardLot& lot = plan.lots[index];
    {
        const ScopedWrap wrap;
        ImGui::TextUnformatted(desk::card_title(plan, index).c_str());
    }
    hint(ui, mounts::lot_words(lot));
    ui.probe.note(fmt::format("card/lot/{}", index + 1));
    const mounts::NestSheet* assumed = assumed_sheet(lot);
    if (assumed != nullptr &&
        button(ui, fmt::format("card/record/{}", index + 1).c_str(), "Put it among those to buy",
               "Then it can have a price and another size."))
        record(state, lot, *assumed);
}

std::string money(double sum, std::size_t without) {
    if (without == 0)
        return price_text(sum);
    return sum > 0 ? fmt::format("{} and {} without a price", price_text(sum), without)
                   : std::string("no price yet");
}

}  // namespace

void card_plan_part(Ui& ui, State& state) {
    search_row(ui, state);
    const desk::CardChoice& choice = state.card.choice;
    if (choice.plan() == nullptr)
        return;
    // A copy: pressing something may bring another.
    const mounts::CardPlan plan = *choice.plan();
    for (std::size_t i = 0; i < plan.lots.size(); ++i)
        lot_words(ui, state, plan, i);
    for (const std::string& note : plan.notes)
        hint(ui, note);
}

void card_cost_part(Ui& ui, State& state) {
    const mounts::CardPlan* plan = state.card.choice.plan();
    if (plan == nullptr)
        return;
    const CardCost cost = plan->cost;
    heading(ui, "What it costs");
    value_row(
        ui,
        cost.bought == 1 ? "1 sheet to buy" : fmt::format("{} sheets to buy", cost.bought).c_str(),
        cost.bought == 0 ? "nothing" : money(cost.to_buy, cost.without_price),
        "Of the sheets in this plan that are not at hand.");
    if (const auto price = price_row(ui, "card/cut-price", "Having one mount cut",
                                     state.session.kept().mount_cut_price,
                                     "What a framer asks for one mount, card and all, in your own "
                                     "money.",
                                     "not known"))
        state.session.apply("Change the price of a cut mount",
                            edits::set_mount_cut_price(state.session.kept(), price->price));
    if (cost.cut_for_you && cost.mounts > 0)
        value_row(ui,
                  cost.mounts == 1 ? "Having it cut"
                                   : fmt::format("Having {} mounts cut", cost.mounts).c_str(),
                  price_text(*cost.cut_for_you));
}

}  // namespace wallwright::app
