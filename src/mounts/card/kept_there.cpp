#include "base/contract.h"
#include "mounts/card/kept.h"
#include "mounts/card/plan_words.h"
#include "mounts/design/rule_step.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace wallwright::mounts {

namespace {

using wall::KeptBlank;

const KeptBlank* kept_of(const wall::Project& project, const BlankOwner& owner) {
    const auto found = std::find_if(
        project.kept_blanks.begin(), project.kept_blanks.end(), [&owner](const KeptBlank& kept) {
            return kept.piece == owner.piece &&
                   static_cast<std::size_t>(kept.layer) == owner.layer + 1;
        });
    return found == project.kept_blanks.end() ? nullptr : &*found;
}

/// Those kept on the sheet, without the one that moves.
std::vector<PlacedBlank> others_kept(const CardLot& lot, const BlankMove& move) {
    std::vector<PlacedBlank> others;
    for (const PlacedBlank& placed : lot.plan.sheets[move.sheet].placed)
        if (placed.blank != move.blank && lot.kept[placed.blank])
            others.push_back(placed);
    return others;
}

/// The first that is not among them.
int free_number(const std::set<int>& taken) {
    int number = 1;
    while (taken.contains(number))
        ++number;
    return number;
}

/// The sheet's number among its kind: that of what is kept on it, or else the first on which
/// nothing else is or was kept, as long as there are sheets enough for that.
int number_of(const wall::Project& project, const CardLot& lot, const BlankMove& move,
              const std::vector<PlacedBlank>& others) {
    for (const PlacedBlank& other : others)
        if (const KeptBlank* kept = kept_of(project, lot.owners[other.blank]))
            return kept->number;
    const std::size_t kind = lot.plan.sheets[move.sheet].sheet;
    std::set<int> in_use;
    std::set<int> named;
    for (std::size_t i = 0; i < lot.owners.size(); ++i) {
        const KeptBlank* kept = kept_of(project, lot.owners[i]);
        if (kept == nullptr || i == move.blank || kept->sheet != lot.origins[kind].id)
            continue;
        named.insert(kept->number);
        if (lot.kept[i])
            in_use.insert(kept->number);
    }
    const int number = free_number(named);
    const auto count = lot.task.sheets[kind].count;
    return count && static_cast<std::size_t>(number) > *count ? free_number(in_use) : number;
}

/// As a file keeps it.
double to_hundredth(double mm) {
    return std::round(mm * 100) / 100;
}

}  // namespace

Result<KeptBlank> kept_there(const wall::Project& project, const CardPlan& plan,
                             const BlankMove& move) {
    WW_EXPECT(move.lot < plan.lots.size() && move.sheet < plan.lots[move.lot].plan.sheets.size() &&
                  move.blank < plan.lots[move.lot].owners.size(),
              "a blank moves within its lot");
    const CardLot& lot = plan.lots[move.lot];
    const BlankOwner& owner = lot.owners[move.blank];
    const std::size_t kind = lot.plan.sheets[move.sheet].sheet;
    const std::vector<PlacedBlank> others = others_kept(lot, move);
    const double step = rule_step(project.unit);
    const PlacedBlank wanted = placed_at(lot.task, move.blank, to_step(move.left, step),
                                         to_step(move.top, step), move.turned);
    if (auto why = not_kept(lot, kind, wanted, others))
        return fail({blank_name(owner), std::move(why->what), std::move(why->remedy), ""});
    KeptBlank kept;
    if (const KeptBlank* before = kept_of(project, owner))
        kept.unknown = before->unknown;
    kept.piece = owner.piece;
    kept.layer = static_cast<int>(owner.layer) + 1;
    kept.sheet = *lot.origins[kind].id;
    kept.number = number_of(project, lot, move, others);
    kept.left = std::max(0.0, to_hundredth(wanted.place.left));
    kept.top = std::max(0.0, to_hundredth(wanted.place.top));
    kept.turned = move.turned;
    return kept;
}

}  // namespace wallwright::mounts
