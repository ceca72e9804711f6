#include "arrange/task.h"

#include "arrange/measure.h"
#include "base/contract.h"
#include "hanging/fixings.h"
#include "hanging/zones.h"
#include "rules/above_furniture.h"
#include "spacing/group.h"
#include "wall/this_side.h"
#include "wall/titles.h"

#include <algorithm>

namespace wallwright::arrange {

namespace {

bool is_free(const wall::Piece& piece, Free free) {
    return free == Free::all_unfixed ? !wall::is_fixed(piece)
                                     : piece.state == wall::PieceState::waiting;
}

wall::Colour picture_colour(const wall::Project& project, const wall::Piece& piece,
                            const wall::Frame& frame) {
    if (piece.print)
        if (const wall::Print* print = find(project, *piece.print))
            return print->colour;
    if (piece.mount)
        if (const wall::Mount* mount = find(project, *piece.mount))
            return mount->colour;
    return frame.colour;
}

Item item_of(const wall::Project& project, const wall::Piece& piece, Free free) {
    const wall::Frame& frame = frame_of(project, piece);
    Item item;
    item.id = piece.id;
    item.title = title_of(piece);
    item.size = outside_size(frame, piece);
    if (!is_free(piece, free))
        item.fixed = piece.at;
    item.frame = frame.colour;
    item.picture = picture_colour(project, piece, frame);
    return item;
}

/// What the fixings of free pieces pierce. Fixings are chosen for pieces on the wall only, so those
/// that wait are put somewhere for it.
void add_pierced(Task& task, wall::Project project, const wall::Catalogue& catalogue) {
    for (std::size_t i = 0; i < task.items.size(); ++i) {
        wall::Piece& piece = project.pieces[i];
        if (piece.state != wall::PieceState::waiting)
            continue;
        piece.state = wall::PieceState::planned;
        piece.at = task.wall.min;
    }
    const std::vector<hanging::Hanging> hangings =
        hanging::hang_all(project, wall::with_own(catalogue, project.own));
    for (std::size_t i = 0; i < task.items.size(); ++i) {
        const WallPoint corner = *project.pieces[i].at;
        for (const hanging::Fixing& fixing : hangings[i].fixings)
            if (wall::pierces(fixing.kind))
                task.items[i].pierces.push_back(
                    hanging::pierced_by(fixing).moved({-corner.x, -corner.y}));
    }
}

std::vector<Beneath> furniture_of(const wall::Project& project) {
    const wall::HangingStyle& style = project.style;
    std::vector<Beneath> all;
    for (const wall::Furniture& one : project.room.furniture)
        if (rules::reads_with_a_group(one.type))
            all.push_back({wall::title_of(one), one.place, style.clearance_least,
                           style.clearance_most, style.width_share_least, style.width_share_most});
    return all;
}

std::optional<Beneath> beneath_of(const Task& task) {
    const Layout fixed = fixed_part(task);
    const auto worth = [&fixed](const Beneath& one) {
        const double shared = fixed.empty() ? 0 : geometry::overlap_x(bounds_of(fixed), one.place);
        return std::pair(std::max(0.0, shared), one.place.width());
    };
    const auto chosen = std::ranges::max_element(task.furniture, {}, worth);
    return chosen == task.furniture.end() ? std::nullopt : std::optional(*chosen);
}

std::uint32_t index_of(const Task& task, const wall::PieceId& id) {
    const auto found = std::ranges::find(task.items, id, &Item::id);
    return static_cast<std::uint32_t>(found - task.items.begin());
}

void add_wish(Task& task, const wall::Room& room, const wall::Wish& wish) {
    const std::uint32_t first = index_of(task, wish.first);
    if (wish.thing) {
        if (const std::optional<WallRect> place = place_of(room, *wish.thing))
            task.items[first].not_over.push_back({place->left(), place->right()});
        return;
    }
    task.wishes.push_back({wish.kind, first, wish.second ? index_of(task, *wish.second) : first});
}

bool pierces_zone(const Task& task, const Item& item, const WallRect& place) {
    return std::ranges::any_of(item.pierces, [&](const WallRect& pierced) {
        const WallRect there = pierced.moved({place.min.x, place.min.y});
        return std::ranges::any_of(
            task.zones, [&](const WallRect& zone) { return geometry::touch(zone, there); });
    });
}

/// A pencil mark is off by a mm or two, and a file keeps hundredths: farther than that from a zone.
constexpr double kOffAZone = 5;
/// Lamps throw their light up: our choice.
constexpr double kLightAbove = 300;

WallRect with_room_above(WallRect place, double room) {
    place.max.y += room;
    return place;
}

void add_keep_outs(Task& task, const wall::Project& project) {
    using wall::FurnitureType;
    const wall::Room& room = project.room;
    for (const spacing::Obstacle& obstacle : keep_outs(room))
        task.keep_out.push_back(obstacle.place.grown(task.gap));
    for (const wall::Fixture* radiator : wall::radiators_here(room))
        task.keep_out.push_back(with_room_above(radiator->place, project.style.heat_above));
    for (const wall::Furniture& one : room.furniture)
        if (one.type == FurnitureType::lamp || one.type == FurnitureType::plant)
            task.keep_out.push_back(with_room_above(
                one.place.grown(task.gap / 2), one.type == FurnitureType::lamp ? kLightAbove : 0));
}

}  // namespace

Task task_of(const wall::Project& project, const wall::Catalogue& catalogue, Free free) {
    Task task;
    for (const wall::Piece& piece : project.pieces)
        task.items.push_back(item_of(project, piece, free));
    task.gap = project.style.gap;
    add_keep_outs(task, project);
    for (const hanging::Zone& zone : hanging::cable_zones(project.room))
        task.zones.push_back(zone.place.grown(kOffAZone));
    task.wall = geometry::bounds(project.room.outline);
    task.floor = geometry::FloorLine(project.room.outline);
    task.reach = spacing::group_reach(task.gap);
    task.centre_height = project.style.centre_height;
    task.centre_tolerance = project.style.centre_tolerance;
    task.furniture = furniture_of(project);
    task.beneath = beneath_of(task);
    task.weights = weights_of(project);
    for (const wall::Wish& wish : project.wishes)
        add_wish(task, project.room, wish);
    add_pierced(task, project, catalogue);
    task.applies = applying(task);
    return task;
}

WallRect bounds_of(std::span<const Spot> spots) {
    WW_EXPECT(!spots.empty(), "only some spots have bounds");
    WallRect bounds = spots.front().place;
    for (const Spot& spot : spots)
        bounds = geometry::hull(bounds, spot.place);
    return bounds;
}

double middle_above_floor(const Task& task, std::span<const Spot> spots) {
    std::vector<WallRect> places;
    for (const Spot& spot : spots)
        places.push_back(spot.place);
    return geometry::middle_above(task.floor, places);
}

const Beneath* beneath_group(const Task& task, const WallRect& bounds) {
    const Beneath* chosen = nullptr;
    double most = geometry::kLengthEps;
    for (const Beneath& one : task.furniture)
        if (const double shared = geometry::overlap_x(one.place, bounds);
            shared > most && one.place.top() <= bounds.bottom() + geometry::kLengthEps) {
            most = shared;
            chosen = &one;
        }
    return chosen;
}

Layout layout_of(const wall::Project& project) {
    Layout layout;
    for (std::uint32_t i = 0; i < project.pieces.size(); ++i)
        if (const std::optional<WallRect> place = wall::place_of(project, project.pieces[i]))
            layout.push_back({i, *place});
    return layout;
}

Layout fixed_part(const Task& task) {
    Layout fixed;
    for (std::uint32_t i = 0; i < task.items.size(); ++i)
        if (const Item& item = task.items[i]; item.fixed)
            fixed.push_back({i, WallRect::at(*item.fixed, item.size)});
    return fixed;
}

std::vector<std::uint32_t> free_items(const Task& task) {
    std::vector<std::uint32_t> free;
    for (std::uint32_t i = 0; i < task.items.size(); ++i)
        if (!task.items[i].fixed)
            free.push_back(i);
    return free;
}

std::vector<std::uint32_t> left_out(const Task& task, const Layout& layout) {
    std::vector<bool> placed(task.items.size(), false);
    for (const Spot& spot : layout)
        placed[spot.item] = true;
    std::vector<std::uint32_t> out = free_items(task);
    std::erase_if(out, [&placed](std::uint32_t item) { return placed[item]; });
    return out;
}

std::vector<wall::PieceId> ids_left_out(const Task& task, const Layout& layout) {
    std::vector<wall::PieceId> ids;
    for (const std::uint32_t item : left_out(task, layout))
        ids.push_back(task.items[item].id);
    return ids;
}

bool wall_allows(const Task& task, std::uint32_t item, const WallRect& place) {
    const auto in_the_way = [&place](const WallRect& other) {
        return geometry::overlaps(other, place);
    };
    if (std::ranges::any_of(task.keep_out, in_the_way))
        return false;
    const Item& asked = task.items[item];
    const auto is_over = [&place](const geometry::Span& span) {
        return std::min(span.high, place.right()) - std::max(span.low, place.left()) >
               geometry::kLengthEps;
    };
    return !std::ranges::any_of(asked.not_over, is_over) && !pierces_zone(task, asked, place);
}

bool clear_of_each_other(const Task& task, const WallRect& a, const WallRect& b) {
    return std::min(geometry::overlap_x(a, b), geometry::overlap_y(a, b)) <=
           geometry::kLengthEps - task.gap;
}

bool is_allowed(const Task& task, const Layout& layout) {
    for (std::size_t i = 0; i < layout.size(); ++i) {
        const bool fixed = task.items[layout[i].item].fixed.has_value();
        if (!fixed && !wall_allows(task, layout[i].item, layout[i].place))
            return false;
        for (std::size_t j = 0; j < i; ++j)
            if (!(fixed && task.items[layout[j].item].fixed) &&
                !clear_of_each_other(task, layout[i].place, layout[j].place))
                return false;
    }
    return true;
}

}  // namespace wallwright::arrange
