#include "arrange/packing.h"

#include "arrange/b_star_tree.h"
#include "arrange/push_together.h"
#include "base/contract.h"

#include <atomic>
#include <limits>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>

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

// Runs of pack_until: moves a block of the first, how much longer each is than the one before, and
// at most, for the square of the number of blocks. Few blocks gain more from another start, many
// from a slower cooling.
constexpr double kShortest = 400;
constexpr double kGrowth = 1.5;
constexpr double kLongest = 4000;
constexpr std::uint64_t kBlocksBetweenQuestions = 50000;  // A few milliseconds.

using GoOn = std::function<bool()>;

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
               Random& random, const GoOn& go_on) {
    BStarTree tree(blocks, random);
    const std::uint64_t walk = std::min(moves / 10, kWalk * blocks.size());
    double heat = kHot * mean_worsening(tree, goal, walk, random);
    const double cooling =
        std::pow(cold(blocks.size()) / kHot,
                 static_cast<double>(kCoolEvery) / static_cast<double>(moves - walk + 1));
    const std::uint64_t ask_every = std::max<std::uint64_t>(
        kBlocksBetweenQuestions / blocks.size() / kCoolEvery * kCoolEvery, kCoolEvery);
    double now = tree.pack(goal, std::numeric_limits<double>::infinity());
    BStarTree best = tree;
    double least = now;
    for (std::uint64_t i = walk; i < moves; ++i) {
        if (i % ask_every == 0 && !go_on())
            break;
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

Packing nothing(const PackingGoal& goal) {
    return {{}, {}, {}, cost_of(goal, {})};
}

/// The list of runs of one seed, and the best of those done; for several threads.
class Runs {
  public:
    Runs(std::span<const Block> blocks, const PackingGoal& goal, std::uint64_t seed)
        : blocks_(blocks), goal_(goal), seed_(seed) {}

    void work(const GoOn& go_on) {
        do {
            const std::uint64_t run = next_++;
            Random streams(seed_ + run);
            Random random(streams.next());
            keep(anneal(blocks_, goal_, moves_of(run), random, go_on), run);
        } while (go_on());
    }

    [[nodiscard]] Packing best() const { return *best_; }

  private:
    [[nodiscard]] std::uint64_t moves_of(std::uint64_t run) const {
        const auto count = static_cast<double>(blocks_.size());
        const double grown = kShortest * count * std::pow(kGrowth, static_cast<double>(run));
        return static_cast<std::uint64_t>(std::min(grown, kLongest * count * count));
    }

    // Of equals the earlier run's, so that it does not matter which thread was first.
    void keep(Packing packing, std::uint64_t run) {
        const std::scoped_lock lock(mutex_);
        if (best_ && (packing.cost > best_->cost || (packing.cost == best_->cost && run > run_)))
            return;
        best_ = std::move(packing);
        run_ = run;
    }

    std::span<const Block> blocks_;
    PackingGoal goal_;
    std::uint64_t seed_;
    std::atomic<std::uint64_t> next_ = 0;
    std::mutex mutex_;
    std::optional<Packing> best_;
    std::uint64_t run_ = 0;  ///< That gave the best.
};

}  // namespace

Packing pack(std::span<const Block> blocks, const PackingGoal& goal, std::uint64_t moves,
             Random& random) {
    if (blocks.empty())
        return nothing(goal);
    return anneal(blocks, goal, moves, random, [] { return true; });
}

std::vector<Packing> pack_several(std::span<const Block> blocks, const PackingGoal& goal,
                                  std::size_t runs, std::uint64_t moves, Random& random) {
    std::vector<Packing> packings;
    for (std::size_t i = 0; i < runs; ++i) {
        Packing packing = pack(blocks, goal, moves, random);
        if (std::find(packings.begin(), packings.end(), packing) == packings.end())
            packings.push_back(std::move(packing));
    }
    std::stable_sort(packings.begin(), packings.end(),
                     [](const Packing& a, const Packing& b) { return a.cost < b.cost; });
    return packings;
}

Packing pack_until(std::span<const Block> blocks, const PackingGoal& goal, std::uint64_t seed,
                   unsigned threads, const std::function<bool()>& go_on) {
    WW_EXPECT(threads > 0, "packing needs a thread to run on");
    if (blocks.empty())
        return nothing(goal);
    Runs runs(blocks, goal, seed);
    std::vector<std::jthread> helpers;
    for (unsigned i = 1; i < threads; ++i) {
        helpers.emplace_back([&runs](const std::stop_token& stop) {
            runs.work([&stop] { return !stop.stop_requested(); });
        });
    }
    runs.work(go_on);
    helpers.clear();  // Asks each to stop and waits for it.
    return runs.best();
}

}  // namespace wallwright::arrange
