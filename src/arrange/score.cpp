#include "arrange/score.h"

#include "base/contract.h"

#include <algorithm>
#include <cmath>

namespace wallwright::arrange {

namespace {

/// One way of adding up for all three functions, so that their totals are the same number.
class WeightedMean {
  public:
    void add(double value, double weight) {
        sum_ += weight * value;
        weights_ += weight;
        WW_EXPECT(std::isfinite(sum_), "the value of a measure is a number");
    }
    [[nodiscard]] double total() const {
        return weights_ > 0 ? 100 * std::min(1.0, sum_ / weights_) : 0;
    }

  private:
    double sum_ = 0;
    double weights_ = 0;
};

void expect_one_a_measure(std::span<const double> weights) {
    WW_EXPECT(weights.size() == all_measures().size(), "every measure has a weight");
}

bool applies(const Task& task, std::size_t measure) {
    return task.applies.empty() || task.applies[measure];
}

}  // namespace

Score score_of(const View& view) {
    const std::span<const double> weights = view.task().weights;
    expect_one_a_measure(weights);
    Score score;
    for (const Measure& measure : all_measures()) {
        const std::size_t index = score.parts.size();
        score.parts.push_back(
            {&measure, measure.value(view), weights[index], applies(view.task(), index)});
    }
    score.total = total_with(score, weights);
    return score;
}

double total_of(const View& view) {
    const std::span<const double> weights = view.task().weights;
    expect_one_a_measure(weights);
    const std::span<const Measure> measures = all_measures();
    WeightedMean mean;
    for (std::size_t i = 0; i < measures.size(); ++i)
        if (weights[i] > 0 && applies(view.task(), i))
            mean.add(measures[i].value(view), weights[i]);
    return mean.total();
}

double total_with(const Score& score, std::span<const double> weights) {
    expect_one_a_measure(weights);
    WeightedMean mean;
    for (std::size_t i = 0; i < score.parts.size(); ++i)
        if (score.parts[i].applies)
            mean.add(score.parts[i].value, weights[i]);
    return mean.total();
}

}  // namespace wallwright::arrange
