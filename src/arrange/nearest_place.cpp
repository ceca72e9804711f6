#include "arrange/nearest_place.h"

#include <algorithm>
#include <limits>
#include <queue>
#include <span>
#include <vector>

namespace wallwright::arrange {

namespace {

constexpr double kFar = std::numeric_limits<double>::infinity();
constexpr double kOffAZone = 1e-3;          // mm; a zone's edge belongs to it
constexpr std::size_t kLooksMost = 400000;  // at an obstacle; some milliseconds

/// Moves, as points: all from `min` to `max`.
using Moves = WallRect;

/// The moves by which `piece` comes over `obstacle`.
Moves moves_onto(const WallRect& piece, const WallRect& obstacle) {
    return {{obstacle.min.x - piece.max.x, obstacle.min.y - piece.max.y},
            {obstacle.max.x - piece.min.x, obstacle.max.y - piece.min.y}};
}

/// The moves that keep every piece between the wall's ends and between floor and ceiling.
Moves moves_on_the_wall(const Task& task, const Layout& block) {
    Moves moves{{-kFar, -kFar}, {kFar, kFar}};
    for (const Spot& spot : block) {
        const WallRect& place = spot.place;
        moves.min = {std::max(moves.min.x, task.wall.min.x - place.min.x),
                     std::max(moves.min.y, task.wall.min.y - place.min.y)};
        moves.max = {std::min(moves.max.x, task.wall.max.x - place.max.x),
                     std::min(moves.max.y, task.wall.max.y - place.max.y)};
    }
    return moves;
}

bool is_empty(const Moves& moves) {
    return moves.min.x > moves.max.x || moves.min.y > moves.max.y;
}

/// Of one piece, all moves that it must not make.
void add_forbidden(const Task& task, const Spot& spot, const Layout& fixed,
                   std::vector<Moves>& out) {
    const Item& item = task.items[spot.item];
    for (const WallRect& obstacle : task.keep_out)
        out.push_back(moves_onto(spot.place, obstacle));
    for (const Spot& other : fixed)
        out.push_back(moves_onto(spot.place, other.place.grown(task.gap)));
    for (const WallRect& pierced : item.pierces)
        for (const WallRect& zone : task.zones)
            out.push_back(moves_onto(pierced.moved({spot.place.min.x, spot.place.min.y}),
                                     zone.grown(kOffAZone)));
    for (const geometry::Span& span : item.not_over)
        out.push_back({{span.low - spot.place.max.x, -kFar}, {span.high - spot.place.min.x, kFar}});
}

std::vector<Moves> forbidden_moves(const Task& task, const Layout& block, const Moves& possible) {
    const Layout fixed = fixed_part(task);
    std::vector<Moves> forbidden;
    for (const Spot& spot : block)
        add_forbidden(task, spot, fixed, forbidden);
    // Overlap by less than rounding is none, and a single possible move still is one.
    std::erase_if(forbidden, [&possible](const Moves& moves) {
        return geometry::overlap_x(moves, possible) < -geometry::kLengthEps ||
               geometry::overlap_y(moves, possible) < -geometry::kLengthEps;
    });
    return forbidden;
}

/// How far inside the forbidden moves this one is; 0 or less when it is not among them.
double depth(const Moves& forbidden, WallVec move) {
    return std::min({move.x - forbidden.min.x, forbidden.max.x - move.x, move.y - forbidden.min.y,
                     forbidden.max.y - move.y});
}

const Moves* deepest(std::span<const Moves> forbidden, WallVec move) {
    const Moves* found = nullptr;
    double most = geometry::kLengthEps;
    for (const Moves& moves : forbidden)
        if (const double inside = depth(moves, move); inside > most) {
            most = inside;
            found = &moves;
        }
    return found;
}

/// Moves that are still possible, and the shortest of them.
struct Choice {
    Moves left;
    WallVec shortest;
    double length_squared = 0;
};

Choice choice_of(const Moves& left) {
    const WallVec shortest{std::clamp(0.0, left.min.x, left.max.x),
                           std::clamp(0.0, left.min.y, left.max.y)};
    return {left, shortest, shortest.x * shortest.x + shortest.y * shortest.y};
}

struct Longer {
    bool operator()(const Choice& a, const Choice& b) const {
        return a.length_squared > b.length_squared;
    }
};

class Search {
  public:
    explicit Search(std::span<const Moves> forbidden) : forbidden_(forbidden) {}

    std::optional<WallVec> run(const Moves& possible) {
        add(possible);
        for (std::size_t looks = 0; !open_.empty() && looks < kLooksMost;
             looks += forbidden_.size()) {
            const Choice choice = open_.top();
            open_.pop();
            const Moves* blocking = deepest(forbidden_, choice.shortest);
            if (blocking == nullptr)
                return choice.shortest;
            pass(choice.left, *blocking);
        }
        return std::nullopt;
    }

  private:
    void add(const Moves& left) {
        if (!is_empty(left))
            open_.push(choice_of(left));
    }

    /// To the left of it, to its right, below or above.
    void pass(const Moves& left, const Moves& blocking) {
        add({left.min, {std::min(left.max.x, blocking.min.x), left.max.y}});
        add({{std::max(left.min.x, blocking.max.x), left.min.y}, left.max});
        add({left.min, {left.max.x, std::min(left.max.y, blocking.min.y)}});
        add({{left.min.x, std::max(left.min.y, blocking.max.y)}, left.max});
    }

    std::span<const Moves> forbidden_;
    std::priority_queue<Choice, std::vector<Choice>, Longer> open_;
};

}  // namespace

std::optional<WallVec> shortest_clearing_move(const Task& task, const Layout& block) {
    const Moves possible = moves_on_the_wall(task, block);
    if (is_empty(possible))
        return std::nullopt;
    const std::vector<Moves> forbidden = forbidden_moves(task, block, possible);
    return Search(forbidden).run(possible);
}

}  // namespace wallwright::arrange
