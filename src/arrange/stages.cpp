// A growth in the document: pieces with the number of the stage in which they go up.
#include "arrange/grow.h"
#include "arrange/moves_to.h"
#include "base/contract.h"
#include "edits/edit.h"
#include "edits/sound.h"
#include "wall/find_in.h"

#include <algorithm>

namespace wallwright::arrange {

namespace {

bool has_stage(const wall::Piece& piece) {
    return piece.state == wall::PieceState::planned && piece.stage > 0;
}

void take_down(wall::Piece& piece) {
    piece.state = wall::PieceState::waiting;
    piece.pinned = false;
    piece.stage = 0;
    piece.at.reset();
}

}  // namespace

int last_stage(const wall::Project& project) {
    int last = 0;
    for (const wall::Piece& piece : project.pieces)
        if (has_stage(piece))
            last = std::max(last, piece.stage);
    return last;
}

wall::Project at_stage(const wall::Project& project, int stage) {
    wall::Project then = project;
    for (wall::Piece& piece : then.pieces)
        if (has_stage(piece) && piece.stage > stage)
            take_down(piece);
    return then;
}

wall::Project growth_start(const wall::Project& project) {
    wall::Project start = project;
    for (wall::Piece& piece : start.pieces) {
        if (!has_stage(piece))
            continue;
        if (!piece.pinned)
            take_down(piece);
        piece.stage = 0;
    }
    return start;
}

Result<wall::Project> with_growth(const wall::Project& project, const Task& task,
                                  const Growth& growth) {
    WW_EXPECT(last_stage(project) == 0, "growth is planned on a wall without stages");
    const Layout last = growth.stages.empty() ? Layout{} : growth.stages.back().layout;
    auto grown = edits::place(project, moves_to(task, last));
    if (!grown)
        return grown;
    int number = 0;
    for (const Stage& stage : growth.stages) {
        ++number;
        for (const wall::PieceId& id : stage.adds)
            wall::find_in(grown->pieces, id)->stage = number;
    }
    return edits::sound(std::move(*grown));
}

}  // namespace wallwright::arrange
