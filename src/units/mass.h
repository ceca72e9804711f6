// Masses and forces: small types that do not mix, because mixing them can hurt someone.
#pragma once

#include "base/problem.h"
#include "units/length.h"

#include <compare>
#include <string>
#include <string_view>

namespace wallwright::units {

struct Kilograms {
    double value = 0;
    auto operator<=>(const Kilograms&) const = default;
};

struct Newtons {
    double value = 0;
    auto operator<=>(const Newtons&) const = default;
};

inline constexpr double kStandardGravity = 9.80665;  ///< m/s2, by definition (3rd CGPM, 1901).
inline constexpr double kKgPerPound =
    0.45359237;  ///< Exact by definition (avoirdupois pound, 1959).

constexpr Kilograms operator+(Kilograms a, Kilograms b) {
    return {a.value + b.value};
}
constexpr Kilograms operator-(Kilograms a, Kilograms b) {
    return {a.value - b.value};
}
constexpr Kilograms operator*(double factor, Kilograms a) {
    return {factor * a.value};
}
constexpr Kilograms operator/(Kilograms a, double divisor) {
    return {a.value / divisor};
}
constexpr double operator/(Kilograms a, Kilograms b) {
    return a.value / b.value;
}

constexpr Newtons operator+(Newtons a, Newtons b) {
    return {a.value + b.value};
}
constexpr Newtons operator*(double factor, Newtons a) {
    return {factor * a.value};
}
constexpr double operator/(Newtons a, Newtons b) {
    return a.value / b.value;
}

/// The force with which a mass pulls down.
constexpr Newtons weight_of(Kilograms mass) {
    return {mass.value * kStandardGravity};
}
/// The mass whose weight is the force: what a packet's rating in kg means.
constexpr Kilograms mass_with_weight(Newtons force) {
    return {force.value / kStandardGravity};
}

/// Reads a mass: "1.2 kg", "1,2 kg", "850 g", "2 lb 6 oz", "14 oz", "2.5". A bare number is in
/// kilograms. Zero or more, finite, at most 1000 kg.
Result<Kilograms> parse_mass(std::string_view text);

/// "1.24 kg", "850 g" below one kilogram; with inches, "2 lb 12 oz" to the nearest ounce.
std::string format_mass(Kilograms mass, LengthUnit unit);

/// "12.3 N", or beside inches "2.8 lbf", to 0.1.
std::string format_force(Newtons force, LengthUnit beside);

}  // namespace wallwright::units
