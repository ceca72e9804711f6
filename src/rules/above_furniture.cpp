#include "rules/above_furniture.h"

#include "rules/judge.h"
#include "rules/way_clear.h"

#include <algorithm>
#include <optional>

namespace wallwright::rules {

namespace {

using wall::FurnitureType;

constexpr double kShare = 0.5;  ///< Of the narrower width: less than that is beside and not above.

bool shares_width(const spacing::Group& group, const wall::Furniture& furniture) {
    const double narrower = std::min(group.bounds.width(), furniture.place.width());
    return geometry::overlap_x(group.bounds, furniture.place) >= kShare * narrower;
}

/// Nothing when a piece of the group is behind the furniture: that is for another rule to say.
std::optional<Above> above(const Scene& scene, const spacing::Group& group,
                           const wall::Furniture& furniture) {
    if (!shares_width(group, furniture))
        return std::nullopt;
    const OnWall* lowest = nullptr;
    for (const OnWall* one : members_of(scene, group)) {
        if (overlap_depth(one->place, furniture.place) > 0)
            return std::nullopt;
        const bool lower = lowest == nullptr || one->place.bottom() < lowest->place.bottom();
        if (lower && is_over(*one, furniture.place))
            lowest = one;
    }
    if (lowest == nullptr)
        return std::nullopt;
    return Above{&group, &furniture, lowest, lowest->place.bottom() - furniture.place.top(), false};
}

double shared_width(const Above& one) {
    return geometry::overlap_x(one.group->bounds, one.furniture->place);
}

void find_main(std::vector<Above>& all) {
    for (Above& one : all)
        one.main = std::ranges::none_of(all, [&one](const Above& other) {
            return other.group == one.group && shared_width(other) > shared_width(one);
        });
}

}  // namespace

bool reads_with_a_group(FurnitureType type) {
    switch (type) {
        case FurnitureType::sofa:
        case FurnitureType::bed:
        case FurnitureType::sideboard:
        case FurnitureType::table:
        case FurnitureType::bookcase:
            return true;
        case FurnitureType::cot:
        case FurnitureType::lamp:
        case FurnitureType::plant:
        case FurnitureType::other:
            return false;
    }
    return false;
}

std::vector<Above> groups_above_furniture(const Scene& scene) {
    std::vector<Above> all;
    for (const wall::Furniture& furniture : scene.project.room.furniture) {
        if (!reads_with_a_group(furniture.type))
            continue;
        std::optional<Above> lowest;
        for (const spacing::Group& group : scene.groups) {
            const std::optional<Above> found = above(scene, group, furniture);
            if (found && (!lowest || found->clearance < lowest->clearance))
                lowest = found;
        }
        if (lowest)
            all.push_back(*lowest);
    }
    find_main(all);
    return all;
}

}  // namespace wallwright::rules
