#include "mounts/card/around_kept.h"

#include "mounts/card/kept_bound.h"
#include "mounts/nest/bounds.h"
#include "mounts/nest/cut_order.h"
#include "mounts/nest/lay_out.h"

#include <algorithm>

namespace wallwright::mounts {

namespace {

constexpr std::size_t kIsKept = static_cast<std::size_t>(-1);

/// For each blank of the whole task its index among those that are not kept.
std::vector<std::size_t> index_in_rest(const NestTask& task, const std::vector<KeptSheet>& kept) {
    std::vector<std::size_t> index(task.blanks.size(), 0);
    for (const KeptSheet& sheet : kept)
        for (const PlacedBlank& placed : sheet.placed)
            index[placed.blank] = kIsKept;
    std::size_t next = 0;
    for (std::size_t& one : index)
        if (one != kIsKept)
            one = next++;
    return index;
}

OnSheet moved(OnSheet place, const OnSheet& to) {
    place.left += to.left;
    place.top += to.top;
    return place;
}

/// What lies on a free part goes to the sheet that the part is of.
void add_part(CutSheet& whole, const CutSheet& part, const OnSheet& at,
              const std::vector<std::size_t>& blanks) {
    for (PlacedBlank placed : part.placed) {
        placed.blank = blanks[placed.blank];
        placed.place = moved(placed.place, at);
        whole.placed.push_back(placed);
    }
    for (SheetCut cut : part.cuts) {
        cut.piece = moved(cut.piece, at);
        cut.at += cut.upright ? at.left : at.top;
        whole.cuts.push_back(cut);
    }
    for (const OnSheet& offcut : part.offcuts)
        whole.offcuts.push_back(moved(offcut, at));
}

const CutSheet* find_part(const NestPlan& plan, std::size_t kind) {
    const auto found = std::find_if(plan.sheets.begin(), plan.sheets.end(),
                                    [kind](const CutSheet& sheet) { return sheet.sheet == kind; });
    return found == plan.sheets.end() ? nullptr : &*found;
}

CutSheet cut_kept(const NestTask& task, const KeptSheet& kept) {
    CutSheet sheet{.sheet = kept.kind, .placed = kept.placed, .cuts = {}, .offcuts = {}};
    trim(sheet, task.sheets[kept.kind]);
    sheet.cuts.insert(sheet.cuts.end(), kept.about.cuts.begin(), kept.about.cuts.end());
    return sheet;
}

}  // namespace

RestOfTask rest_of(const NestTask& task, const std::vector<KeptSheet>& kept) {
    RestOfTask rest;
    const std::vector<std::size_t> index = index_in_rest(task, kept);
    for (std::size_t i = 0; i < task.blanks.size(); ++i)
        if (index[i] != kIsKept) {
            rest.blanks.push_back(i);
            rest.task.blanks.push_back(task.blanks[i]);
        }
    rest.task.sheets = task.sheets;
    for (NestSheet& sheet : rest.task.sheets) {
        if (!sheet.drop_out_of)
            continue;
        const std::size_t blank = index[*sheet.drop_out_of];
        sheet.taken = blank == kIsKept;
        sheet.leaves_offcuts = false;
        sheet.drop_out_of = sheet.taken ? std::nullopt : std::optional(blank);
    }
    for (std::size_t i = 0; i < kept.size(); ++i) {
        if (std::optional<std::size_t>& count = rest.task.sheets[kept[i].kind].count)
            *count -= 1;
        for (std::size_t part = 0; part < kept[i].about.free.size(); ++part) {
            rest.task.sheets.push_back(
                {.id = "part", .size = kept[i].about.free[part].size, .taken = true});
            rest.parts.emplace_back(i, part);
        }
    }
    return rest;
}

NestPlan put_together(const NestTask& task, const std::vector<KeptSheet>& kept,
                      const RestOfTask& rest, const NestPlan& plan) {
    std::vector<CutSheet> sheets;
    for (const KeptSheet& one : kept)
        sheets.push_back(cut_kept(task, one));
    for (std::size_t i = 0; i < rest.parts.size(); ++i) {
        const auto& [sheet, part] = rest.parts[i];
        const OnSheet& at = kept[sheet].about.free[part];
        if (const CutSheet* cut = find_part(plan, task.sheets.size() + i))
            add_part(sheets[sheet], *cut, at, rest.blanks);
        else
            sheets[sheet].offcuts.push_back(at);
    }
    for (const CutSheet& one : plan.sheets)
        if (one.sheet < task.sheets.size()) {
            sheets.push_back({.sheet = one.sheet, .placed = {}, .cuts = {}, .offcuts = {}});
            add_part(sheets.back(), one, {}, rest.blanks);
        }
    NestPlan whole = plan_of(task, std::move(sheets));
    for (const std::size_t blank : plan.left_out)
        whole.left_out.push_back(rest.blanks[blank]);
    std::sort(whole.left_out.begin(), whole.left_out.end());
    const Stock stock = stock_of(task);
    whole.bound = std::max(sheet_bound(stock), kept_bound(task, kept, rest));
    whole.proved = whole.left_out.size() == stock.too_large.size() && whole.count == whole.bound;
    return whole;
}

}  // namespace wallwright::mounts
