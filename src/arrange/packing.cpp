#include "arrange/packing.h"

#include "arrange/b_star_tree.h"
#include "arrange/push_together.h"

#include <limits>

namespace wallwright::arrange {

namespace {

// Of the mean worsening of a random change: where the cooling starts, and ends for so many blocks.
// Found by trial on the public sets and random ones: with few blocks a small step is a large share
// of all, and a cold search only waits.
constexpr double kHot = 0.3;
double cold(std::size_t blocks) {
    return std::min(0.1, 2 / static_cast<double>(blocks * blocks));
}

constexpr std::uint64_t kCoolEvery = 64;  // moves
constexpr std::uint64_t kWalk = 10;       // changes a block, to learn how much one worsens

double mean_worsening(BStarTree& tree, const PackingGoal& goal, std::uint64_t changes,
                      Random& random) {
    constexpr double kNoLimit = std::numeric_limits<double>::infinity();
    double sum = 0;
    std::uint64_t count = 0;
    double now = tree.pack(goal, kNoLimit);
    for (std::uint64_t i = 0; i < changes; ++i) {
        tree.change(random);
        const double next = tree.pack(goal, kNoLimit);
        if (next > now) {
            sum += next - now;
            ++count;
        }
        now = next;
    }
    return count > 0 ? sum / static_cast<double>(count) : 0;
}

Packing anneal(std::span<const Block> blocks, const PackingGoal& goal, std::uint64_t moves,
               Random& random) {
    BStarTree tree(blocks, random);
    const std::uint64_t walk = std::min(moves / 10, kWalk * blocks.size());
    double heat = kHot * mean_worsening(tree, goal, walk, random);
    const double cooling =
        std::pow(cold(blocks.size()) / kHot,
                 static_cast<double>(kCoolEvery) / static_cast<double>(moves - walk + 1));
    double now = tree.pack(goal, std::numeric_limits<double>::infinity());
    BStarTree best = tree;
    double least = now;
    for (std::uint64_t i = walk; i < moves; ++i) {
        if (i % kCoolEvery == 0)
            heat *= cooling;
        tree.change(random);
        // Drawn before packing, so that packing can stop once it is clear that this is too much.
        const double limit = now - heat * std::log(1 - random.uniform());
        const double cost = tree.pack(goal, limit);
        if (cost > limit) {
            tree.take_back();
            continue;
        }
        now = cost;
        if (now < least) {
            least = now;
            best = tree;
        }
    }
    return push_together(blocks, goal, best.packing(goal));
}

}  // namespace

Packing pack(std::span<const Block> blocks, const PackingGoal& goal, std::uint64_t moves,
             Random& random) {
    if (blocks.empty())
        return {{}, {}, {}, cost_of(goal, {})};
    return anneal(blocks, goal, moves, random);
}

}  // namespace wallwright::arrange
