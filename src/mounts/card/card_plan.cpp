#include "mounts/card/card_plan.h"

#include "mounts/card/lay_lot.h"
#include "mounts/card/lots.h"

#include <algorithm>
#include <set>

namespace wallwright::mounts {

namespace {

/// Pieces of which every blank is laid.
std::size_t mounts_cut(const std::vector<CardLot>& lots) {
    std::set<wall::PieceId> cut;
    std::set<wall::PieceId> not_cut;
    for (const CardLot& lot : lots)
        for (std::size_t i = 0; i < lot.owners.size(); ++i) {
            const auto& left_out = lot.plan.left_out;
            const bool is_left = std::find(left_out.begin(), left_out.end(), i) != left_out.end();
            (is_left ? not_cut : cut).insert(lot.owners[i].piece);
        }
    return static_cast<std::size_t>(
        std::count_if(cut.begin(), cut.end(),
                      [&not_cut](const wall::PieceId& piece) { return !not_cut.contains(piece); }));
}

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
    cost.mounts = mounts_cut(lots);
    if (project.mount_cut_price)
        cost.cut_for_you = static_cast<double>(cost.mounts) * *project.mount_cut_price;
    return cost;
}

}  // namespace

CardPlan plan_card(const wall::Project& project, const CardOptions& options,
                   const std::function<bool()>& go_on) {
    LotList list = lots_of(project, options.only);
    for (CardLot& lot : list.lots)
        lay_lot(project, lot, options, go_on, list.notes);
    CardPlan plan;
    plan.cost = cost_of_plan(project, list.lots);
    plan.lots = std::move(list.lots);
    plan.unit = project.unit;
    plan.notes = std::move(list.notes);
    return plan;
}

}  // namespace wallwright::mounts
