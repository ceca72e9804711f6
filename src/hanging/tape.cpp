#include "hanging/tape.h"

#include <array>
#include <cmath>

namespace wallwright::hanging {

namespace {

/// Table 1 of Annex X: mm, mm per started metre, mm for a surface end.
struct ClassLimits {
    double a;
    double b;
    double c;
};
constexpr std::array<ClassLimits, 3> kLimits{{{0.1, 0.1, 0.1}, {0.3, 0.2, 0.2}, {0.6, 0.4, 0.3}}};

constexpr double kPencilStroke = 0.5;  ///< mm

}  // namespace

double tape_error(wall::TapeClass tape, double length_mm, bool from_hook) {
    const ClassLimits& limits = kLimits.at(static_cast<std::size_t>(tape));
    // A whole number of metres stays whole even when its sum came out a rounding error above.
    const double started_metres = std::ceil(std::abs(length_mm) / 1000 - 1e-9);
    return limits.a + limits.b * started_metres + (from_hook ? limits.c : 0);
}

double mark_error(wall::TapeClass tape, double length_mm) {
    return std::hypot(tape_error(tape, length_mm, true), kPencilStroke);
}

double level_error(const wall::HangingStyle& style, double run_mm) {
    return style.level_error * std::abs(run_mm) / 1000;
}

ChainError chain_error(std::span<const double> links) {
    ChainError chain;
    for (const double link : links) {
        chain.likely = std::hypot(chain.likely, link);
        chain.worst += link;
    }
    return chain;
}

}  // namespace wallwright::hanging
