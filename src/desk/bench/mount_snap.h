// Where a window that is dragged in its mount wants to rest: in the middle of the blank, with one
// border as wide as another, in line with other windows, a bar from them.
#pragma once

#include "mounts/design/mount_design.h"

#include <optional>
#include <string>
#include <vector>

namespace wallwright::desk {

/// Why a window rests where it does along one axis; the line is where that is seen.
struct MountGuide {
    geometry::Point<mounts::Front> from;
    geometry::Point<mounts::Front> to;
    std::string words;
};

struct WindowWish {
    geometry::Size blank;
    mounts::Borders lip;
    geometry::Rect<mounts::Front> place;                ///< Where the hand has it.
    std::vector<geometry::Rect<mounts::Front>> others;  ///< The windows that stay.
    double bar = 0;                                     ///< mm wanted between two windows.
    double reach = 0;  ///< mm within which a snap takes hold; below 0 nothing does.
    double step = 1;   ///< mm; without a snap the borders seen are whole steps.
};

struct WindowRest {
    geometry::Rect<mounts::Front> place;  ///< Inside the blank where it is not larger than that.
    std::vector<MountGuide> guides;       ///< One for each axis that a snap holds.
};

/// The nearest snap along each axis; of those equally near the first as in the words above. Up and
/// down it knows where the window rests sideways.
WindowRest rest_of(const WindowWish& wish);

}  // namespace wallwright::desk
