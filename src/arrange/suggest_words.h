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

}  // namespace wallwright::arrange
