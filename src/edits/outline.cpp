// The wall's outline, corner by corner.
#include "edits/edit.h"
#include "edits/room.h"
#include "edits/sound.h"

#include <fmt/format.h>

#include <cmath>
#include <utility>

namespace wallwright::edits {

using geometry::Point;
using geometry::Wall;
using wall::Project;

namespace {

constexpr const char* kOutline = "room/outline_mm";

Outcome has_corner(const Project& project, std::size_t corner) {
    const std::size_t count = project.room.outline.corners.size();
    if (corner < count)
        return {};
    return fail({kOutline, fmt::format("there is no corner {}", corner + 1),
                 fmt::format("the outline has {} corners", count), ""});
}

/// Says what happened in the words of one who draws, not of one who writes corners into a file.
Result<Project> with_sound_outline(Project project) {
    const geometry::Polygon& outline = project.room.outline;
    if (outline.corners.size() >= 3 && geometry::crossing_sides(outline))
        return fail({kOutline, "the outline would cross itself or fold onto itself",
                     "keep the corners in order around the wall", ""});
    return sound(std::move(project));
}

std::size_t longest_side(const geometry::Polygon& outline) {
    const auto rank = [&outline](std::size_t index) {
        const auto side = geometry::side(outline, index);
        return std::pair(std::round(geometry::distance(side.from, side.to)),
                         side.from.y + side.to.y);
    };
    std::size_t longest = 0;
    for (std::size_t i = 1; i < outline.corners.size(); ++i)
        if (rank(i) > rank(longest))
            longest = i;
    return longest;
}

}  // namespace

Result<Project> move_corner(Project project, std::size_t corner, Point<Wall> to) {
    if (auto has = has_corner(project, corner); !has)
        return fail(std::move(has.error()));
    project.room.outline.corners[corner] = to;
    return with_sound_outline(std::move(project));
}

Result<Project> split_side(Project project, std::size_t side) {
    if (auto has = has_corner(project, side); !has)
        return fail(std::move(has.error()));
    const auto [from, to] = geometry::side(project.room.outline, side);
    auto& corners = project.room.outline.corners;
    corners.insert(corners.begin() + static_cast<std::ptrdiff_t>(side) + 1,
                   from + 0.5 * (to - from));
    return with_sound_outline(std::move(project));
}

Result<Project> add_corner(Project project) {
    const std::size_t side = longest_side(project.room.outline);
    return split_side(std::move(project), side);
}

Result<Project> remove_corner(Project project, std::size_t corner) {
    if (auto has = has_corner(project, corner); !has)
        return fail(std::move(has.error()));
    auto& corners = project.room.outline.corners;
    if (corners.size() <= 3)
        return fail({kOutline, "a wall has at least three corners",
                     "move the corner instead of removing it", ""});
    corners.erase(corners.begin() + static_cast<std::ptrdiff_t>(corner));
    return with_sound_outline(std::move(project));
}

Result<Project> set_wall_size(Project project, wall::Size size) {
    for (const double mm : {size.width, size.height})
        if (!(mm > 0))
            return fail({kOutline, fmt::format("{:g} mm is no size", mm),
                         "give a width and a height of more than 0", ""});
    auto flat = start(size, project.unit);
    if (!flat)
        return flat;
    project.room.outline = std::move(flat->room.outline);
    return sound(std::move(project));
}

}  // namespace wallwright::edits
