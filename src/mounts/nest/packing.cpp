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
    return {
        .usable = {std::max(0.0, sheet.size.width - both), std::max(0.0, sheet.size.height - both)},
        .area = sheet.size.area(),
        .count = sheet.drop_out_of ? 1 : std::min(all, sheet.count.value_or(all)),
        .price = sheet.price,
        .to_buy = sheet.to_buy,
        .may_turn = !sheet.has_grain,
        .drops_out = sheet.drop_out_of.has_value()};
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
    for (const NestBlank& blank : task.blanks) {
        const int index = static_cast<int>(stock.blanks.size());
        stock.blanks.push_back(stocked(blank));
        const bool has_sheet =
            std::any_of(stock.sheets.begin(), stock.sheets.end(), [&](const StockSheet& sheet) {
                return sheet.count > 0 && fits(stock.blanks.back(), sheet);
            });
        (has_sheet ? stock.wanted : stock.too_large).push_back(index);
    }
    return stock;
}

}  // namespace wallwright::mounts
