// The free group: pieces set against each other at the gap, taken off again a few at a time and set
// anew, for as long as it gets better.
#pragma once

#include "arrange/set_down.h"

#include <cstdint>

namespace wallwright::arrange {

/// One walk of the search (ruin and recreate: Schrimpf, Schneider, Stamm-Wilbrandt, Dueck, Record
/// breaking optimization results using the ruin and recreate principle, Journal of Computational
/// Physics 159, 2000), which takes a worse layout now and then as annealing does, cooling in
/// cycles. The same seed gives the same walk.
class Salon {
  public:
    /// From a layout that is allowed, or else from a first one of this seed's own.
    Salon(const Task& task, std::uint64_t seed, Layout start = {});

    /// So many tries to better it.
    void run(std::uint64_t tries);

    [[nodiscard]] const Layout& best() const { return best_.layout; }
    /// The score's total of the best; 0 of an empty layout.
    [[nodiscard]] double total() const { return best_.total; }
    /// How many pieces found no place in the best.
    [[nodiscard]] std::size_t left_out() const { return best_.left_out; }

  private:
    struct State {
        Layout layout;
        double total = 0;
        std::size_t left_out = 0;
    };

    [[nodiscard]] State fresh();
    [[nodiscard]] State judged(Layout layout);
    void set_all_down(Layout& layout, std::vector<std::uint32_t>& items, double noise);
    [[nodiscard]] Layout neighbour();
    [[nodiscard]] Layout with_some_set_anew();
    [[nodiscard]] std::optional<Layout> with_two_swapped();
    [[nodiscard]] bool takes(const State& next);
    void begin_cycle();
    [[nodiscard]] double temperature() const;

    const Task* task_;
    Random random_;
    View view_;
    SetDown set_down_;
    std::vector<std::uint32_t> free_;
    bool any_fixed_ = false;
    State now_;
    State best_;
    std::uint64_t tries_ = 0;
};

}  // namespace wallwright::arrange
