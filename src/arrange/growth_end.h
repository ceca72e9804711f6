// Where a growth ends, and why there: for the person who waits at the target.
#pragma once

#include "arrange/grow.h"
#include "arrange/in_the_way.h"

#include <optional>
#include <string>

namespace wallwright::arrange {

struct GrowthEnd {
    double to_target = 0;  ///< mm from the group after the last stage.
    bool reached = false;  ///< Near enough to be of one group with what hangs there, or over it.
    /// What stands between; nothing where it has reached the target.
    std::optional<InTheWay> in_the_way;
};

/// Of a project as growth_start() gives it, with a target that is there, and its task. What the
/// search was stopped before is nobody's fault: then nothing is in the way.
GrowthEnd end_of(const wall::Project& project, const Task& task, const Growth& growth);

/// "Window 2 is in the way"; empty where nothing is.
std::string in_the_way_words(const GrowthEnd& end);

/// "Growth stops 430 mm before Bench: Window 2 is in the way."; empty where it has reached the
/// target or was stopped.
std::string words_of(const GrowthEnd& end, const wall::Project& project, const Growth& growth,
                     units::LengthUnit unit);

}  // namespace wallwright::arrange
