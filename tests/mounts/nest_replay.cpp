#include "mounts/nest_replay.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace wallwright::tests {

using namespace mounts;

namespace {

constexpr double kSame = 1e-5;  // mm; sums of a hundred lengths

bool same(double a, double b) {
    return std::abs(a - b) < kSame;
}

bool same(const OnSheet& a, const OnSheet& b) {
    return same(a.left, b.left) && same(a.top, b.top) && same(a.size.width, b.size.width) &&
           same(a.size.height, b.size.height);
}

std::string text(const OnSheet& piece) {
    return fmt::format("{} x {} at {}, {}", piece.size.width, piece.size.height, piece.left,
                       piece.top);
}

/// What lies on the table while one sheet is cut.
struct Table {
    std::vector<OnSheet> pieces;

    bool take(const OnSheet& piece) {
        const auto found =
            std::find_if(pieces.begin(), pieces.end(),
                         [&piece](const OnSheet& other) { return same(other, piece); });
        if (found == pieces.end())
            return false;
        pieces.erase(found);
        return true;
    }
};

std::string make_cut(Table& table, const SheetCut& cut) {
    if (!table.take(cut.piece))
        return fmt::format("cut {}: {} is not in hand", cut.number, text(cut.piece));
    OnSheet low = cut.piece;
    OnSheet high = cut.piece;
    double& length = cut.upright ? low.size.width : low.size.height;
    const double whole = length;
    length = cut.at - (cut.upright ? low.left : low.top);
    (cut.upright ? high.left : high.top) = cut.at;
    (cut.upright ? high.size.width : high.size.height) = whole - length;
    if (length < kSame || whole - length < kSame)
        return fmt::format("cut {} is not inside {}", cut.number, text(cut.piece));
    table.pieces.push_back(low);
    table.pieces.push_back(high);
    return "";
}

bool inside_margin(const OnSheet& piece, const NestSheet& kind) {
    return piece.left > kind.margin - kSame && piece.top > kind.margin - kSame &&
           piece.left + piece.size.width < kind.size.width - kind.margin + kSame &&
           piece.top + piece.size.height < kind.size.height - kind.margin + kSame;
}

bool within_trim(const OnSheet& piece, const NestSheet& kind) {
    return piece.left + piece.size.width < kind.margin + kSame ||
           piece.top + piece.size.height < kind.margin + kSame ||
           piece.left > kind.size.width - kind.margin - kSame ||
           piece.top > kind.size.height - kind.margin - kSame;
}

std::string check_blank(const NestTask& task, const NestSheet& kind, const PlacedBlank& placed) {
    const NestBlank& blank = task.blanks.at(placed.blank);
    const geometry::Size wanted = placed.turned ? blank.size.turned() : blank.size;
    if (placed.turned && (!blank.may_turn || kind.has_grain))
        return fmt::format("blank {} is turned", placed.blank);
    if (!same(placed.place.size.width, wanted.width) ||
        !same(placed.place.size.height, wanted.height))
        return fmt::format("blank {} is {}", placed.blank, text(placed.place));
    if (!inside_margin(placed.place, kind))
        return fmt::format("blank {} lies in the margin: {}", placed.blank, text(placed.place));
    return "";
}

std::string check_sheet(const NestTask& task, const CutSheet& sheet, int& number) {
    const NestSheet& kind = task.sheets.at(sheet.sheet);
    Table table{{{.size = kind.size}}};
    for (const SheetCut& cut : sheet.cuts) {
        if (cut.number != ++number)
            return fmt::format("cut {} has the number {}", number, cut.number);
        if (std::string wrong = make_cut(table, cut); !wrong.empty())
            return wrong;
    }
    for (const PlacedBlank& placed : sheet.placed) {
        if (std::string wrong = check_blank(task, kind, placed); !wrong.empty())
            return wrong;
        if (!table.take(placed.place))
            return fmt::format("blank {} is not cut out", placed.blank);
    }
    for (const OnSheet& offcut : sheet.offcuts)
        if (!inside_margin(offcut, kind) || !table.take(offcut))
            return fmt::format("no such offcut: {}", text(offcut));
    for (const OnSheet& piece : table.pieces)
        if (!within_trim(piece, kind))
            return fmt::format("{} is left and not named", text(piece));
    return sheet.placed.empty() ? "a sheet is used for nothing" : "";
}

std::string check_each_once(const NestTask& task, const NestPlan& plan) {
    std::vector<int> seen(task.blanks.size(), 0);
    for (const CutSheet& sheet : plan.sheets)
        for (const PlacedBlank& placed : sheet.placed)
            ++seen[placed.blank];
    for (const std::size_t blank : plan.left_out)
        ++seen[blank];
    const auto wrong = std::find_if(seen.begin(), seen.end(), [](int times) { return times != 1; });
    return wrong == seen.end()
               ? ""
               : fmt::format("blank {} comes {} times", wrong - seen.begin(), *wrong);
}

std::string check_sheets(const NestTask& task, const NestPlan& plan) {
    std::vector<std::size_t> used(task.sheets.size(), 0);
    std::set<std::size_t> cut;
    for (const CutSheet& sheet : plan.sheets) {
        const NestSheet& kind = task.sheets.at(sheet.sheet);
        ++used[sheet.sheet];
        if (kind.drop_out_of && (used[sheet.sheet] > 1 || !cut.contains(*kind.drop_out_of)))
            return fmt::format("the drop-out of blank {} is not there", *kind.drop_out_of);
        if (kind.count && used[sheet.sheet] > *kind.count)
            return fmt::format("more sheets {} than there are", sheet.sheet);
        for (const PlacedBlank& placed : sheet.placed)
            cut.insert(placed.blank);
    }
    return "";
}

std::string check_sums(const NestTask& task, const NestPlan& plan) {
    double area = 0;
    double blanks = 0;
    std::size_t count = 0;
    for (const CutSheet& sheet : plan.sheets) {
        if (task.sheets[sheet.sheet].drop_out_of)
            continue;
        ++count;
        area += task.sheets[sheet.sheet].size.area();
        for (const PlacedBlank& placed : sheet.placed)
            blanks += placed.place.size.area();
    }
    if (count != plan.count)
        return fmt::format("{} sheets, not {}", count, plan.count);
    if (std::abs(plan.waste_area - (area - blanks)) > 1e-6 * (1 + area))
        return fmt::format("{} mm2 are wasted, not {}", area - blanks, plan.waste_area);
    if (area > 0 && std::abs(plan.waste - (area - blanks) / area) > 1e-9)
        return fmt::format("the waste is not {}", plan.waste);
    return plan.left_out.empty() && plan.bound > count
               ? fmt::format("{} sheets are below the bound of {}", count, plan.bound)
               : "";
}

}  // namespace

std::string replay(const NestTask& task, const NestPlan& plan) {
    int number = 0;
    for (std::size_t i = 0; i < plan.sheets.size(); ++i)
        if (std::string wrong = check_sheet(task, plan.sheets[i], number); !wrong.empty())
            return fmt::format("sheet {}: {}", i + 1, wrong);
    for (const auto check : {check_each_once, check_sheets, check_sums})
        if (std::string wrong = check(task, plan); !wrong.empty())
            return wrong;
    return "";
}

}  // namespace wallwright::tests
