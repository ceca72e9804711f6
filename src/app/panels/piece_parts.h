// The parts of the piece's panel, each under a heading that folds it.
#pragma once

#include "app/panels/panels.h"
#include "app/widgets.h"

#include <functional>
#include <string>

namespace wallwright::app {

/// The piece as it was when the panel began: a change replaces the project under it.
struct OnePiece {
    wall::Piece piece;
    wall::Frame frame;
    units::LengthUnit unit = units::LengthUnit::mm;
    std::string title;
};

void place_part(Ui& ui, State& state, const OnePiece& one);
void frame_part(Ui& ui, State& state, const OnePiece& one);
void picture_part(Ui& ui, State& state, const OnePiece& one);
void hanging_part(Ui& ui, State& state, const OnePiece& one);
/// The forces on it as it hangs, drawn as wide as the column, with the formulas.
void forces_part(Ui& ui, State& state, const OnePiece& one);

/// Changes the piece or its frame by hand as one step: "Resize Kelp" for the verb "Resize".
void change_piece(State& state, const OnePiece& one, std::string_view verb,
                  const std::function<void(wall::Piece&)>& by_hand);
void change_frame(State& state, const OnePiece& one, std::string_view verb,
                  const std::function<void(wall::Frame&)>& by_hand);

}  // namespace wallwright::app
