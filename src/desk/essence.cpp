#include "desk/essence.h"

#include <utility>

namespace wallwright::desk {

wall::Project without_aims(wall::Project project) {
    project.title.clear();
    project.weights.clear();
    project.target.reset();
    project.target_unknown.clear();
    return project;
}

wall::Project without_wall(wall::Project project) {
    project = without_aims(std::move(project));
    project.room = {};
    project.style = {};
    project.datum = {};
    project.stock.clear();
    project.wishes.clear();
    for (wall::Piece& piece : project.pieces) {
        piece.at.reset();
        piece.stage = 0;
    }
    return project;
}

}  // namespace wallwright::desk
