// One thread's share of the search.
#pragma once

#include "arrange/elite.h"
#include "arrange/salon.h"

#include <optional>
#include <vector>

namespace wallwright::arrange {

/// A plan and what came of it.
struct Tried {
    Plan plan;
    Found found;
};

/// What it finds after so many rounds depends on the seed alone.
class Stream {
  public:
    /// `first` is where its walks begin, the same for all streams.
    Stream(const Task& task, const std::vector<Tried>& first, std::optional<Pattern> only,
           std::uint64_t seed);

    /// A few milliseconds of work for a dozen pieces; true when something better was found.
    bool round();

    [[nodiscard]] const Elite& elite() const { return elite_; }

  private:
    /// A pattern's walk through its plans.
    struct Walk {
        Pattern pattern = Pattern::row;
        std::vector<Plan> first;
        Plan now;
        double total = 0;
        Plan best;
        double best_total = 0;
        std::uint64_t since_better = 0;
    };

    void open_salon(Layout start);
    bool offer_best_of(const Salon& salon);
    bool offer(const Found& found);
    bool try_plan(Walk& walk, const Plan& plan);
    bool take(Walk& walk, const Plan& plan, const Found& found);
    bool walk_plans();
    bool run_salons();
    void restart(Walk& walk);

    const Task* task_;
    Random random_;
    View view_;
    std::vector<Walk> walks_;
    std::vector<Salon> salons_;
    std::size_t free_ = 0;  // how many pieces
    Elite elite_;
    double evened_from_ = 0;  // the total from which on layouts are evened
};

/// The plan laid out, settled on the wall and judged; nothing when there is no room for it.
std::optional<Found> found_of(View& view, const Plan& plan);

}  // namespace wallwright::arrange
