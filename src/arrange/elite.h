// The best layouts met so far, no two of them alike.
#pragma once

#include "arrange/arrange.h"

#include <vector>

namespace wallwright::arrange {

/// A layout and what it is worth, before anybody asks why.
struct Found {
    Pattern pattern = Pattern::row;
    Layout layout;  ///< With what stays.
    double total = 0;
    std::size_t left_out = 0;
};

/// More pieces placed come before a higher total.
bool is_better(const Found& a, const Found& b);

/// Keeps a few of each pattern.
class Elite {
  public:
    /// True when it is kept: better than those like it, and than the worst where there are many.
    bool offer(const Found& found);
    /// In no particular order.
    [[nodiscard]] const std::vector<Found>& found() const { return found_; }

  private:
    std::vector<Found> found_;
};

/// So many of them, clearly different, the best first.
std::vector<Found> choose_different(std::vector<Found> found, std::size_t count);

}  // namespace wallwright::arrange
