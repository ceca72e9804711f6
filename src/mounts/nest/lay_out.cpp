#include "mounts/nest/lay_out.h"

#include "mounts/nest/cut_order.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace wallwright::mounts {

namespace {

double placed_area(const CutSheet& sheet) {
    return std::accumulate(
        sheet.placed.begin(), sheet.placed.end(), 0.0,
        [](double sum, const PlacedBlank& blank) { return sum + blank.place.size.area(); });
}

bool is_cut(const std::vector<CutSheet>& sheets, std::size_t blank) {
    return std::any_of(sheets.begin(), sheets.end(), [blank](const CutSheet& sheet) {
        return std::any_of(sheet.placed.begin(), sheet.placed.end(),
                           [blank](const PlacedBlank& placed) { return placed.blank == blank; });
    });
}

/// Blanks row by row, the largest offcut first.
void sort_out(CutSheet& sheet) {
    std::stable_sort(
        sheet.offcuts.begin(), sheet.offcuts.end(),
        [](const OnSheet& a, const OnSheet& b) { return a.size.area() > b.size.area(); });
    std::stable_sort(sheet.placed.begin(), sheet.placed.end(),
                     [](const PlacedBlank& a, const PlacedBlank& b) {
                         return a.place.top != b.place.top ? a.place.top < b.place.top
                                                           : a.place.left < b.place.left;
                     });
}

/// By their kinds, drop-outs last; of one kind the fullest first.
void sort_sheets(const NestTask& task, std::vector<CutSheet>& sheets) {
    const auto rank = [&task](const CutSheet& sheet) {
        return std::tuple(task.sheets[sheet.sheet].drop_out_of.has_value(), sheet.sheet,
                          -placed_area(sheet));
    };
    std::stable_sort(sheets.begin(), sheets.end(),
                     [&rank](const CutSheet& a, const CutSheet& b) { return rank(a) < rank(b); });
}

/// Moves what can be cut to the plan, in turn. A drop-out is smaller than its blank, so no circle
/// of drop-outs can keep one waiting; only a blank that is not cut can.
void put_in_order(const NestTask& task, std::vector<CutSheet>& waiting, NestPlan& plan) {
    const auto is_ready = [&](const CutSheet& sheet) {
        const std::optional<std::size_t>& blank = task.sheets[sheet.sheet].drop_out_of;
        return !blank || is_cut(plan.sheets, *blank);
    };
    while (true) {
        const auto next = std::find_if(waiting.begin(), waiting.end(), is_ready);
        if (next == waiting.end())
            return;
        plan.sheets.push_back(std::move(*next));
        waiting.erase(next);
    }
}

void number_cuts(NestPlan& plan) {
    int number = 0;
    for (CutSheet& sheet : plan.sheets)
        for (SheetCut& cut : sheet.cuts)
            cut.number = ++number;
}

void sum_up(const NestTask& task, NestPlan& plan) {
    double sheets = 0;
    double blanks = 0;
    for (const CutSheet& sheet : plan.sheets) {
        const NestSheet& kind = task.sheets[sheet.sheet];
        if (!kind.drop_out_of && !kind.taken) {
            sheets += kind.size.area();
            plan.count += 1;
            blanks += placed_area(sheet);
        }
    }
    plan.waste_area = sheets - blanks;
    plan.waste = sheets > 0 ? plan.waste_area / sheets : 0;
}

}  // namespace

NestPlan plan_of(const NestTask& task, std::vector<CutSheet> sheets) {
    NestPlan plan;
    for (CutSheet& sheet : sheets)
        sort_out(sheet);
    sort_sheets(task, sheets);
    put_in_order(task, sheets, plan);
    for (const CutSheet& sheet : sheets)
        for (const PlacedBlank& blank : sheet.placed)
            plan.left_out.push_back(blank.blank);
    number_cuts(plan);
    sum_up(task, plan);
    return plan;
}

NestPlan lay_out(const NestTask& task, const Stock& stock, const Packing& packing) {
    std::vector<CutSheet> sheets;
    for (const OpenSheet& open : packing.sheets)
        if (!open.tree.is_empty())
            sheets.push_back(cut_up(task, stock, open));
    NestPlan plan = plan_of(task, std::move(sheets));
    for (const std::vector<int>* blanks : {&stock.too_large, &packing.unplaced})
        for (const int blank : *blanks)
            plan.left_out.push_back(static_cast<std::size_t>(blank));
    std::sort(plan.left_out.begin(), plan.left_out.end());
    return plan;
}

double largest_offcut(const NestPlan& plan) {
    double largest = 0;
    for (const CutSheet& sheet : plan.sheets)
        for (const OnSheet& offcut : sheet.offcuts)
            largest = std::max(largest, offcut.size.area());
    return largest;
}

}  // namespace wallwright::mounts
