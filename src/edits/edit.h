// Edits: each takes a project and gives another, or the Problem that forbids it. What comes out is
// sound (wall/validity.h), with its places to 0.01 mm and its weights to 0.001 as a file keeps
// them.
#pragma once

#include "base/problem.h"
#include "wall/frame_row.h"
#include "wall/project.h"

#include <span>
#include <string>
#include <string_view>

namespace wallwright::edits {

/// A flat wall with nothing on it, in the trade's usual style.
Result<wall::Project> start(wall::Size wall_size, units::LengthUnit unit);

/// A piece and where its lower left corner goes.
struct Move {
    wall::PieceId piece;
    geometry::Point<geometry::Wall> to;
};

/// Puts planned or waiting pieces at their places; waiting ones become planned. A hung or pinned
/// piece that would move is a Problem, and so is one that is not there.
Result<wall::Project> place(wall::Project project, std::span<const Move> moves);

/// The wanted gap, mm. Its usual bounds give way when it lies outside them.
Result<wall::Project> set_gap(wall::Project project, double gap);

/// A frame of that size over the moulding, whose other measures are the usual ones until the person
/// takes them; its moulding no wider than a sixth of the shorter side (our choice).
wall::Frame usual_frame(wall::Size outside);

/// A piece with a frame of its own. Both get the id that the piece's title makes, with a number
/// where that is taken.
Result<wall::Project> add_piece(wall::Project project, wall::Frame frame, wall::Piece piece);

/// A piece for each row, in a usual frame of its size.
Result<wall::Project> add_frames(wall::Project project, std::span<const wall::FrameRow> rows);

/// Its id is made from its type.
Result<wall::Project> add_furniture(wall::Project project, wall::Furniture furniture);

/// Lower-case letters, digits and single dashes: "Kelp, lino" gives "kelp-lino". Letters beyond
/// ASCII stay. Never empty.
std::string id_from(std::string_view title);

}  // namespace wallwright::edits
