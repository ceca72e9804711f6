// Lengths of recorded card as a rule has them.
#pragma once

#include "mounts/design/rule_step.h"

namespace wallwright::mounts {

/// mm by which a length on the rule may differ in a file, which keeps hundredths.
inline constexpr double kOffTheRule = 0.01;

/// The longest length on the rule that is not above this one, mm.
inline double down_to_rule(double mm, units::LengthUnit unit) {
    return down_to_step(mm + kOffTheRule, rule_step(unit));
}

/// The shortest length on the rule that is not below this one, mm; `mm` is 0 or more.
inline double up_to_rule(double mm, units::LengthUnit unit) {
    return mm <= kOffTheRule ? 0 : up_to_step(mm - kOffTheRule, rule_step(unit));
}

}  // namespace wallwright::mounts
