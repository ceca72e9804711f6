#include "rules/glass.h"

namespace wallwright::rules {

namespace {

constexpr double kLightestGlass = 2000;  ///< kg/m3, between the plastics and the glasses.

}  // namespace

bool has_glass(const Scene& scene, const wall::Frame& frame) {
    if (frame.glazing.thickness <= 0)
        return false;
    const wall::Material* material = find(scene.catalogue, frame.glazing.material);
    return material == nullptr || material->density_high > kLightestGlass;
}

}  // namespace wallwright::rules
