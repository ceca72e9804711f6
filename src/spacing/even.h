// The front door of spacing: rough positions in, an even group out, and what could not be made
// even.
#pragma once

#include "spacing/facing.h"

#include <cstdint>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace wallwright::spacing {

/// A rectangle that pieces must keep out of (furniture, a door, what lies beyond the wall's edge),
/// grown by its own clearance already.
struct Obstacle {
    std::string name;  ///< For reports: "sofa".
    WallRect place;
};

/// How long to go on improving and proving, in looks at a piece: counted instead of timed, so that
/// the same wall gives the same answer on every machine. A million take about 50 ms on a desktop
/// computer.
inline constexpr std::uint64_t kUsualEffort = 1'000'000;

struct EvenOptions {
    double gap = 60;  ///< mm between facing neighbours.
    double align_within =
        15;  ///< mm; edges and centre lines of neighbours nearer than this are made to line up.
    double reach = 120;  ///< mm, `gap` or more; facing neighbours farther apart than this are not
                         ///< pulled together.
    std::uint64_t effort = kUsualEffort;  ///< 0 gives the first good answer.
};

/// A gap that is not the wanted one in the result, or two pieces whose corners are nearer than
/// that.
struct UnevenGap {
    Gap gap;                           ///< As it came out.
    std::vector<std::string> because;  ///< What stands in the way, as phrases: "kelp stays where it
                                       ///< is", "sofa", "the gap between kelp and dune".
};

/// Neighbours that nearly line up in the result but do not.
struct Unaligned {
    wall::PieceId first;
    wall::PieceId second;
    std::string lines;                 ///< "top edges", "left edges", "centre lines".
    double off = 0;                    ///< mm by which the second's are farther right or up.
    std::vector<std::string> because;  ///< As for gaps.
};

struct EvenResult {
    std::vector<wall::Placed> pieces;  ///< In the order given.
    std::vector<UnevenGap> uneven;
    std::vector<Unaligned> unaligned;
    std::vector<std::pair<wall::PieceId, std::string>>
        blocked;                ///< Pieces that still overlap something, and what.
    double moved_squared = 0;   ///< mm2, the sum over pieces of the squared distance moved.
    bool least_proved = false;  ///< No arrangement with these alignments and gaps moves less.
};

/// Moves the pieces that are not fixed as little as it can (sum of squared distances) until none
/// overlaps another or an obstacle, facing neighbours are `gap` apart and nearly aligned edges and
/// centre lines line up. Where that contradicts itself, keeping clear comes before gaps and gaps
/// before alignments; gaps that cannot be as wanted share the room evenly. Pieces between fixed
/// ones that leave too little room stay there with narrower gaps. Groups farther apart than `reach`
/// stay apart. What is even already is not moved.
EvenResult even(std::span<const wall::Placed> pieces, std::span<const Obstacle> obstacles,
                const EvenOptions& options);

/// Only takes overlaps away: the pieces end at least `gap` mm apart along one axis or the other,
/// moved as little as can be found with the effort (sum of squared distances). `least_proved` when
/// branch and bound closed the search.
EvenResult part(std::span<const wall::Placed> pieces, double gap,
                std::uint64_t effort = kUsualEffort);

}  // namespace wallwright::spacing
