#include "arrange/moves_to.h"

namespace wallwright::arrange {

std::vector<edits::Move> moves_to(const Task& task, const Layout& layout) {
    std::vector<edits::Move> moves;
    for (const Spot& spot : layout)
        if (const Item& item = task.items[spot.item]; !item.fixed)
            moves.push_back({item.id, spot.place.min});
    return moves;
}

}  // namespace wallwright::arrange
