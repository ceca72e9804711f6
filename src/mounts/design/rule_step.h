// What a person can set with a rule: marks and sizes are told in its steps, so that they add up.
#pragma once

#include "units/length.h"

#include <string>

namespace wallwright::mounts {

/// mm: 0.5 for mm and cm, 1/16 in for inches; common practice, no source.
double rule_step(units::LengthUnit unit);

/// The nearest multiple of `step`, a half upward; the length itself where `step` is 0. Lengths that
/// differ by rounding of the machine only come out the same.
double to_step(double mm, double step);
/// The largest multiple that is no more than the length, and the least that is no less.
double down_to_step(double mm, double step);
double up_to_step(double mm, double step);

/// "1.4 mm": a board's thickness and what comes of it, which in inches to 1/16 would tell nothing
/// and which nobody measures in cm.
std::string board_text(double mm);

}  // namespace wallwright::mounts
