#include "draw/backdrop.h"

#include "draw/paths.h"
#include "draw/tint.h"
#include "draw/wall_inside.h"

#include <algorithm>
#include <iterator>

namespace wallwright::draw {

namespace {

using geometry::Polygon;
using geometry::Rect;
using geometry::Wall;
using Points = std::vector<Point<Wall>>;

constexpr double kFloorOverhang = 4;  // mm on paper to the left of the wall

/// How far inside the line through a side of the rectangle a point is, mm; negative outside.
struct Side {
    double x = 0;
    double y = 0;
    double offset = 0;
    [[nodiscard]] double inside(Point<Wall> p) const { return x * p.x + y * p.y - offset; }
};

/// What of the polygon is inside one side (Sutherland, Hodgman, Reentrant Polygon Clipping, 1974).
Points clipped(const Points& corners, const Side& side) {
    Points kept;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Point<Wall> from = corners[i];
        const Point<Wall> to = corners[(i + 1) % corners.size()];
        const double a = side.inside(from);
        const double b = side.inside(to);
        if (a >= 0)
            kept.push_back(from);
        if ((a < 0) != (b < 0))
            kept.push_back(from + (a / (a - b)) * (to - from));
    }
    return kept;
}

void add_skirting(Board& board, const Points& floor) {
    const double height = board.project.room.skirting_height;
    if (height <= 0)
        return;
    Points corners = floor;
    std::transform(floor.rbegin(), floor.rend(), std::back_inserter(corners),
                   [height](Point<Wall> point) {
                       return Point<Wall>{point.x, point.y + height};
                   });
    const wall::Colour colour = lighter(board.plate.colour, 0.6);
    board.add(polygon(corners, {own(colour), Stroke{own(darker(colour, 0.3)), 0.18}}));
}

void add_zones(Board& board) {
    Hatch<Wall> hatch{{}, Paint{Ink::hidden, {}, 0.4}, 1.8};
    for (const hanging::Zone& zone : board.assessment.zones) {
        Points area = part_on_wall(board.project.room.outline, zone.place);
        if (area.size() >= 3)
            hatch.areas.push_back(std::move(area));
    }
    if (!hatch.areas.empty())
        board.add(std::move(hatch));
}

}  // namespace

Points floor_line(const Polygon& outline) {
    constexpr double kBeside = 1e-3;  // mm to either side of an upright edge
    std::vector<double> stops;
    for (const Point<Wall> corner : outline.corners)
        stops.push_back(corner.x);
    std::sort(stops.begin(), stops.end());
    Points floor;
    for (std::size_t i = 1; i < stops.size(); ++i) {
        if (stops[i] - stops[i - 1] < 2 * kBeside)
            continue;
        const auto after = geometry::vertical_span(outline, stops[i - 1] + kBeside);
        const auto before = geometry::vertical_span(outline, stops[i] - kBeside);
        if (!after || !before)
            continue;
        floor.push_back({stops[i - 1], after->low});
        floor.push_back({stops[i], before->low});
    }
    return floor;
}

Points part_on_wall(const Polygon& outline, const Rect<Wall>& rect) {
    Points corners = outline.corners;
    for (const Side side : {Side{1, 0, rect.min.x}, Side{-1, 0, -rect.max.x},
                            Side{0, 1, rect.min.y}, Side{0, -1, -rect.max.y}})
        corners = clipped(corners, side);
    return corners;
}

void add_wall(Board& board) {
    const Polygon& outline = board.project.room.outline;
    board.add(polygon(outline.corners, {board.plate, std::nullopt}));
    if (board.options.zones)
        add_zones(board);
    if (board.options.studs)
        add_studs(board);
    if (board.options.zones)
        add_other_side(board);
    add_rail(board);
    add_skirting(board, floor_line(outline));
    board.add(polygon(outline.corners, {std::nullopt, Stroke{{Ink::outline}, 0.35}}));
}

void add_floor(Board& board, const FloorReach& reach) {
    const double left = board.wall.min.x - board.on_wall(kFloorOverhang);
    Points surface = floor_line(board.project.room.outline);
    surface.insert(surface.begin(), {left, surface.front().y});
    surface.push_back({reach.right, surface.back().y});
    Points area = surface;
    area.push_back({reach.right, reach.bottom});
    area.push_back({left, reach.bottom});
    board.add(polygon(area, {Paint{Ink::floor}, std::nullopt}));
    board.add(lines(surface, Stroke{{Ink::outline}, 0.7}));
}

void add_furnishings(Board& board) {
    for (const wall::Fixture& fixture : board.project.room.fixtures)
        add_fixture(board.shapes, fixture);
    for (const wall::Furniture& furniture : board.project.room.furniture)
        add_furniture(board.shapes, furniture);
}

}  // namespace wallwright::draw
