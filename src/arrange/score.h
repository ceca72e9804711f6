// How good a layout is, and why.
#pragma once

#include "arrange/measure.h"

#include <vector>

namespace wallwright::arrange {

/// Of one measure, in the order of all_measures().
struct Part {
    const Measure* measure = nullptr;
    double value = 0;     ///< 0 to 1.
    double weight = 0;    ///< The person's.
    bool applies = true;  ///< False when there is nothing to judge: then it does not count.
};

struct Score {
    double total = 0;  ///< 0 to 100: the weighted mean of the values that apply, times 100.
    std::vector<Part> parts;
};

/// With the weights of the view's task, one a measure; where all are 0 the total is 0.
Score score_of(const View& view);
/// Only the total, without a memory of why. The same number.
double total_of(const View& view);
/// Of the same values under other weights, one a measure.
double total_with(const Score& score, std::span<const double> weights);

}  // namespace wallwright::arrange
