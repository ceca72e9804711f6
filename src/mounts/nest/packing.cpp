#include "mounts/nest/packing.h"

#include "base/contract.h"

#include <algorithm>

namespace wallwright::mounts {

namespace {

bool holds(geometry::Size sheet, const Extent& extent) {
    return extent[0] < sheet.width + geometry::kLengthEps &&
           extent[1] < sheet.height + geometry::kLengthEps;
}

StockBlank stocked(const NestBlank& blank) {
    const auto& [width, height] = blank.size;
    WW_EXPECT(width > 0 && height > 0, "a blank to nest has a size");
    return {.extent = {width, height},
            .turned = {height, width},
            .may_turn = blank.may_turn && !geometry::is_same_length(width, height),
            .area = blank.size.area()};
}

StockSheet stocked(const NestSheet& sheet, const NestTask& task) {
    const double both = 2 * sheet.margin;
    if (sheet.drop_out_of)
        WW_EXPECT(*sheet.drop_out_of < task.blanks.size() &&
                      sheet.size.area() < task.blanks[*sheet.drop_out_of].size.area(),
                  "a drop-out is smaller than its blank");
    const std::size_t all = task.blanks.size();
    const bool is_extra = sheet.drop_out_of.has_value() || sheet.taken;
    return {
        .usable = {std::max(0.0, sheet.size.width - both), std::max(0.0, sheet.size.height - both)},
        .area = sheet.size.area(),
        .count = is_extra ? 1 : std::min(all, sheet.count.value_or(all)),
        .price = sheet.price,
        .to_buy = sheet.to_buy,
        .may_turn = !sheet.has_grain,
        .is_extra = is_extra,
        .leaves_offcuts = sheet.leaves_offcuts && !sheet.drop_out_of};
}

bool has_sheet(const Stock& stock, std::size_t blank) {
    return std::any_of(stock.sheets.begin(), stock.sheets.end(), [&](const StockSheet& sheet) {
        return sheet.count > 0 && fits(stock.blanks[blank], sheet);
    });
}

/// Where no sheet holds a blank, nothing drops out of it either. True when there was such a one.
bool close_drop_outs(Stock& stock, const NestTask& task) {
    bool closed = false;
    for (std::size_t i = 0; i < stock.sheets.size(); ++i) {
        StockSheet& sheet = stock.sheets[i];
        const std::optional<std::size_t>& blank = task.sheets[i].drop_out_of;
        if (!blank || sheet.usable.area() <= 0 || has_sheet(stock, *blank))
            continue;
        sheet.usable = {};
        closed = true;
    }
    return closed;
}

}  // namespace

bool fits(const StockBlank& blank, const StockSheet& sheet) {
    return holds(sheet.usable, blank.extent) ||
           (blank.may_turn && sheet.may_turn && holds(sheet.usable, blank.turned));
}

Stock stock_of(const NestTask& task) {
    Stock stock;
    for (const NestSheet& sheet : task.sheets)
        stock.sheets.push_back(stocked(sheet, task));
    for (const NestBlank& blank : task.blanks)
        stock.blanks.push_back(stocked(blank));
    while (close_drop_outs(stock, task)) {
    }
    for (std::size_t i = 0; i < stock.blanks.size(); ++i)
        (has_sheet(stock, i) ? stock.wanted : stock.too_large).push_back(static_cast<int>(i));
    return stock;
}

}  // namespace wallwright::mounts
