#include "hanging/drawer.h"

#include <algorithm>

namespace wallwright::hanging {

Drawer::Drawer(const std::vector<wall::Stock>& stock) {
    for (const wall::Stock& line : stock)
        left_[line.fixing] += std::max(0, line.count);
}

int Drawer::left(const wall::FixingTypeId& type) const {
    const auto found = left_.find(type);
    return found == left_.end() ? 0 : found->second;
}

int Drawer::take(const wall::FixingTypeId& type, int wanted) {
    const int taken = std::min(wanted, left(type));
    if (taken > 0)
        left_[type] -= taken;
    return taken;
}

}  // namespace wallwright::hanging
