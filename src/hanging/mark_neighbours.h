// Which marked pieces face each other, and which of them are meant to be in line.
#pragma once

#include "geometry/rect.h"

#include <cstddef>
#include <span>
#include <vector>

namespace wallwright::hanging {

/// By index; `second` is right of, or above, `first`.
struct Neighbours {
    std::size_t first = 0;
    std::size_t second = 0;
    bool across = true;    ///< They stand side by side; else one above the other.
    double gap = 0;        ///< mm; 0 or more.
    bool in_line = false;  ///< Across: their tops, middles or feet are at one height; else their
                           ///< sides or middles one above the other.
};

/// Every two that look at each other no farther than `reach` mm apart, with none between them.
std::vector<Neighbours> neighbours_of(std::span<const geometry::Rect<geometry::Wall>> places,
                                      double reach);

}  // namespace wallwright::hanging
