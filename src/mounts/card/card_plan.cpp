#include "mounts/card/card_plan.h"

#include "mounts/card/lay_lot.h"
#include "mounts/card/lots.h"

namespace wallwright::mounts {

namespace {

CardCost cost_of_plan(const wall::Project& project, const std::vector<CardLot>& lots) {
    CardCost cost;
    for (const CardLot& lot : lots)
        for (const CutSheet& sheet : lot.plan.sheets) {
            const NestSheet& kind = lot.task.sheets[sheet.sheet];
            if (!kind.to_buy)
                continue;
            cost.bought += 1;
            cost.to_buy += kind.price;
            cost.without_price += kind.price > 0 ? 0 : 1;
        }
    cost.mounts = pieces_cut(lots).size();
    if (project.mount_cut_price)
        cost.cut_for_you = static_cast<double>(cost.mounts) * *project.mount_cut_price;
    return cost;
}

LotList laid(const wall::Project& project, const CardOptions& options,
             const std::set<wall::PieceId>& left_out, const std::function<bool()>& go_on) {
    LotList list = lots_of(project, options.only, left_out);
    for (CardLot& lot : list.lots)
        lay_lot(project, lot, options, go_on, list.notes);
    return list;
}

}  // namespace

CardPlan plan_card(const wall::Project& project, const CardOptions& options,
                   const std::function<bool()>& go_on) {
    LotList list = laid(project, options, {}, go_on);
    // A mount of which one board is left out would waste the card of its others.
    std::vector<std::string> of_left_out;
    std::set<wall::PieceId> left_out;
    for (auto more = pieces_left_out(list.lots); !more.empty(); more = pieces_left_out(list.lots)) {
        for (const CardLot& lot : list.lots)
            note_left_out(project, lot, of_left_out);
        left_out.merge(more);
        list = laid(project, options, left_out, go_on);
    }
    list.notes.insert(list.notes.end(), of_left_out.begin(), of_left_out.end());
    CardPlan plan;
    plan.cost = cost_of_plan(project, list.lots);
    plan.lots = std::move(list.lots);
    plan.unit = project.unit;
    plan.notes = std::move(list.notes);
    return plan;
}

}  // namespace wallwright::mounts
