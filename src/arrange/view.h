// A layout looked at: what the measures ask about it, worked out once.
#pragma once

#include "arrange/task.h"
#include "wall/lab.h"

#include <span>
#include <vector>

namespace wallwright::arrange {

/// Gaps; pieces farther apart are not seen as having a hole between them.
inline constexpr double kSight = 10;

/// Only the groups that hold a free piece count, or all pieces where none is free: what hangs
/// elsewhere on the wall is no part of the question. Reused from layout to layout by the search.
class View {
  public:
    explicit View(const Task& task);
    View(const Task& task, std::span<const Spot> layout) : View(task) { look(layout); }

    void look(std::span<const Spot> layout);

    [[nodiscard]] const Task& task() const { return *task_; }
    [[nodiscard]] std::span<const Spot> spots() const { return spots_; }
    [[nodiscard]] std::size_t size() const { return spots_.size(); }
    [[nodiscard]] const WallRect& place(std::size_t i) const { return spots_[i].place; }
    [[nodiscard]] const Item& item(std::size_t i) const { return task_->items[spots_[i].item]; }
    /// The colours of item(i), ready to be compared.
    [[nodiscard]] const wall::Lab& frame_colour(std::size_t i) const {
        return frames_[spots_[i].item];
    }
    [[nodiscard]] const wall::Lab& picture_colour(std::size_t i) const {
        return pictures_[spots_[i].item];
    }
    /// True when pieces of the task stay where they are.
    [[nodiscard]] bool any_fixed() const { return any_fixed_; }
    /// Neighbours that face each other within the reach, as indices into spots(); on a stair also
    /// those that do so as seen from it.
    [[nodiscard]] std::span<const spacing::Facing> facing() const { return facing_; }
    /// Pieces that look at each other across more than the reach, up to kSight gaps.
    [[nodiscard]] std::span<const spacing::Facing> across() const { return across_; }
    /// Neighbours of which only corners look at each other, both ways nearer than the gap.
    [[nodiscard]] std::span<const spacing::Facing> corners() const { return corners_; }
    [[nodiscard]] const WallRect& bounds() const { return bounds_; }
    /// place(i) as geometry::above() the task's floor: what climbs with a stair is level here.
    [[nodiscard]] const WallRect& from_floor(std::size_t i) const { return from_floor_[i]; }
    /// Of all from_floor().
    [[nodiscard]] const WallRect& bounds_from_floor() const { return bounds_from_floor_; }
    /// As beneath_group(); where nothing stays and the group is beside all furniture, what it
    /// should hang above.
    [[nodiscard]] const Beneath* beneath() const { return beneath_; }
    [[nodiscard]] double area() const { return area_; }     ///< mm2 of all pieces.
    [[nodiscard]] WallPoint mass() const { return mass_; }  ///< Centre of their areas.
    /// How many groups the pieces make that hold a free one.
    [[nodiscard]] std::size_t groups() const { return groups_; }

  private:
    void find_pairs();
    void add_climbing_pairs();
    void keep_active_groups();
    void sum_up();

    const Task* task_;
    bool any_fixed_;
    std::vector<wall::Lab> frames_;  // by item
    std::vector<wall::Lab> pictures_;
    std::vector<Spot> spots_;
    std::vector<WallRect> places_;
    std::vector<spacing::Facing> facing_;
    std::vector<spacing::Facing> across_;
    std::vector<spacing::Facing> corners_;
    std::vector<WallRect> from_floor_;
    WallRect bounds_;
    WallRect bounds_from_floor_;
    const Beneath* beneath_ = nullptr;
    double area_ = 0;
    WallPoint mass_;
    std::size_t groups_ = 0;
};

}  // namespace wallwright::arrange
