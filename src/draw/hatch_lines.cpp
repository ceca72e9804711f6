#include "draw/hatch_lines.h"

#include "base/contract.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace wallwright::draw {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Segment;
using geometry::Wall;

/// All points of one line have the same x - y.
double line_of(Point<Wall> point) {
    return point.x - point.y;
}

/// Where a line enters or leaves an area.
struct Crossing {
    double x = 0;
    int turn = 0;  ///< 1 or -1, by the way in which the side crosses the line.
};

void add_crossings(std::vector<Crossing>& found, const Area& area, double line) {
    for (std::size_t i = 0; i < area.size(); ++i) {
        const Point<Wall> from = area[i];
        const Point<Wall> to = area[(i + 1) % area.size()];
        const bool before = line_of(from) < line;
        if (before == (line_of(to) < line))
            continue;
        const double share = (line - line_of(from)) / (line_of(to) - line_of(from));
        found.push_back({from.x + share * (to.x - from.x), before ? 1 : -1});
    }
}

std::optional<Rect<Wall>> around(const std::vector<Area>& areas) {
    std::optional<Rect<Wall>> all;
    for (const Area& area : areas)
        for (const Point<Wall> corner : area)
            all = all ? hull(*all, {corner, corner}) : Rect<Wall>{corner, corner};
    return all;
}

/// The parts of one line.
void add_parts(std::vector<Segment<Wall>>& parts, std::vector<Crossing>& crossings, double line,
               const Rect<Wall>& within) {
    std::sort(crossings.begin(), crossings.end(),
              [](const Crossing& a, const Crossing& b) { return a.x < b.x; });
    const double least = std::max(within.min.x, within.min.y + line);
    const double most = std::min(within.max.x, within.max.y + line);
    int depth = 0;
    double start = 0;
    for (const Crossing& crossing : crossings) {
        if (depth == 0)
            start = crossing.x;
        depth += crossing.turn;
        if (depth != 0)
            continue;
        const double from = std::max(start, least);
        const double to = std::min(crossing.x, most);
        if (to > from)
            parts.push_back({{from, from - line}, {to, to - line}});
    }
}

}  // namespace

std::vector<Segment<Wall>> hatch_lines(const std::vector<Area>& areas, double spacing,
                                       const Rect<Wall>& within) {
    WW_EXPECT(spacing > 0, "a hatch has room between its lines");
    std::vector<Segment<Wall>> parts;
    const std::optional<Rect<Wall>> all = around(areas);
    if (!all || overlap_x(*all, within) <= 0 || overlap_y(*all, within) <= 0)
        return parts;
    const double step = spacing * std::numbers::sqrt2;
    const double first = all->min.x - all->max.y + step / 2;
    const double seen_from = std::max(first, within.min.x - within.max.y);
    const double seen_to = std::min(all->max.x - all->min.y, within.max.x - within.min.y);
    std::vector<Crossing> crossings;
    for (double i = std::ceil((seen_from - first) / step); first + i * step < seen_to; ++i) {
        const double line = first + i * step;
        crossings.clear();
        for (const Area& area : areas)
            add_crossings(crossings, area, line);
        add_parts(parts, crossings, line, within);
    }
    return parts;
}

}  // namespace wallwright::draw
