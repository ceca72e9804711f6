#include "mounts/design/rule_step.h"

#include <cmath>

namespace wallwright::mounts {

namespace {

constexpr double kNoise = 1e-6;  // of a step

}  // namespace

double rule_step(units::LengthUnit unit) {
    return unit == units::LengthUnit::inch ? units::kMmPerInch / 16 : 0.5;
}

double to_step(double mm, double step) {
    return step <= 0 ? mm : std::floor(mm / step + 0.5 + kNoise) * step;
}

double down_to_step(double mm, double step) {
    return step <= 0 ? mm : std::floor(mm / step + kNoise) * step;
}

double up_to_step(double mm, double step) {
    return step <= 0 ? mm : std::ceil(mm / step - kNoise) * step;
}

std::string board_text(double mm) {
    return units::format_length(mm, units::LengthUnit::mm);
}

}  // namespace wallwright::mounts
