// Whether a pane is glass: it breaks, and plastics do not.
#pragma once

#include "rules/scene.h"

namespace wallwright::rules {

/// By density, so that a person's own materials need no flag: float glass has 2500 kg/m3 (EN
/// 572-1), acrylic at most 1190, polystyrene 1070. A glazing whose material nobody knows counts as
/// glass.
bool has_glass(const Scene& scene, const wall::Frame& frame);

}  // namespace wallwright::rules
