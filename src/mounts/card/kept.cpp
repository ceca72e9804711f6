#include "mounts/card/kept.h"

#include "mounts/card/on_rule.h"
#include "mounts/card/plan_words.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::mounts {

namespace {

using wall::KeptBlank;

std::optional<std::size_t> blank_of(const CardLot& lot, const KeptBlank& kept) {
    for (std::size_t i = 0; i < lot.owners.size(); ++i)
        if (lot.owners[i].piece == kept.piece &&
            lot.owners[i].layer + 1 == static_cast<std::size_t>(kept.layer))
            return i;
    return std::nullopt;
}

std::optional<std::size_t> kind_of(const CardLot& lot, const KeptBlank& kept) {
    for (std::size_t i = 0; i < lot.origins.size(); ++i)
        if (lot.origins[i].id == kept.sheet)
            return i;
    return std::nullopt;
}

std::vector<OnSheet> places_of(std::span<const PlacedBlank> placed) {
    std::vector<OnSheet> places;
    for (const PlacedBlank& one : placed)
        places.push_back(one.place);
    return places;
}

/// Where it is not the sheet's fault.
std::optional<NotKept> misplaced(const CardLot& lot, const NestSheet& kind,
                                 const PlacedBlank& wanted, std::span<const PlacedBlank> others) {
    if (!lies_in(wanted.place, {.size = kind.size}))
        return NotKept{"it would leave the sheet", "put it on the sheet with all its edges"};
    if (!lies_in(wanted.place, inside_margin(kind)))
        return NotKept{"it would take of the sheet's damaged edge", "put it inside the margin"};
    for (const PlacedBlank& other : others)
        if (overlap(wanted.place, other.place))
            return NotKept{fmt::format("it would lie on {}, which is kept there",
                                       blank_name(lot.owners[other.blank])),
                           "put it beside, or let the other one go"};
    std::vector<OnSheet> places = places_of(others);
    places.push_back(wanted.place);
    if (!cut_about(inside_margin(kind), places))
        return NotKept{"no straight cuts from edge to edge would part it from those kept there",
                       "line up an edge of it with one of theirs, or let one of them go"};
    return std::nullopt;
}

KeptSheet& sheet_for(std::vector<KeptSheet>& sheets, std::size_t kind, int number) {
    const auto found = std::find_if(sheets.begin(), sheets.end(), [&](const KeptSheet& sheet) {
        return sheet.kind == kind && sheet.number == number;
    });
    if (found != sheets.end())
        return *found;
    sheets.push_back({.kind = kind, .number = number, .placed = {}, .about = {}});
    return sheets.back();
}

/// The blank's kind of sheet, or what became of it.
Result<std::size_t> kind_for(const wall::Project& project, const CardLot& lot,
                             const KeptBlank& kept) {
    const auto kind = kind_of(lot, kept);
    if (!kind)
        return fail({"", "that sheet is used up, or of another card", "", ""});
    const wall::CardSheet& sheet = *find(project, kept.sheet);
    if (!sheet.to_buy && kept.number > sheet.count)
        return fail({"",
                     fmt::format("only {} of these sheets {} left", sheet.count,
                                 sheet.count == 1 ? "is" : "are"),
                     "", ""});
    return *kind;
}

/// Why it cannot stay; otherwise it is among the sheets.
std::optional<std::string> keep(const wall::Project& project, const CardLot& lot,
                                const KeptBlank& kept, std::size_t blank,
                                std::vector<KeptSheet>& sheets) {
    const auto kind = kind_for(project, lot, kept);
    const units::LengthUnit unit = project.unit;
    if (!kind)
        return kind.error().what;
    KeptSheet sheet = sheet_for(sheets, *kind, kept.number);
    const PlacedBlank wanted = placed_at(lot.task, blank, down_to_rule(kept.left, unit),
                                         down_to_rule(kept.top, unit), kept.turned);
    if (const auto why = not_kept(lot, *kind, wanted, sheet.placed)) {
        std::erase_if(sheets, [](const KeptSheet& one) { return one.placed.empty(); });
        return why->what;
    }
    sheet_for(sheets, *kind, kept.number).placed.push_back(wanted);
    return std::nullopt;
}

}  // namespace

PlacedBlank placed_at(const NestTask& task, std::size_t blank, double left, double top,
                      bool turned) {
    const geometry::Size size = task.blanks.at(blank).size;
    return {.blank = blank, .place = {left, top, turned ? size.turned() : size}, .turned = turned};
}

OnSheet inside_margin(const NestSheet& kind) {
    return {kind.margin,
            kind.margin,
            {kind.size.width - 2 * kind.margin, kind.size.height - 2 * kind.margin}};
}

std::optional<NotKept> not_kept(const CardLot& lot, std::size_t kind, const PlacedBlank& wanted,
                                std::span<const PlacedBlank> others) {
    const NestSheet& sheet = lot.task.sheets.at(kind);
    const SheetOrigin& origin = lot.origins.at(kind);
    if (origin.drop_out)
        return NotKept{"a drop-out is there only once its mount is cut, so nothing is kept on it",
                       "put it on a sheet"};
    if (!origin.id)
        return NotKept{"that sheet is not in the project's card",
                       "put the sheets you have or buy into the project's card first"};
    if (sheet.has_grain)
        return NotKept{"that sheet has a grain, and blanks on it are laid by it",
                       "keep blanks on plain sheets"};
    if (wanted.turned && !lot.task.blanks.at(wanted.blank).may_turn)
        return NotKept{"card of this kind has a grain, so no blank of it is turned",
                       "put it there unturned"};
    return misplaced(lot, sheet, wanted, others);
}

KeptSheets kept_sheets(const wall::Project& project, const CardLot& lot) {
    KeptSheets all;
    for (const KeptBlank& kept : project.kept_blanks) {
        const auto blank = blank_of(lot, kept);
        if (!blank)
            continue;
        if (const auto why = keep(project, lot, kept, *blank, all.sheets))
            all.notes.push_back(fmt::format("{} does not stay where it was kept: {}.",
                                            blank_name(lot.owners[*blank]), *why));
    }
    for (KeptSheet& sheet : all.sheets)
        sheet.about =
            *cut_about(inside_margin(lot.task.sheets[sheet.kind]), places_of(sheet.placed));
    return all;
}

}  // namespace wallwright::mounts
