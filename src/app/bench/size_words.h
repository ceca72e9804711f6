// How the bench writes sizes.
#pragma once

#include "geometry/rect.h"
#include "units/length.h"

#include <string>

namespace wallwright::app {

/// "300 × 400 mm".
std::string size_words(geometry::Size size, units::LengthUnit unit);

}  // namespace wallwright::app
