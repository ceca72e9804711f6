// The free group: pieces set against each other at the gap, taken off again a few at a time and set
// anew, for as long as it gets better.
#pragma once

#include "arrange/view.h"
#include "base/random.h"

#include <cstdint>

namespace wallwright::arrange {

/// One walk of the search (ruin and recreate: Schrimpf, Schneider, Stamm-Wilbrandt, Dueck, Record
/// breaking optimization results using the ruin and recreate principle, Journal of Computational
/// Physics 159, 2000), from a layout that is allowed. The same seed gives the same walk.
class Salon {
  public:
    /// From a first layout of this seed's own.
    Salon(const Task& task, std::uint64_t seed);
    Salon(const Task& task, std::uint64_t seed, Layout start);

    /// So many tries to better it.
    void run(std::uint64_t tries);

    [[nodiscard]] const Layout& best() const { return best_; }
    [[nodiscard]] double total() const { return best_total_; }  ///< The score's total.
    /// How many free pieces found no place in the best.
    [[nodiscard]] std::size_t left_out() const;

  private:
    const Task* task_;
    Random random_;
    View view_;
    Layout now_;
    double now_total_ = 0;
    Layout best_;
    double best_total_ = 0;
};

}  // namespace wallwright::arrange
