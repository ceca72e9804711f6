// The pieces that wait, leaning on the floor line at the scale of the wall, each over its name.
#pragma once

#include "draw/backdrop.h"

#include <string>
#include <vector>

namespace wallwright::draw {

/// A waiting piece where it stands, with the lines of its name below it.
struct Standing {
    std::size_t index = 0;  ///< Of the piece in the project.
    geometry::Rect<geometry::Wall> place;
    std::vector<std::string> name;
};

/// In rows from the wall's lower edge down, or none when the options ask for none.
std::vector<Standing> lay_out_waiting(const Board& board);
/// How far the floor must reach for them.
FloorReach floor_under(const Board& board, const std::vector<Standing>& waiting);
void add_waiting(Board& board, const std::vector<Standing>& waiting);

}  // namespace wallwright::draw
