// Prints beside frames, and card, on the bench: what runs in the background, and their keys.
#pragma once

#include "app/state.h"
#include "app/ui.h"

#include <string_view>

namespace wallwright::app {

/// Once a frame: matches and lays out while that is looked at, and asks for more frames as long as
/// any of it is under way.
void follow_boards(Ui& ui, State& state);

/// Before another session comes: none of it is about that.
void give_boards_up(State& state);

bool is_board_hand_busy(const State& state);
/// What the hand is doing there is given up.
void let_go_of_boards(State& state);

/// What is chosen there stays where it is, or no longer: a print in its frame, a blank on its
/// sheet.
void keep_chosen(State& state);
/// The blank in the hand, a quarter turn.
void turn_blank(State& state);
/// In the view of prints: arrows choose the next print, Delete takes the chosen one out of the
/// drawer. True when it meant something.
bool board_key(State& state, std::string_view key);

/// Takes a print out of the drawer, and out of the frame it is in.
void remove_print(State& state, const wall::PrintId& print);

}  // namespace wallwright::app
