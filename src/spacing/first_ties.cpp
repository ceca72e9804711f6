#include "spacing/first_ties.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <tuple>

namespace wallwright::spacing {

namespace {

constexpr double kShortfallEps = 1e-9;  // mm
constexpr int kMostPasses = 8;          // what is still broken then is left to the exact solver

class Merger {
  public:
    Merger(std::span<const Variable> variables, std::span<const Separation> separations)
        : separations_(separations),
          block_of_(variables.size()),
          offset_(variables.size(), 0),
          blocks_(variables.size()) {
        std::iota(block_of_.begin(), block_of_.end(), std::uint32_t{0});
        for (std::uint32_t i = 0; i < variables.size(); ++i) {
            const Variable& variable = variables[i];
            const bool held = std::isinf(variable.weight);
            blocks_[i] = {{i},
                          held ? 0 : variable.weight,
                          held ? 0 : variable.weight * variable.wanted,
                          variable.wanted,
                          held};
        }
    }

    /// True when anything was merged.
    bool pass(std::span<const std::uint32_t> order) {
        const std::size_t before = ties_.size();
        for (const std::uint32_t i : order) {
            const Separation& s = separations_[i];
            const double missing = at(s.left) + s.gap - at(s.right);
            const bool broken = missing > kShortfallEps || (s.equality && missing < -kShortfallEps);
            if (broken && block_of_[s.left] != block_of_[s.right]) {
                merge(i);
            }
        }
        return ties_.size() > before;
    }

    std::vector<std::uint32_t> take_ties() { return std::move(ties_); }

  private:
    struct Block {
        std::vector<std::uint32_t> variables;
        double weight = 0;
        double moment = 0;  ///< Sum of weight * (wanted - offset): divided by the weight, where the
                            ///< block balances.
        double at = 0;
        bool held = false;
    };

    [[nodiscard]] double at(std::size_t variable) const {
        return blocks_[block_of_[variable]].at + offset_[variable];
    }

    void merge(std::uint32_t separation) {
        const Separation& s = separations_[separation];
        std::uint32_t into = block_of_[s.left];
        std::uint32_t from = block_of_[s.right];
        double shift = offset_[s.left] + s.gap - offset_[s.right];  // of the offsets in `from`
        if (blocks_[into].variables.size() < blocks_[from].variables.size()) {
            std::swap(into, from);
            shift = -shift;
        }
        Block& a = blocks_[into];
        Block& b = blocks_[from];
        for (const std::uint32_t variable : b.variables) {
            block_of_[variable] = into;
            offset_[variable] += shift;
        }
        a.variables.insert(a.variables.end(), b.variables.begin(), b.variables.end());
        a.weight += b.weight;
        a.moment += b.moment - b.weight * shift;
        if (b.held) {
            a.at = b.at - shift;
        } else if (!a.held) {
            a.at = a.moment / a.weight;
        }
        a.held = a.held || b.held;
        ties_.push_back(separation);
    }

    std::span<const Separation> separations_;
    std::vector<std::uint32_t> block_of_;
    std::vector<double> offset_;
    std::vector<Block> blocks_;
    std::vector<std::uint32_t> ties_;
};

/// By where the right end would like to be; of those that share it, the leftmost wish that matters
/// last first.
std::vector<std::uint32_t> from_left_to_right(std::span<const Variable> variables,
                                              std::span<const Separation> separations) {
    std::vector<std::uint32_t> order(separations.size());
    std::iota(order.begin(), order.end(), std::uint32_t{0});
    std::ranges::sort(order, {}, [&](std::uint32_t i) {
        const Separation& s = separations[i];
        return std::tuple(variables[s.right].wanted, -variables[s.left].wanted - s.gap, i);
    });
    return order;
}

}  // namespace

std::vector<std::uint32_t> first_ties(std::span<const Variable> variables,
                                      std::span<const Separation> separations) {
    const std::vector<std::uint32_t> order = from_left_to_right(variables, separations);
    Merger merger(variables, separations);
    for (int pass = 0; pass < kMostPasses && merger.pass(order); ++pass) {
    }
    return merger.take_ties();
}

}  // namespace wallwright::spacing
