// Walls with marks on them, for tests of the marks.
#pragma once

#include "hanging/marks.h"
#include "support/scenes.h"

#include <string>

namespace wallwright::hanging {

/// A planned piece of 400 x 500 mm and 1 kg.
inline wall::Piece& add(wall::Project& project, const std::string& id,
                        geometry::Point<geometry::Wall> at, wall::HangerType hanger) {
    wall::Piece& piece = scenes::add_piece(project, id, at, {400, 500});
    piece.hanger.type = hanger;
    piece.weighed = Kilograms{1};
    return piece;
}

inline MarksTable table_of(const wall::Project& project) {
    return marks_of(project, hang_all(project, scenes::small_catalogue()));
}

}  // namespace wallwright::hanging
