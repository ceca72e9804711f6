// Where a radiator's warm air reaches a piece.
#pragma once

#include "rules/scene.h"

#include <optional>

namespace wallwright::rules {

/// How far above the radiator the piece begins, mm, 0 where it begins no higher; nothing where it
/// hangs beside it, or higher than style.heat_above.
std::optional<double> height_in_warm_air(const Scene& scene, const OnWall& one,
                                         const wall::Fixture& radiator);

}  // namespace wallwright::rules
