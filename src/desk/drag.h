// How far the hand pulls, and what comes of it.
#pragma once

#include "base/problem.h"
#include "desk/showing.h"

#include <string>

namespace wallwright::desk {

inline constexpr double kNoSnap = -1;

struct Pull {
    geometry::Vec<geometry::Wall> by;  ///< mm from the press to where the pointer is.
    double reach = kNoSnap;            ///< mm within which a snap takes hold; kNoSnap for none.
    bool straight = false;             ///< Level or plumb, whichever the hand is nearer to.
    double step = 1;                   ///< mm; where nothing holds, it rests on a whole one.
};

/// A pull, and the axes along which it may move anything.
struct Course {
    geometry::Vec<geometry::Wall> by;
    bool free_x = true;
    bool free_y = true;
    double step = 1;
};
Course course_of(const Pull& pull);

/// The whole way for what began at `start`: with the snap, and without one to a whole step.
geometry::Vec<geometry::Wall> settled(geometry::Point<geometry::Wall> start, const Course& course,
                                      const Snapped& snapped);

/// How fine a hand places things: 1 mm, or 1/16 in where the person works in inches.
double hand_step(units::LengthUnit unit);

/// The state of a drag.
struct Dragged {
    Result<wall::Project> project;  ///< The kept project with what was dragged at its new place.
    std::string label;              ///< Of the step that it would be.
    Showing showing;
};

}  // namespace wallwright::desk
