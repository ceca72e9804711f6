#include "edits/card.h"

#include "base/contract.h"
#include "edits/by_hand.h"
#include "edits/edit.h"
#include "edits/free_id.h"
#include "edits/sound.h"
#include "wall/find_in.h"

#include <fmt/format.h>

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

Result<Project> use_card(Project project, std::span<const UsedCard> used,
                         std::span<const CardSheet> left) {
    for (const UsedCard& one : used)
        if (auto taken = take_off(project, one); !taken)
            return fail(std::move(taken.error()));
    // Only once all are taken off, since a sheet may be listed more than once.
    for (const UsedCard& one : used) {
        std::erase_if(project.kept_blanks,
                      [&one](const wall::KeptBlank& kept) { return kept.sheet == one.sheet; });
        std::erase_if(project.card, [&one](const CardSheet& sheet) {
            return sheet.id == one.sheet && sheet.offcut && sheet.count == 0;
        });
    }
    for (CardSheet one : left) {
        one.offcut = true;
        one.to_buy = false;
        add(project, std::move(one));
    }
    return sound(std::move(project));
}

Result<Project> set_mount_cut_price(Project project, std::optional<double> price) {
    project.mount_cut_price = price;
    return sound(std::move(project));
}

}  // namespace wallwright::edits
