#include "rules/heat.h"

#include "rules/judge.h"

#include <algorithm>

namespace wallwright::rules {

std::optional<double> height_in_warm_air(const Scene& scene, const OnWall& one,
                                         const wall::Fixture& radiator) {
    const double above = std::max(0.0, one.place.bottom() - radiator.place.top());
    if (!is_over(one, radiator.place) || !exceeds(scene.project.style.heat_above, above))
        return std::nullopt;
    return above;
}

}  // namespace wallwright::rules
