#include "arrange/patterns/bands.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace wallwright::arrange {

namespace {

/// A piece among the bands: `along` in the direction of reading, `across` from band to band.
struct Cell {
    std::uint32_t item = 0;
    BandSize size;
    double along = 0;
    double across = 0;
};

double length_of(std::span<const Cell> band) {
    return band.back().along + band.back().size.length;
}

double inset(BandEdge edge, double room) {
    if (edge == BandEdge::middle)
        return room / 2;
    return edge == BandEdge::before ? 0 : room;
}

/// One band alone, from 0 along and from 0 across.
std::vector<Cell> cells_of(const Task& task, std::span<const std::uint32_t> items,
                           Direction direction, BandEdge edge) {
    std::vector<Cell> cells;
    double along = 0;
    double thickness = 0;
    for (const std::uint32_t item : items) {
        cells.push_back({item, band_size(task.items[item].size, direction), along, 0});
        along += cells.back().size.length + task.gap;
        thickness = std::max(thickness, cells.back().size.thickness);
    }
    for (Cell& cell : cells)
        cell.across = inset(edge, thickness - cell.size.thickness);
    return cells;
}

/// What a band of `length` leaves before it, of the longest one's length.
double shift_along(RowLine line, Direction direction, double room) {
    if (line == RowLine::centre)
        return room / 2;
    // Columns are read from the top, so their low end is the far one.
    const bool at_the_start = (line == RowLine::low) == (direction == Direction::across_the_wall);
    return at_the_start ? 0 : room;
}

/// How far the band must go across so that the gap is kept to all that is set already.
double shift_across(std::span<const Cell> set, std::span<const Cell> band, double gap) {
    double shift = set.empty() ? 0 : -std::numeric_limits<double>::infinity();
    for (const Cell& before : set)
        for (const Cell& cell : band) {
            const double apart = std::max(cell.along - before.along - before.size.length,
                                          before.along - cell.along - cell.size.length);
            if (apart < gap - geometry::kLengthEps)
                shift = std::max(shift, before.across + before.size.thickness + gap - cell.across);
        }
    return shift;
}

WallPoint lower_left(const Cell& cell, Direction direction) {
    if (direction == Direction::across_the_wall)
        return {cell.along, -cell.across - cell.size.thickness};
    return {cell.across, -cell.along - cell.size.length};
}

Layout on_the_wall(const Task& task, std::span<const Cell> cells, Direction direction) {
    WallPoint corner{std::numeric_limits<double>::infinity(),
                     std::numeric_limits<double>::infinity()};
    for (const Cell& cell : cells) {
        const WallPoint at = lower_left(cell, direction);
        corner = {std::min(corner.x, at.x), std::min(corner.y, at.y)};
    }
    Layout layout;
    for (const Cell& cell : cells) {
        const WallPoint at = lower_left(cell, direction);
        layout.push_back({cell.item, WallRect::at({at.x - corner.x, at.y - corner.y},
                                                  task.items[cell.item].size)});
    }
    return layout;
}

}  // namespace

BandSize band_size(const geometry::Size& size, Direction direction) {
    if (direction == Direction::across_the_wall)
        return {size.width, size.height};
    return {size.height, size.width};
}

Layout lay_out_bands(const Task& task, std::span<const std::vector<std::uint32_t>> bands,
                     const Banding& banding) {
    std::vector<std::vector<Cell>> alone;
    double longest = 0;
    for (std::size_t i = 0; i < bands.size(); ++i) {
        alone.push_back(cells_of(task, bands[i], banding.direction, banding.edges[i]));
        longest = std::max(longest, length_of(alone.back()));
    }
    std::vector<Cell> set;
    for (std::vector<Cell>& band : alone) {
        const double along =
            shift_along(banding.by_each_other, banding.direction, longest - length_of(band));
        for (Cell& cell : band)
            cell.along += along;
        const double across = shift_across(set, band, task.gap);
        for (Cell& cell : band)
            cell.across += across;
        set.insert(set.end(), band.begin(), band.end());
    }
    return on_the_wall(task, set, banding.direction);
}

Layout lay_out_climbing(const Task& task, std::span<const std::vector<std::uint32_t>> columns,
                        RowLine line, std::span<const BandEdge> edges) {
    Layout block;
    double left = 0;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const Layout column = lay_out_bands(
            task, columns.subspan(i, 1), {Direction::down_the_wall, RowLine::centre, {edges[i]}});
        const geometry::Size size = bounds_of(column).size();
        const double below = line == RowLine::low      ? 0
                             : line == RowLine::centre ? size.height / 2
                                                       : size.height;
        const WallVec by{left, std::round(task.floor.pitch() * (left + size.width / 2) - below)};
        for (const Spot& spot : column)
            block.push_back({spot.item, spot.place.moved(by)});
        left += size.width + task.gap;
    }
    const WallPoint corner = bounds_of(block).min;
    for (Spot& spot : block)
        spot.place = spot.place.moved({-corner.x, -corner.y});
    return block;
}

std::vector<Plan> climbing_first(const Task& task, std::vector<Plan> plans) {
    if (task.floor.is_level())
        return plans;
    std::vector<Plan> all = plans;
    for (Plan& plan : all)
        plan.climbs = true;
    all.insert(all.end(), plans.begin(), plans.end());
    return all;
}

std::vector<BandEdge> edges_about_gaps(std::size_t bands) {
    std::vector<BandEdge> edges;
    for (std::size_t i = 0; i < bands; ++i)
        edges.push_back(i % 2 == 0 ? BandEdge::after : BandEdge::before);
    edges.back() = BandEdge::before;
    return edges;
}

}  // namespace wallwright::arrange
