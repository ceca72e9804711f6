// What the commands do and what hinders them, for the table in command.cpp. Each `do_` expects that
// nothing hinders it.
#pragma once

#include "desk/session.h"
#include "edits/pieces.h"

#include <string>
#include <vector>

namespace wallwright::desk {

// command_select.cpp
std::string hinders_undo(const Session& session);
void do_undo(Session& session);
std::string hinders_redo(const Session& session);
void do_redo(Session& session);
std::string hinders_select(const Session& session);
void do_select_all(Session& session);
std::string hinders_select_nothing(const Session& session);
void do_select_nothing(Session& session);
void do_select_next(Session& session);
void do_select_previous(Session& session);

// command_move.cpp
/// mm of a small and of a large step in the person's unit: 1 and 10 mm, or 1/16 and 1/2 in.
double step_length(units::LengthUnit unit, bool far);
std::string hinders_nudge(const Session& session);
void nudge(Session& session, int right, int up, bool far);
std::string hinders_align(const Session& session);
void align(Session& session, edits::Line line);
std::string hinders_distribute(const Session& session);
void distribute(Session& session, edits::Direction direction);

// command_group.cpp
std::string hinders_even(const Session& session);
void do_even(Session& session);
std::string hinders_centre(const Session& session);
void do_centre(Session& session);
std::string hinders_centre_over(const Session& session);
void do_centre_over(Session& session);

// command_piece.cpp
std::string hinders_turn(const Session& session);
void do_turn(Session& session);
std::string hinders_swap(const Session& session);
void do_swap(Session& session);
std::string hinders_pin(const Session& session);
void do_pin(Session& session);
std::string hinders_hang(const Session& session);
void do_hang(Session& session);
std::string hinders_take_down(const Session& session);
void do_take_down(Session& session);
std::string hinders_duplicate(const Session& session);
void do_duplicate(Session& session);
std::string hinders_remove(const Session& session);
void do_remove(Session& session);

// command_parts.cpp
/// The selected pieces that have a place, in the order in which they were taken.
std::vector<wall::PieceId> selected_on_wall(const Session& session);
/// The first of them that hangs or is pinned, or null.
const wall::Piece* first_fixed(const wall::Project& project, edits::PieceIds ids);
/// The least rectangle around pieces with a place; there must be one.
geometry::Rect<geometry::Wall> bounds_of(const wall::Project& project, edits::PieceIds ids);

}  // namespace wallwright::desk
