#include "desk/room_snap.h"

#include "desk/snap_search.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <cmath>

namespace wallwright::desk {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Wall;
using spacing::Axis;
using spacing::Line;
using wall::Project;

/// Of rests equally near: first the wall's own lines, since they are firmer than other furniture.
enum Rank { kWall, kEdges, kBeside, kMiddles };

bool takes_part(Line line, int side) {
    return side == 0 || line == (side < 0 ? Line::low : Line::high);
}

/// How one thing is to another when its side meets the other's.
const char* beside_words(Axis axis, Line own) {
    if (axis == Axis::horizontal)
        return "beside";
    return own == Line::low ? "on top of" : "under";
}

class RoomSearch {
  public:
    RoomSearch(SnapSearch& search, int side) : search_(search), side_(side) {}

    void add_thing(const Rect<Wall>& other, const std::string& title) {
        for (const Line line : {Line::low, Line::high}) {
            const Line facing = line == Line::low ? Line::high : Line::low;
            const std::string beside =
                fmt::format("{} {}", beside_words(search_.axis(), line), title);
            add(line, at(other, line), {0, SnapKind::edges, kEdges, line, other, edges(line)});
            add(line, at(other, facing), {0, SnapKind::edges, kBeside, line, other, beside});
        }
        if (side_ == 0)
            add(Line::centre, at(other, Line::centre),
                {0, SnapKind::centres, kMiddles, Line::centre, other, edges(Line::centre)});
    }

    void add_line(Line line, double to, const Rect<Wall>& seen, const char* words) {
        add(line, to, {0, SnapKind::room, kWall, line, seen, words});
    }

  private:
    [[nodiscard]] double at(const Rect<Wall>& place, Line line) const {
        return spacing::line_at(place, search_.axis(), line);
    }
    [[nodiscard]] std::string edges(Line line) const { return words_for(search_.axis(), line); }

    void add(Line line, double to, Rest rest) {
        if (!takes_part(line, side_))
            return;
        rest.by = to - at(search_.place(), line);
        search_.offer(std::move(rest));
    }

    SnapSearch& search_;
    int side_;
};

void add_other_things(RoomSearch& search, const Project& project, const Thing& thing) {
    for (const wall::Furniture& one : project.room.furniture)
        if (Thing{one.id} != thing)
            search.add_thing(one.place, wall::title_of(one));
    for (const wall::Fixture& one : project.room.fixtures)
        if (Thing{one.id} != thing)
            search.add_thing(one.place, wall::title_of(one));
}

void add_wall_ends(RoomSearch& search, const Project& project) {
    const Rect<Wall> wall = geometry::bounds(project.room.outline);
    search.add_line(Line::low, wall.min.x, wall, "end of the wall");
    search.add_line(Line::high, wall.max.x, wall, "end of the wall");
}

/// The floor under the middle of the place, which a stair may have higher than elsewhere.
void add_floor(RoomSearch& search, const Project& project, const Rect<Wall>& place) {
    const auto span = geometry::vertical_span(project.room.outline, place.centre().x);
    if (!span)
        return;
    const Rect<Wall> floor{{place.min.x, span->low}, {place.max.x, span->low}};
    search.add_line(Line::low, span->low, floor, "floor");
}

void offer_corner(SnapSearch& search, Point<Wall> neighbour, const char* words) {
    search.offer({along(search.axis(), neighbour) - low(search.place(), search.axis()),
                  SnapKind::edges,
                  kEdges,
                  Line::low,
                  {neighbour, neighbour},
                  words});
}

}  // namespace

Snapped snap_in_room(const Project& project, const RoomWish& wish) {
    SnapSearch x(wish.place, Axis::horizontal, wish.reach);
    SnapSearch y(wish.place, Axis::vertical, wish.reach);
    RoomSearch across(x, wish.side_x);
    RoomSearch up(y, wish.side_y);
    if (wish.free_x) {
        add_wall_ends(across, project);
        add_other_things(across, project, wish.thing);
    }
    if (wish.free_y) {
        add_floor(up, project, wish.place);
        add_other_things(up, project, wish.thing);
    }
    return found_by(x, y);
}

Snapped snap_corner(const Project& project, std::size_t corner, const SnapWish& wish) {
    const std::vector<Point<Wall>>& corners = project.room.outline.corners;
    const Point<Wall> before = corners[(corner + corners.size() - 1) % corners.size()];
    const Point<Wall> after = corners[(corner + 1) % corners.size()];
    const auto search_along = [&](Axis axis, double reach) {
        SnapSearch search(wish.place, axis, reach);
        for (const Point<Wall> neighbour : {before, after})
            offer_corner(search, neighbour, axis == Axis::horizontal ? "plumb" : "level");
        return search;
    };
    constexpr double kNone = -1;
    SnapSearch x = search_along(Axis::horizontal, wish.free_x ? wish.reach : kNone);
    SnapSearch y = search_along(Axis::vertical, wish.free_y ? wish.reach : kNone);
    // Plumb and level with one and the same corner would lay the two on each other.
    if (x.best() && y.best() && x.best()->other == y.best()->other) {
        const bool keep_x = std::abs(x.best()->by) <= std::abs(y.best()->by);
        (keep_x ? y : x) = search_along(keep_x ? Axis::vertical : Axis::horizontal, kNone);
    }
    return found_by(x, y);
}

}  // namespace wallwright::desk
