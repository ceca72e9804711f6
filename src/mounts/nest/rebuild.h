// Ruin and recreate: pieces of some sheets are given back, and what was cut from them is cut anew.
#pragma once

#include "mounts/nest/spots.h"

namespace wallwright::mounts {

/// place_all: as few mm2 unplaced as can be. large_offcut: all stays placed, and the largest single
/// free piece becomes larger.
enum class RebuildGoal { place_all, large_offcut };

/// On the sheets of `start`. What it finds after so many rounds depends on start and seed alone.
class Rebuild {
  public:
    Rebuild(const Stock& stock, Packing start, RebuildGoal goal, std::uint64_t seed);

    /// Some hundred tries.
    void round();

    [[nodiscard]] const Packing& best() const { return best_; }
    [[nodiscard]] std::uint64_t rounds_since_better() const;
    /// Nothing more to do: all is placed, when that is the goal.
    [[nodiscard]] bool is_done() const {
        return goal_ == RebuildGoal::place_all && best_.unplaced.empty();
    }

  private:
    void step();
    void ruin();
    void recreate();
    void restart();
    void keep_copy(std::size_t sheet);
    void undo();
    [[nodiscard]] Rules any_rules();
    [[nodiscard]] int any_piece(const SheetTree& tree);
    [[nodiscard]] std::size_t any_sheet();
    [[nodiscard]] double cost() const;
    [[nodiscard]] double rank() const;

    const Stock* stock_;
    RebuildGoal goal_;
    Random random_;
    double unit_;  // mm2 of the largest sheet
    Packing now_;
    double now_cost_ = 0;
    Packing best_;
    double best_rank_ = 0;
    std::vector<double> history_;
    std::uint64_t steps_ = 0;
    std::uint64_t since_better_ = 0;
    // To take a step back.
    std::vector<SheetTree> copies_;
    std::vector<bool> is_copied_;
    std::vector<std::size_t> copied_;
    std::vector<int> unplaced_before_;
};

}  // namespace wallwright::mounts
