#include "mounts/nest/nest.h"

#include "base/contract.h"
#include "mounts/nest/bounds.h"
#include "mounts/nest/deck.h"
#include "mounts/nest/greedy.h"
#include "mounts/nest/lay_out.h"
#include "mounts/nest/rebuild.h"

#include <chrono>

namespace wallwright::mounts {

namespace {

using Clock = std::chrono::steady_clock;

constexpr std::size_t kMostDecks = 6;     // tried side by side
constexpr double kShareForSheets = 0.85;  // of the time; what is left of it goes to the offcut

/// How much of what was allowed is used up.
class Budget {
  public:
    Budget(const NestOptions& options, const std::function<bool()>& go_on)
        : options_(options), go_on_(&go_on), start_(Clock::now()) {}

    /// Whether so many rounds without anything better are enough.
    [[nodiscard]] bool is_enough(std::uint64_t rounds) const {
        return options_.patience > 0 && rounds >= options_.patience;
    }

    /// True when one round more is within that share of it; counts the round.
    bool another(double share) {
        stopped_ = stopped_ || !(*go_on_)();
        const std::chrono::duration<double> gone = Clock::now() - start_;
        if (stopped_ || (options_.seconds > 0 && gone.count() >= share * options_.seconds))
            return false;
        if (options_.rounds > 0 &&
            static_cast<double>(rounds_) >= share * static_cast<double>(options_.rounds))
            return false;
        ++rounds_;
        return true;
    }

  private:
    NestOptions options_;
    const std::function<bool()>* go_on_;
    Clock::time_point start_;
    std::uint64_t rounds_ = 0;
    bool stopped_ = false;
};

/// True when a better choice of sheets was met and taken.
bool improve(const Stock& stock, Packing& best, std::size_t bound, Random& seeds, Budget& budget) {
    std::vector<Rebuild> tries;
    for (Packing& deck : better_decks(stock, best, bound, kMostDecks))
        tries.emplace_back(stock, std::move(deck), RebuildGoal::place_all, seeds.next());
    if (tries.empty())
        return false;
    for (std::size_t i = 0; !budget.is_enough(i / tries.size()) && budget.another(kShareForSheets);
         ++i) {
        Rebuild& rebuild = tries[i % tries.size()];
        rebuild.round();
        if (!is_better(stock, rebuild.best(), best))
            continue;
        best = rebuild.best();
        return true;
    }
    return false;
}

void enlarge_offcut(const Stock& stock, Packing& best, Random& seeds, Budget& budget) {
    Rebuild rebuild(stock, best, RebuildGoal::large_offcut, seeds.next());
    while (!budget.is_enough(rebuild.rounds_since_better()) && budget.another(1))
        rebuild.round();
    best = rebuild.best();
}

}  // namespace

NestPlan nest(const NestTask& task, const NestOptions& options,
              const std::function<bool()>& go_on) {
    WW_EXPECT(options.seconds > 0 || options.rounds > 0, "nesting ends some time");
    const Stock stock = stock_of(task);
    Budget budget(options, go_on);
    Random seeds(options.seed);
    const std::size_t bound = sheet_bound(stock);
    Packing best = best_greedy(stock);
    while (improve(stock, best, bound, seeds, budget)) {
    }
    if (!best.sheets.empty())
        enlarge_offcut(stock, best, seeds, budget);
    NestPlan plan = lay_out(task, stock, best);
    plan.bound = bound;
    plan.proved = plan.left_out.size() == stock.too_large.size() && plan.count == bound;
    return plan;
}

}  // namespace wallwright::mounts
