#include "desk/growth_target.h"

#include "arrange/grow.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::desk {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Wall;

/// A title is a name without an article, a type has one already.
std::string with_article(const std::string& title) {
    const bool has_one = title.starts_with("the ") || title.starts_with("The ");
    return has_one ? title : fmt::format("the {}", title);
}

template <class Thing, class Id>
std::string thing_words(const std::vector<Thing>& things, const Id& id) {
    const auto found = std::ranges::find(things, id, &Thing::id);
    return found == things.end() ? id.text : with_article(wall::title_of(*found));
}

struct Words {
    const wall::Project& project;

    std::string operator()(const wall::FurnitureId& id) const {
        return thing_words(project.room.furniture, id);
    }
    std::string operator()(const wall::FixtureId& id) const {
        return thing_words(project.room.fixtures, id);
    }
    std::string operator()(Point<Wall> point) const {
        return fmt::format("the point {}, {}", units::format_number(point.x, project.unit),
                           units::format_length(point.y, project.unit));
    }
    std::string operator()(wall::WallCorner corner) const {
        std::string name(wall::name_of(corner));
        std::ranges::replace(name, '_', ' ');
        return fmt::format("the {} corner", name);
    }
    std::string operator()(const Rect<Wall>& /*part*/) const { return "a part of the wall"; }
};

double distance(const Rect<Wall>& a, const Rect<Wall>& b) {
    return std::hypot(std::max(0.0, -geometry::overlap_x(a, b)),
                      std::max(0.0, -geometry::overlap_y(a, b)));
}

}  // namespace

std::string words_of(const wall::Project& project, const wall::Target& target) {
    return std::visit(Words{project}, target);
}

std::vector<wall::Target> possible_targets(const wall::Project& project) {
    using wall::WallCorner;
    std::vector<wall::Target> targets;
    for (const wall::Furniture& furniture : project.room.furniture)
        targets.emplace_back(furniture.id);
    for (const wall::Fixture& fixture : project.room.fixtures)
        targets.emplace_back(fixture.id);
    for (const WallCorner corner : {WallCorner::top_left, WallCorner::top_right,
                                    WallCorner::bottom_left, WallCorner::bottom_right})
        targets.emplace_back(corner);
    if (project.target && std::ranges::find(targets, *project.target) == targets.end())
        targets.push_back(*project.target);
    return targets;
}

std::optional<double> distance_to_target(const wall::Project& project) {
    const auto target = project.target ? arrange::place_of(project.room, *project.target)
                                       : std::optional<Rect<Wall>>();
    std::optional<double> least;
    if (target)
        for (const wall::Placed& placed : wall::placed_pieces(project)) {
            const double mm = distance(placed.place, *target);
            least = std::min(least.value_or(mm), mm);
        }
    return least;
}

}  // namespace wallwright::desk
