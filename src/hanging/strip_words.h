// Where strips go on the back of a frame, in words.
#pragma once

#include "hanging/fixings.h"

#include <string>
#include <vector>

namespace wallwright::hanging {

/// "2 strips: 3 mm from the sides, 3 mm from the top", one line for each height at which strips
/// sit. `place` is the piece's.
std::vector<std::string> strip_words(const Hanging& hanging,
                                     const geometry::Rect<geometry::Wall>& place,
                                     units::LengthUnit unit);

}  // namespace wallwright::hanging
