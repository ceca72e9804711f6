// Edits of the card that mounts are cut from, and of what a cut mount costs.
#pragma once

#include "base/problem.h"
#include "wall/project.h"

#include <functional>
#include <optional>
#include <span>

namespace wallwright::edits {

/// Its id is made from its title, or else "offcut" or "sheet", and put into `made`.
Result<wall::Project> add_card(wall::Project project, wall::CardSheet sheet,
                               wall::CardSheetId& made);
/// Changes one kind of sheet by hand; its id is not to be changed. The result must be sound.
Result<wall::Project> change_card(wall::Project project, const wall::CardSheetId& id,
                                  const std::function<void(wall::CardSheet&)>& change);
Result<wall::Project> remove_card(wall::Project project, const wall::CardSheetId& id);

/// So many sheets of one kind.
struct UsedCard {
    wall::CardSheetId sheet;
    int count = 1;
};
/// After a plan was cut: the used sheets are taken off the count, an offcut of which none is left
/// goes, and what is left over joins as offcuts, whose ids are made as in add_card. Sheets to buy
/// have no count to take from. More than there are is a Problem that says how many.
Result<wall::Project> use_card(wall::Project project, std::span<const UsedCard> used,
                               std::span<const wall::CardSheet> left);

/// What it costs to have one mount cut; nothing where it is not known.
Result<wall::Project> set_mount_cut_price(wall::Project project, std::optional<double> price);

}  // namespace wallwright::edits
