#include "desk/drag.h"

#include <cmath>

namespace wallwright::desk {

namespace {

constexpr double kStep = 0.1;  // mm: finer than a hand can place

double settled_along(double start, double pulled, bool holds, double snapped) {
    if (holds)
        return pulled + snapped;
    return pulled == 0 ? 0 : std::round((start + pulled) / kStep) * kStep - start;
}

}  // namespace

Course course_of(const Pull& pull) {
    if (!pull.straight)
        return {pull.by};
    const bool level = std::abs(pull.by.x) >= std::abs(pull.by.y);
    return level ? Course{{pull.by.x, 0}, true, false} : Course{{0, pull.by.y}, false, true};
}

geometry::Vec<geometry::Wall> settled(geometry::Point<geometry::Wall> start, const Course& course,
                                      const Snapped& snapped) {
    return {settled_along(start.x, course.by.x, snapped.holds_x, snapped.by.x),
            settled_along(start.y, course.by.y, snapped.holds_y, snapped.by.y)};
}

}  // namespace wallwright::desk
