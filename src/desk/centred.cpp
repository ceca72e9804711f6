#include "desk/centred.h"

#include "base/contract.h"
#include "desk/command_functions.h"
#include "edits/sound.h"
#include "rules/above_furniture.h"
#include "wall/middle.h"

#include <cmath>

namespace wallwright::desk {

Result<wall::Project> centred(wall::Project project, edits::PieceIds group) {
    const double up = project.style.centre_height - wall::middle_above_floor(project, group);
    return edits::shift(std::move(project), group, {0, edits::to_file_step(up)});
}

const wall::Furniture* furniture_below(const wall::Project& project,
                                       const geometry::Rect<geometry::Wall>& group) {
    const auto off = [&group](const wall::Furniture& one) {
        return std::abs(one.place.centre().x - group.centre().x);
    };
    const wall::Furniture* nearest = nullptr;
    for (const wall::Furniture& one : project.room.furniture)
        if (rules::reads_with_a_group(one.type) && one.place.top() <= group.bottom() &&
            (nearest == nullptr || off(one) < off(*nearest)))
            nearest = &one;
    return nearest;
}

Result<wall::Project> centred_over(wall::Project project, edits::PieceIds group) {
    const auto bounds = bounds_of(project, group);
    const wall::Furniture* below = furniture_below(project, bounds);
    WW_EXPECT(below != nullptr, "there is furniture below the group");
    const double right = below->place.centre().x - bounds.centre().x;
    return edits::shift(std::move(project), group, {edits::to_file_step(right), 0});
}

}  // namespace wallwright::desk
