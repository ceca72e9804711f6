#include "desk/drag.h"

#include <cmath>

namespace wallwright::desk {

namespace {

double settled_along(double start, double pulled, double step, bool holds, double snapped) {
    if (holds)
        return pulled + snapped;
    return pulled == 0 ? 0 : std::round((start + pulled) / step) * step - start;
}

}  // namespace

Course course_of(const Pull& pull) {
    if (!pull.straight)
        return {pull.by, true, true, pull.step};
    const bool level = std::abs(pull.by.x) >= std::abs(pull.by.y);
    return level ? Course{{pull.by.x, 0}, true, false, pull.step}
                 : Course{{0, pull.by.y}, false, true, pull.step};
}

geometry::Vec<geometry::Wall> settled(geometry::Point<geometry::Wall> start, const Course& course,
                                      const Snapped& snapped) {
    return {settled_along(start.x, course.by.x, course.step, snapped.holds_x, snapped.by.x),
            settled_along(start.y, course.by.y, course.step, snapped.holds_y, snapped.by.y)};
}

double hand_step(units::LengthUnit unit) {
    constexpr double kSixteenth = units::kMmPerInch / 16;
    return unit == units::LengthUnit::inch ? kSixteenth : 1;
}

}  // namespace wallwright::desk
