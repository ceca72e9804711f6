#include "mounts/card/sheets.h"

#include "mounts/card/lots.h"
#include "mounts/card/on_rule.h"
#include "mounts/nest/packing.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace wallwright::mounts {

namespace {

using geometry::Size;
using wall::CardSheet;
using wall::Grain;

bool is_of(const CardSheet& sheet, const CardLot& lot) {
    return sheet.card.material == lot.card.material && sheet.colour == lot.colour &&
           geometry::is_same_length(sheet.card.thickness, lot.card.thickness);
}

void add(CardLot& lot, NestSheet sheet, SheetOrigin origin) {
    lot.task.sheets.push_back(std::move(sheet));
    lot.origins.push_back(std::move(origin));
}

Size on_rule(Size size, units::LengthUnit unit) {
    return {down_to_rule(size.width, unit), down_to_rule(size.height, unit)};
}

/// So many of them; none: as many as it takes.
void add_recorded(CardLot& lot, const CardSheet& sheet, std::optional<std::size_t> count,
                  units::LengthUnit unit) {
    const bool turned = sheet.grain == Grain::across;
    const Size size = turned ? sheet.size.turned() : sheet.size;
    const Size usable = on_rule(size, unit);
    if (usable.area() <= 0)
        return;
    NestSheet kind{.id = sheet.id.text,
                   .size = usable,
                   .count = count,
                   .to_buy = sheet.to_buy,
                   .margin = up_to_rule(sheet.margin, unit),
                   .price = sheet.price,
                   .has_grain = sheet.grain != Grain::none};
    add(lot, std::move(kind),
        {.id = sheet.id, .title = title_of(sheet), .turned = turned, .untrimmed = size});
}

void add_full_sheet(CardLot& lot, units::LengthUnit unit, bool has_grain) {
    const Size size = full_sheet(unit);
    add(lot, {.id = "full-sheet", .size = size, .to_buy = true, .has_grain = has_grain},
        {.id = std::nullopt,
         .title = fmt::format("full sheet, {}", size_text(size, unit)),
         .untrimmed = size});
}

/// How many sheets of a kind blanks are kept on.
std::size_t kept_on(const wall::Project& project, const CardSheet& sheet) {
    std::set<int> numbers;
    for (const wall::KeptBlank& kept : project.kept_blanks)
        if (kept.sheet == sheet.id)
            numbers.insert(kept.number);
    return numbers.size();
}

/// Sheets of a kind on which only blanks of other lots' pieces are kept.
std::size_t held_back(const wall::Project& project, const CardLot& lot, const CardSheet& sheet) {
    std::set<int> ours;
    std::set<int> all;
    for (const wall::KeptBlank& kept : project.kept_blanks) {
        if (kept.sheet != sheet.id || kept.number > sheet.count)
            continue;
        all.insert(kept.number);
        if (std::any_of(lot.owners.begin(), lot.owners.end(),
                        [&kept](const BlankOwner& owner) { return owner.piece == kept.piece; }))
            ours.insert(kept.number);
    }
    return all.size() - ours.size();
}

/// How many of a kind may be used.
std::optional<std::size_t> count_of(const wall::Project& project, const CardLot& lot,
                                    const CardSheet& sheet, SheetChoice choice) {
    if (!sheet.to_buy)
        return static_cast<std::size_t>(sheet.count) - held_back(project, lot, sheet);
    return choice == SheetChoice::all ? std::nullopt : std::optional(kept_on(project, sheet));
}

bool serves(const LotWindow& window, Size usable, const CardLot& lot) {
    const StockSheet sheet{.usable = usable};
    const auto& blanks = lot.task.blanks;
    for (std::size_t i = 0; i < blanks.size(); ++i) {
        const auto& [width, height] = blanks[i].size;
        if (i != window.blank &&
            fits({{width, height}, {height, width}, blanks[i].may_turn}, sheet))
            return true;
    }
    return false;
}

void add_drop_outs(CardLot& lot, units::LengthUnit unit, bool has_grain) {
    for (std::size_t i = 0; i < lot.windows.size(); ++i) {
        const LotWindow& window = lot.windows[i];
        const Size usable = on_rule(window.place.size, unit);
        if (serves(window, usable, lot))
            add(lot,
                {.id = fmt::format("drop-out-of-{}", lot.task.blanks[window.blank].id),
                 .size = usable,
                 .has_grain = has_grain,
                 .drop_out_of = window.blank},
                {.id = std::nullopt,
                 .title = title_of_drop_out(lot, i),
                 .drop_out = true,
                 .window = i,
                 .untrimmed = window.face});
    }
}

}  // namespace

Size full_sheet(units::LengthUnit unit) {
    constexpr Size kFull{1120, 815};
    constexpr Size kFullInches{40 * units::kMmPerInch, 32 * units::kMmPerInch};
    return unit == units::LengthUnit::inch ? kFullInches : kFull;
}

std::vector<const CardSheet*> recorded(const wall::Project& project, const CardLot& lot) {
    std::vector<const CardSheet*> sheets;
    for (const CardSheet& sheet : project.card)
        if (is_of(sheet, lot))
            sheets.push_back(&sheet);
    return sheets;
}

void offer_sheets(const wall::Project& project, CardLot& lot, SheetChoice choice) {
    lot.task.sheets.clear();
    lot.origins.clear();
    const std::vector<const CardSheet*> sheets = recorded(project, lot);
    const bool has_grain = std::any_of(sheets.begin(), sheets.end(), [](const CardSheet* sheet) {
        return sheet->grain != Grain::none;
    });
    for (NestBlank& blank : lot.task.blanks)
        blank.may_turn = !has_grain;
    bool buys = false;
    for (const CardSheet* sheet : sheets) {
        buys = buys || sheet->to_buy;
        if (const auto count = count_of(project, lot, *sheet, choice); !count || *count > 0)
            add_recorded(lot, *sheet, count, project.unit);
    }
    if (choice == SheetChoice::all && !buys)
        add_full_sheet(lot, project.unit, has_grain);
    add_drop_outs(lot, project.unit, has_grain);
}

}  // namespace wallwright::mounts
