// One thread's share of the search.
#pragma once

#include "arrange/elite.h"
#include "arrange/salon.h"

#include <optional>
#include <vector>

namespace wallwright::arrange {

/// What it finds after so many rounds depends on the seed alone.
class Stream {
  public:
    /// `plans` are the first ones, the same for all streams.
    Stream(const Task& task, const std::vector<Plan>& plans, std::optional<Pattern> only,
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
    bool try_plan(Walk& walk, const Plan& plan);
    bool walk_plans();
    bool run_salons();
    void restart(Walk& walk);

    const Task* task_;
    Random random_;
    View view_;
    std::vector<Walk> walks_;
    std::vector<Salon> salons_;
    Elite elite_;
};

/// The plan laid out, settled on the wall and judged; nothing when there is no room for it.
std::optional<Found> found_of(View& view, const Plan& plan);

}  // namespace wallwright::arrange
