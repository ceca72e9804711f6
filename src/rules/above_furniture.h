// Which group hangs above which piece of furniture, so that the two read as one.
#pragma once

#include "rules/scene.h"

#include <vector>

namespace wallwright::rules {

/// Pictures belong to what is broad and low; a lamp or a plant carries no group.
bool reads_with_a_group(wall::FurnitureType type);

struct Above {
    const spacing::Group* group = nullptr;
    const wall::Furniture* furniture = nullptr;
    const OnWall* lowest = nullptr;  ///< Of its pieces right above the furniture.
    double clearance = 0;            ///< mm from the furniture's top to the bottom of `lowest`.
    bool main = false;  ///< The furniture that the group shares most of its width with.
};

/// For each sofa, bed, sideboard, table and bookcase the lowest group that shares at least half of
/// its own width or of the furniture's with it and is clear above it, in the order of the
/// furniture.
std::vector<Above> groups_above_furniture(const Scene& scene);

}  // namespace wallwright::rules
