// The pieces by their letters: which is which, how large it is and where its edges are.
#pragma once

#include "pages/table.h"

namespace wallwright::pages {

/// How much a list tells of each piece.
enum class PieceListWidth { names, sizes, edges };

/// The least mm that a list of these pieces needs.
double least_width(const wall::Project& project, PieceListWidth width);

/// Letter and title, then the outside size, then the left and bottom edge; pieces without a place
/// show "waits". Where some piece has a stage of growth, the title is followed by the stages.
Table piece_list(const wall::Project& project, PieceListWidth width);

}  // namespace wallwright::pages
