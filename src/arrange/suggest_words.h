// Why a suggested frame is worth buying, in words that a tape can check.
#pragma once

#include "arrange/score.h"
#include "wall/project.h"

#include <optional>
#include <string>

namespace wallwright::arrange {

/// The pieces that the frame would join, and where it would go.
struct Joining {
    const wall::Project& project;
    const Task& task;
    const Layout& pieces;  ///< Without the frame; one at least.
    WallRect place;
    std::optional<WallRect> target;  ///< Of the project.
};

/// One sentence of the one or two most telling things that are true of it, given the group's score
/// without and with it: "Fills the step at the right; its lower edge lines up with Boats."
std::string reason_for(const Joining& joining, const Score& before, const Score& after);

/// "at the upper left": where in the bounds the place is; empty in the middle.
std::string side_words(const WallRect& bounds, const WallRect& place);

/// How much of the way from the pieces to the target the place takes back, 0 to 1; within the gap
/// of it is all the way. 0 without a target.
double leads_on(const Joining& joining);

}  // namespace wallwright::arrange
