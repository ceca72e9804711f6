// In which order to put pieces up.
#pragma once

#include "wall/project.h"

#include <cstddef>
#include <vector>

namespace wallwright::hanging {

/// A piece that goes up, and in which stage of growth; those of earlier stages come first.
struct Upcoming {
    geometry::Rect<geometry::Wall> place;
    int stage = 0;
};

/// Stage by stage, from the middle of the lowest row outward: the first is the piece of the lowest
/// row nearest to that row's middle, each next one the nearest to any that came before, so that it
/// has a neighbour to be checked against (our choice). Pieces equally near go by their distance
/// from the first, then as given. Indices into `pieces`.
std::vector<std::size_t> hanging_order(const std::vector<Upcoming>& pieces);

}  // namespace wallwright::hanging
