#include "arrange/growth_end.h"

#include "arrange/growth_goal.h"
#include "base/contract.h"
#include "hanging/zones.h"
#include "wall/this_side.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace wallwright::arrange {

namespace {

using spacing::Obstacle;
using Things = std::vector<Obstacle>;

/// The smallest of those without a place, or else of all that were free.
const Item* next_item(const Task& task, const Growth& growth) {
    const Item* least = nullptr;
    for (const Item& item : task.items) {
        const bool is_left_out =
            std::ranges::find(growth.left_out, item.id) != growth.left_out.end();
        const bool waited = !item.fixed;
        if ((growth.left_out.empty() ? waited : is_left_out) &&
            (least == nullptr || item.size.area() < least->size.area()))
            least = &item;
    }
    return least;
}

/// The group at its end, the pieces that went up with it.
Layout group_after(const Task& task, const GrowthGoal& goal, const Growth& growth) {
    Layout group = goal.group();
    if (!growth.stages.empty())
        for (const Spot& spot : growth.stages.back().layout)
            if (!task.items[spot.item].fixed)
                group.push_back(spot);
    return group;
}

void add_room(Things& things, const wall::Project& project) {
    using wall::FurnitureType;
    for (Obstacle& one : keep_outs(project.room))
        things.push_back(std::move(one));
    for (const wall::Furniture& one : project.room.furniture)
        if (one.type == FurnitureType::lamp || one.type == FurnitureType::plant)
            things.push_back({title_of(one), one.place});
    for (const wall::Fixture* radiator : wall::radiators_here(project.room)) {
        WallRect heat = radiator->place;
        heat.max.y += project.style.heat_above;
        things.push_back({fmt::format("the heat above {}", title_of(*radiator)), heat});
    }
}

/// The zones in which the next piece would be fixed.
void add_zones(Things& things, const wall::Room& room, const Item& item, const WallRect& next) {
    for (const hanging::Zone& zone : hanging::cable_zones(room))
        if (std::ranges::any_of(item.pierces, [&](const WallRect& pierced) {
                return geometry::touch(zone.place, pierced.moved({next.min.x, next.min.y}));
            }))
            things.push_back({fmt::format("the cable zone {}", zone.why), zone.place});
}

std::optional<InTheWay> between(const wall::Project& project, const Task& task,
                                const GrowthGoal& goal, const Way& way, const Item& item) {
    Things things;
    add_room(things, project);
    for (const Spot& spot : goal.others())
        things.push_back({task.items[spot.item].title, spot.place});
    std::erase_if(things, [&](const Obstacle& one) { return one.place == way.target; });
    add_zones(things, project.room, item, way.next());
    return in_the_way(way, things);
}

/// mm within which the group is there: at the gap, or as near as pieces hang over furniture.
double within(const wall::Project& project, const Task& task) {
    const bool is_furniture = std::holds_alternative<wall::FurnitureId>(*project.target);
    return is_furniture ? std::max(task.gap, project.style.clearance_most) : task.gap;
}

}  // namespace

GrowthEnd end_of(const wall::Project& project, const Task& task, const Growth& growth) {
    WW_EXPECT(project.target.has_value(), "a growth has a target");
    const WallRect target = place_of(project.room, *project.target).value();
    const GrowthGoal goal(task, target);
    const Layout group = group_after(task, goal, growth);
    const auto nearest = std::ranges::min_element(
        group, {}, [&](const Spot& spot) { return goal.distance(spot.place); });
    GrowthEnd end;
    end.to_target = goal.distance(nearest->place);
    end.reached = end.to_target <= within(project, task);
    const Item* next = next_item(task, growth);
    if (!end.reached && !growth.cut_short && next != nullptr)
        end.in_the_way =
            between(project, task, goal, {nearest->place, target, next->size, task.gap}, *next);
    return end;
}

std::string in_the_way_words(const GrowthEnd& end) {
    return end.in_the_way ? fmt::format("{} is in the way", end.in_the_way->title) : "";
}

std::string words_of(const GrowthEnd& end, const wall::Project& project, const Growth& growth,
                     units::LengthUnit unit) {
    if (end.reached || growth.cut_short)
        return "";
    const std::string stops = fmt::format("Growth stops {} before {}",
                                          units::format_length(std::round(end.to_target), unit),
                                          title_of(project, project.target.value(), unit));
    const bool all_up = growth.left_out.empty();
    if (!end.in_the_way)
        return all_up ? stops + ": every waiting piece is up." : stops + ".";
    const std::string in_the_way = in_the_way_words(end);
    if (end.in_the_way->fits_before && all_up)
        return fmt::format("{}: every waiting piece is up; farther on, {}.", stops, in_the_way);
    return fmt::format("{}: {}.", stops, in_the_way);
}

}  // namespace wallwright::arrange
