#include "wall/wishes.h"

#include <utility>

namespace wallwright::wall {

bool is_same_wish(const Wish& one, const Wish& other) {
    if (one.kind != other.kind || one.thing != other.thing)
        return false;
    const bool as_named = one.first == other.first && one.second == other.second;
    return as_named || (one.second == other.first && other.second == one.first);
}

}  // namespace wallwright::wall
