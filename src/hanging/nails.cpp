#include "hanging/nails.h"

#include <cmath>

namespace wallwright::hanging {

units::Newtons nail_withdrawal(double specific_gravity, double diameter, double depth) {
    const double pounds_per_inch =
        1380 * std::pow(specific_gravity, 2.5) * diameter / units::kMmPerInch;
    const double pounds = pounds_per_inch * depth / units::kMmPerInch;
    return units::weight_of({pounds * units::kKgPerPound});
}

}  // namespace wallwright::hanging
