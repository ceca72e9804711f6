// Pieces in bands. A row is a band read from left to right; a column is one read from top to
// bottom. What holds for rows holds for columns, with the head on the shoulder.
#pragma once

#include "arrange/pattern.h"

#include <span>
#include <vector>

namespace wallwright::arrange {

enum class Direction { across_the_wall, down_the_wall };

/// A size as its band sees it, in mm.
struct BandSize {
    double length = 0;     ///< In the direction in which the band is read.
    double thickness = 0;  ///< From band to band.
};
BandSize band_size(const geometry::Size& size, Direction direction);

/// On what the pieces of a band lie: the edge toward the band before, their middles, or the edge
/// toward the next band.
enum class BandEdge { before, middle, after };

struct Banding {
    Direction direction = Direction::across_the_wall;
    RowLine by_each_other = RowLine::centre;  ///< Bands of unlike lengths; as in Plan.
    std::vector<BandEdge> edges;              ///< One a band.
};

/// Columns beside each other that go up with the task's stair at its pitch, with their low ends,
/// middles or high ends on the line of it to the nearest mm. `edges` as in Banding. The block's
/// lower left corner is at the origin.
Layout lay_out_climbing(const Task& task, std::span<const std::vector<std::uint32_t>> columns,
                        RowLine line, std::span<const BandEdge> edges);

/// Bands as near to each other as the gap allows; the block's lower left corner is at the origin.
Layout lay_out_bands(const Task& task, std::span<const std::vector<std::uint32_t>> bands,
                     const Banding& banding);

/// The same plans, on a stair each climbing with it too; those come first.
std::vector<Plan> climbing_first(const Task& task, std::vector<Plan> plans);

/// Bands about level gaps: the first stands on the gap line, the last hangs from it, and between
/// them those that hang and those that stand take turns.
std::vector<BandEdge> edges_about_gaps(std::size_t bands);

}  // namespace wallwright::arrange
