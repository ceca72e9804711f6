#include "arrange/pack_until.h"

#include <atomic>
#include <cmath>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>
#include <vector>

namespace wallwright::tests {

using namespace arrange;

namespace {

// Moves a block of the first run, how much longer each is than the one before, and at most, for the
// square of the number of blocks. Few blocks gain more from another start, many from a slower
// cooling.
constexpr double kShortest = 400;
constexpr double kGrowth = 1.5;
constexpr double kLongest = 4000;

using GoOn = std::function<bool()>;

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
            keep(pack(blocks_, goal_, moves_of(run), random), run);
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

Packing pack_until(std::span<const Block> blocks, const PackingGoal& goal, std::uint64_t seed,
                   unsigned threads, const GoOn& go_on) {
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

Packing best_of_runs(int runs, std::span<const Block> blocks, const PackingGoal& goal,
                     std::uint64_t seed) {
    return pack_until(blocks, goal, seed, 1, [runs]() mutable { return --runs > 0; });
}

}  // namespace wallwright::tests
