#include "edits/stock.h"

#include "edits/sound.h"

#include <algorithm>

namespace wallwright::edits {

using wall::Stock;

Result<wall::Project> set_stock(wall::Project project, const wall::FixingTypeId& type, int count) {
    std::vector<Stock>& stock = project.stock;
    auto line = std::ranges::find(stock, type, &Stock::fixing);
    if (line == stock.end())
        line = stock.insert(line, Stock{type, 0});
    line->count = count;
    const bool says_nothing = count == 0 && !line->pack && !line->price;
    // Other lines of the same type would be added to this one.
    const auto rest = says_nothing ? line : line + 1;
    stock.erase(
        std::remove_if(rest, stock.end(), [&type](const Stock& one) { return one.fixing == type; }),
        stock.end());
    return sound(std::move(project));
}

Result<wall::Project> set_pack(wall::Project project, const wall::FixingTypeId& type,
                               std::optional<int> pack, std::optional<double> price) {
    std::vector<Stock>& stock = project.stock;
    auto line = std::ranges::find(stock, type, &Stock::fixing);
    if (line == stock.end())
        line = stock.insert(line, Stock{type, 0});
    line->pack = pack;
    line->price = price;
    if (line->count == 0 && !pack && !price)
        stock.erase(line);
    return sound(std::move(project));
}

}  // namespace wallwright::edits
