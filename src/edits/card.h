// Edits of the card that mounts are cut from, and of what a cut mount costs.
#pragma once

#include "edits/pieces.h"
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
/// With the blanks kept on it.
Result<wall::Project> remove_card(wall::Project project, const wall::CardSheetId& id);

/// Keeps a blank where it is put, instead of where the same layer of the same piece was kept.
Result<wall::Project> keep_blank(wall::Project project, wall::KeptBlank kept);
/// Lets it be laid as is best; `layer` counts from 1. One that is not kept is a Problem.
Result<wall::Project> free_blank(wall::Project project, const wall::PieceId& piece, int layer);
/// Changes the project in place for an edit that takes a piece, a layer or a sheet away, or cuts
/// it: blanks kept of it or on it go.
void drop_loose_blanks(wall::Project& project);
/// Change the project in place for an edit after which other mounts would be cut: where one with
/// this mount, this print or this frame was cut, it is to be cut again.
void cut_anew(wall::Project& project, const wall::MountId& mount);
void cut_anew(wall::Project& project, const wall::PrintId& print);
void cut_anew(wall::Project& project, const wall::FrameId& frame);

/// So many sheets of one kind.
struct UsedCard {
    wall::CardSheetId sheet;
    int count = 1;
};
/// What was made of the card.
struct CutCard {
    std::vector<UsedCard> used;
    std::vector<wall::CardSheet> left;  ///< Over, worth keeping.
    std::vector<wall::PieceId> mounts;  ///< Whose mounts are cut.
};
/// After a plan was cut: the mounts are cut, the used sheets are taken off the count, an offcut of
/// which none is left goes, and what is left over joins as offcuts, whose ids are made as in
/// add_card. Sheets to buy have no count to take from. Blanks that are kept for other mounts stay
/// so, on the first of the sheets that there still are. More than there are is a Problem that says
/// how many.
Result<wall::Project> use_card(wall::Project project, const CutCard& cut);
/// Their mounts are cut, so that they need no more card, or no longer; blanks that were kept for
/// them go. A piece without a mount has none to cut.
Result<wall::Project> set_mount_cut(wall::Project project, PieceIds ids, bool is_cut);

/// What it costs to have one mount cut; nothing where it is not known.
Result<wall::Project> set_mount_cut_price(wall::Project project, std::optional<double> price);

}  // namespace wallwright::edits
