#include "edits/stock.h"

#include "edits/sound.h"

#include <algorithm>

namespace wallwright::edits {

using wall::Stock;

Result<wall::Project> set_stock(wall::Project project, const wall::FixingTypeId& type, int count) {
    std::vector<Stock>& stock = project.stock;
    auto line = std::ranges::find(stock, type, &Stock::fixing);
    if (line == stock.end())
        line = stock.insert(line, {type, 0, {}});
    line->count = count;
    // Other lines of the same type would be added to this one.
    const auto rest = count == 0 ? line : line + 1;
    const auto gone = std::ranges::remove(rest, stock.end(), type, &Stock::fixing);
    stock.erase(gone.begin(), gone.end());
    return sound(std::move(project));
}

}  // namespace wallwright::edits
