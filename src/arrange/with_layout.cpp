#include "arrange/arrange.h"
#include "edits/edit.h"
#include "edits/pieces.h"

namespace wallwright::arrange {

Result<wall::Project> with_layout(const wall::Project& project, const Task& task,
                                  const Layout& layout) {
    std::vector<bool> placed(task.items.size(), false);
    std::vector<edits::Move> moves;
    for (const Spot& spot : layout) {
        placed[spot.item] = true;
        if (!task.items[spot.item].fixed)
            moves.push_back({task.items[spot.item].id, spot.place.min});
    }
    std::vector<wall::PieceId> off;
    for (std::size_t i = 0; i < placed.size(); ++i)
        if (!placed[i])
            off.push_back(task.items[i].id);
    return edits::place(project, moves).and_then([&off](wall::Project moved) {
        return edits::take_down(std::move(moved), off);
    });
}

}  // namespace wallwright::arrange
