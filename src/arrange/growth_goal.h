// What a growth is for: a good wall at every stage, led to the target.
#pragma once

#include "arrange/task.h"

#include <optional>
#include <span>
#include <vector>

namespace wallwright::arrange {

/// Which group grows, and what a stage of its growth is worth.
class GrowthGoal {
  public:
    /// Some piece of the task stays. The group that grows is the one nearest to the target of those
    /// that have a third of the pieces of the largest.
    GrowthGoal(const Task& task, const WallRect& target);

    [[nodiscard]] const Layout& group() const { return group_; }
    [[nodiscard]] const Layout& others() const { return others_; }  ///< What stays elsewhere.
    [[nodiscard]] double today() const { return today_; }  ///< mm from the group to the target.
    /// mm from the place to the target.
    [[nodiscard]] double distance(const WallRect& place) const;

    /// Points of a stage with `added` pieces of `of` up, beside its total: for the way to the
    /// target that the group has gone, as far as it is to have come by then; for pieces that hang
    /// near the target; less for holes in the group and for pieces that brush against the target.
    [[nodiscard]] double points(std::span<const Spot> added, std::size_t of) const;
    /// What the piece that is the `number`th to go up would bring of it, roughly.
    [[nodiscard]] double glance(double to_target, const WallRect& place, std::size_t number) const;

  private:
    [[nodiscard]] double way_gone(double to_target) const;
    [[nodiscard]] double nearness(const WallRect& place) const;
    [[nodiscard]] double behind(const WallRect& place) const;
    [[nodiscard]] double crowding(const WallRect& place) const;
    [[nodiscard]] double amiss(const WallRect& place) const;

    WallRect target_;
    double gap_;
    std::vector<WallRect> keep_out_;
    std::vector<Beneath> furniture_;
    Layout group_;
    Layout others_;
    double today_ = 0;
    double spread_ = 0;  ///< mm; the longer side of the group.
};

/// Points of stages: half as the mean of all, half of the last, which is there to stay.
struct GrowthPoints {
    double sum = 0;
    double last = 0;
    std::size_t stages = 0;

    void add(double stage) {
        sum += stage;
        last = stage;
        ++stages;
    }
    [[nodiscard]] double value() const {
        return stages == 0 ? 0 : (sum / static_cast<double>(stages) + last) / 2;
    }
};

}  // namespace wallwright::arrange
