#include "mounts/card/lay_lot.h"

#include "mounts/card/around_kept.h"
#include "mounts/card/lots.h"
#include "mounts/card/plan_words.h"
#include "mounts/card/sheets.h"
#include "mounts/nest/bounds.h"
#include "mounts/nest/nest.h"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>
#include <utility>

namespace wallwright::mounts {

namespace {

// Rounds without anything better after which a part of the search is done: with a dozen blanks a
// lot then takes some tenths of a second.
constexpr std::uint64_t kPatience = 500;

NestOptions nest_options(const CardOptions& options, double share) {
    return {.seconds = options.rounds > 0 ? 0 : share * options.seconds,
            .seed = options.seed,
            .rounds = options.rounds,
            .patience = kPatience};
}

/// On the sheets that are offered; gives the notes of it.
std::vector<std::string> lay_about_kept(const wall::Project& project, CardLot& lot,
                                        const NestOptions& options,
                                        const std::function<bool()>& go_on) {
    KeptSheets kept = kept_sheets(project, lot);
    lot.kept.assign(lot.task.blanks.size(), false);
    for (const KeptSheet& sheet : kept.sheets)
        for (const PlacedBlank& placed : sheet.placed)
            lot.kept[placed.blank] = true;
    if (kept.sheets.empty()) {
        lot.plan = nest(lot.task, options, go_on);
        return std::move(kept.notes);
    }
    const RestOfTask rest = rest_of(lot.task, kept.sheets);
    const NestPlan plan = rest.blanks.empty() ? NestPlan{} : nest(rest.task, options, go_on);
    lot.plan = put_together(lot.task, kept.sheets, rest, plan);
    return std::move(kept.notes);
}

/// False where it is sure that the sheets do not hold the blanks.
bool may_suffice(const NestTask& task) {
    const Stock stock = stock_of(task);
    std::size_t count = 0;
    for (const StockSheet& sheet : stock.sheets)
        count += sheet.is_extra ? 0 : sheet.count;
    return stock.too_large.empty() && sheet_bound(stock) <= count;
}

bool takes(const CardLot& lot, const wall::CardSheet& sheet) {
    return std::any_of(lot.plan.sheets.begin(), lot.plan.sheets.end(),
                       [&](const CutSheet& cut) { return lot.origins[cut.sheet].id == sheet.id; });
}

/// After a sheet that has a title, where there is one.
void name_after_sheet(const wall::Project& project, CardLot& lot) {
    const wall::CardSheet* best = nullptr;
    const auto rank = [&lot](const wall::CardSheet& sheet) {
        return std::pair(takes(lot, sheet), !sheet.offcut);
    };
    for (const wall::CardSheet* sheet : recorded(project, lot))
        if (!sheet->title.empty() && (best == nullptr || rank(*sheet) > rank(*best)))
            best = sheet;
    if (best != nullptr)
        lot.known_by = fmt::format("as {}", without_size(best->title, best->size, project.unit));
}

/// What is said of full sheets that nobody recorded, where the plan takes any.
void note_full_sheets(const wall::Project& project, const CardLot& lot,
                      std::vector<std::string>& notes) {
    const auto full =
        std::find_if(lot.plan.sheets.begin(), lot.plan.sheets.end(), [&lot](const CutSheet& sheet) {
            return !lot.origins[sheet.sheet].id && !lot.origins[sheet.sheet].drop_out;
        });
    if (full == lot.plan.sheets.end())
        return;
    const std::string size = size_text(lot.task.sheets[full->sheet].size, project.unit);
    const std::string card = card_name(lot, project.unit);
    notes.push_back(
        !recorded(project, lot).empty()
            ? fmt::format("The sheets of {} in the drawer do not suffice; full sheets of {} are "
                          "assumed beside them. Put those you would buy into the project's card.",
                          card, size)
            : fmt::format("No sheet of {} is in the drawer; a full sheet of {} is assumed. Put the "
                          "sheets you have into the project's card.",
                          card, size));
}

}  // namespace

void lay_lot(const wall::Project& project, CardLot& lot, const CardOptions& options,
             const std::function<bool()>& go_on, std::vector<std::string>& notes) {
    constexpr double kHalf = 0.5;
    std::vector<std::string> said;
    offer_sheets(project, lot, SheetChoice::at_hand);
    bool is_laid = false;
    if (may_suffice(lot.task)) {
        said = lay_about_kept(project, lot, nest_options(options, kHalf), go_on);
        is_laid = lot.plan.left_out.empty();
    }
    if (!is_laid) {
        offer_sheets(project, lot, SheetChoice::all);
        said = lay_about_kept(project, lot, nest_options(options, kHalf), go_on);
    }
    name_after_sheet(project, lot);
    notes.insert(notes.end(), said.begin(), said.end());
    note_full_sheets(project, lot, notes);
}

void note_left_out(const wall::Project& project, const CardLot& lot,
                   std::vector<std::string>& notes) {
    for (const std::size_t blank : lot.plan.left_out)
        notes.push_back(fmt::format(
            "No sheet of {} holds the blank of {}, {}. Put a larger sheet, at hand or to buy, into "
            "the project's card.",
            card_name(lot, project.unit), blank_name(lot.owners[blank]),
            size_text(lot.task.blanks[blank].size, project.unit)));
}

}  // namespace wallwright::mounts
