// Wishes about the arrangement: made where their pieces are, listed where it is arranged.
#pragma once

#include "app/state.h"
#include "app/ui.h"

namespace wallwright::app {

/// In the middle, low, high; and what it is not to hang over.
void piece_wishes(Ui& ui, State& state, const wall::PieceId& piece);
/// Side by side, apart.
void pair_wishes(Ui& ui, State& state, const wall::PieceId& first, const wall::PieceId& second);
/// All there are, each with a way to take it back.
void wishes_list(Ui& ui, State& state);

}  // namespace wallwright::app
