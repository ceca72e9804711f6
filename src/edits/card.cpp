#include "edits/card.h"

#include "base/contract.h"
#include "edits/by_hand.h"
#include "edits/edit.h"
#include "edits/free_id.h"
#include "edits/look_up.h"
#include "edits/sound.h"
#include "wall/find_in.h"

#include <fmt/format.h>

#include <iterator>
#include <set>

namespace wallwright::edits {

using wall::CardSheet;
using wall::CardSheetId;
using wall::Project;

namespace {

Problem no_such_sheet(const CardSheetId& id) {
    return {"card/" + id.text, "there is no such sheet", "name one that is in the project", ""};
}

CardSheetId add(Project& project, CardSheet sheet) {
    std::string wanted = sheet.offcut ? "offcut" : "sheet";
    if (!sheet.title.empty())
        wanted = id_from(sheet.title);
    return add_with_id(project.card, std::move(sheet), wanted).id;
}

Outcome take_off(Project& project, const UsedCard& used) {
    WW_EXPECT(used.count >= 0, "a plan uses sheets, it makes none");
    CardSheet* sheet = wall::find_in(project.card, used.sheet);
    if (sheet == nullptr)
        return fail(no_such_sheet(used.sheet));
    if (sheet->to_buy)
        return {};
    if (sheet->count < used.count)
        return fail(
            {"card/" + sheet->id.text,
             fmt::format("the plan takes {} of them, and there are {}", used.count, sheet->count),
             "plan again with what is at hand", ""});
    sheet->count -= used.count;
    return {};
}

/// The sheets of this kind that blanks are kept on become the first ones, in their order.
void count_kept_anew(Project& project, const CardSheetId& sheet) {
    std::set<int> numbers;
    for (const wall::KeptBlank& kept : project.kept_blanks)
        if (kept.sheet == sheet)
            numbers.insert(kept.number);
    for (wall::KeptBlank& kept : project.kept_blanks)
        if (kept.sheet == sheet)
            kept.number =
                1 + static_cast<int>(std::distance(numbers.begin(), numbers.find(kept.number)));
}

}  // namespace

Result<Project> add_card(Project project, CardSheet sheet, CardSheetId& made) {
    const CardSheetId id = add(project, std::move(sheet));
    auto added = sound(std::move(project));
    if (added)
        made = id;
    return added;
}

Result<Project> change_card(Project project, const CardSheetId& id,
                            const std::function<void(CardSheet&)>& change) {
    CardSheet* sheet = wall::find_in(project.card, id);
    if (sheet == nullptr)
        return fail(no_such_sheet(id));
    change_by_hand(*sheet, change);
    return sound(std::move(project));
}

Result<Project> remove_card(Project project, const CardSheetId& id) {
    if (std::erase_if(project.card, [&id](const CardSheet& one) { return one.id == id; }) == 0)
        return fail(no_such_sheet(id));
    drop_loose_blanks(project);
    return sound(std::move(project));
}

Result<Project> use_card(Project project, const CutCard& cut) {
    auto marked = set_mount_cut(std::move(project), cut.mounts, true);
    if (!marked)
        return marked;
    for (const UsedCard& one : cut.used)
        if (auto taken = take_off(*marked, one); !taken)
            return fail(std::move(taken.error()));
    // Only once all are taken off, since a sheet may be listed more than once.
    for (const UsedCard& one : cut.used) {
        std::erase_if(marked->card, [&one](const CardSheet& sheet) {
            return sheet.id == one.sheet && sheet.offcut && sheet.count == 0;
        });
        count_kept_anew(*marked, one.sheet);
    }
    drop_loose_blanks(*marked);
    for (CardSheet one : cut.left) {
        one.offcut = true;
        one.to_buy = false;
        add(*marked, std::move(one));
    }
    return sound(std::move(*marked));
}

Result<Project> set_mount_cut(Project project, PieceIds ids, bool is_cut) {
    const auto pieces = pieces_in(project, ids);
    if (!pieces)
        return fail(pieces.error());
    for (wall::Piece* piece : *pieces) {
        if (is_cut && !piece->mount)
            return fail({"pieces/" + piece->id.text, "it has no mount", "give it one first", ""});
        piece->mount_cut = is_cut;
    }
    drop_loose_blanks(project);
    return sound(std::move(project));
}

Result<Project> set_mount_cut_price(Project project, std::optional<double> price) {
    project.mount_cut_price = price;
    return sound(std::move(project));
}

}  // namespace wallwright::edits
