#include "spacing/prove.h"

#include <algorithm>

namespace wallwright::spacing {

namespace {

constexpr double kBetterBy = 1e-9;    // of the cost; less is rounding
constexpr std::size_t kExamined = 4;  // conflicts among which the one to branch on is chosen

/// Branching where even the cheapest side costs most closes the search soonest.
bool is_dearer(const Choices& a, const Choices& b) {
    return a.sides[0].cost != b.sides[0].cost ? a.sides[0].cost > b.sides[0].cost
                                              : a.sides[1].cost > b.sides[1].cost;
}

class SideSearch {
  public:
    SideSearch(Layout& layout, double cost_limit, std::uint64_t work)
        : layout_(layout), work_limit_(layout.work() + work) {
        best_.cost = cost_limit;
    }

    Proof run() {
        best_.complete = explore(1);
        return std::move(best_);
    }

  private:
    /// True when all ways on from here have been looked at.
    bool explore(double share) {
        const Layout::Mark before = layout_.mark();
        const std::size_t chosen_before = chosen_.size();
        bool complete = true;
        if (const std::optional<Choices> branch = go_to_branch()) {
            for (std::size_t i = 0; i < branch->count && complete; ++i) {
                complete = explore_side(branch->pair, branch->sides[i],
                                        share / static_cast<double>(branch->count));
            }
        } else if (!is_spent()) {
            best_.share += share;
        }
        layout_.undo(before);
        chosen_.resize(chosen_before);
        return complete && !is_spent();
    }

    bool explore_side(Pair pair, const Trial& trial, double share) {
        if (trial.cost >= limit()) {
            best_.share += share;
            return true;  // since it was tried a better layout has been found
        }
        const Layout::Mark before = layout_.mark();
        bool complete = true;
        if (choose(pair, trial.side)) {
            complete = explore(share);
            chosen_.pop_back();
        }
        layout_.undo(before);
        return complete;
    }

    /// Parts pairs as long as there is only one way to; empty at the end of this branch of the
    /// search.
    std::optional<Choices> go_to_branch() {
        while (!is_spent()) {
            layout_.find_conflicts(conflicts_);
            if (conflicts_.empty()) {
                note_layout();
                return std::nullopt;
            }
            const Choices branch = best_branch();
            if (branch.count > 1) {
                return branch;
            }
            if (branch.count == 0 || !choose(branch.pair, branch.sides[0].side)) {
                return std::nullopt;
            }
        }
        return std::nullopt;
    }

    /// Of the deepest conflicts the one to branch on; the first with fewer than two sides left
    /// needs no branching.
    Choices best_branch() {
        keep_deepest(conflicts_, kExamined);
        Choices best;
        for (std::size_t i = 0; i < conflicts_.size(); ++i) {
            const Choices branch = try_sides(layout_, conflicts_[i].pair, limit());
            if (branch.count < 2) {
                return branch;
            }
            if (i == 0 || is_dearer(branch, best)) {
                best = branch;
            }
        }
        return best;
    }

    bool choose(Pair pair, Side side) {
        if (!layout_.part(pair, side, limit())) {
            return false;
        }
        chosen_.push_back({pair, side});
        return true;
    }

    void note_layout() {
        if (layout_.cost() < limit()) {
            best_.better = true;
            best_.cost = layout_.cost();
            best_.partings = chosen_;
        }
    }

    [[nodiscard]] double limit() const { return best_.cost * (1 - kBetterBy); }
    [[nodiscard]] bool is_spent() const { return layout_.work() >= work_limit_; }

    Layout& layout_;
    std::uint64_t work_limit_;
    std::vector<Parting> chosen_;
    std::vector<Conflict> conflicts_;
    Proof best_;
};

}  // namespace

Proof search_sides(Layout& layout, double cost_limit, std::uint64_t work) {
    return SideSearch(layout, cost_limit, work).run();
}

}  // namespace wallwright::spacing
