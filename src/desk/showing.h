// What is to be drawn over the wall while the pointer does something.
#pragma once

#include "desk/measures.h"
#include "desk/selection.h"
#include "desk/snap.h"

#include <optional>
#include <string>
#include <vector>

namespace wallwright::desk {

struct Showing {
    std::vector<Guide> guides;
    std::vector<LiveMeasure> measures;
    std::optional<geometry::Rect<geometry::Wall>> band;
    /// Where the hand holds pieces that are not on the wall there.
    std::vector<geometry::Rect<geometry::Wall>> off_wall;
    std::optional<Thing> hovered;
    std::string words;  ///< "Drop it here to take it off the wall"; may be empty.
};

}  // namespace wallwright::desk
