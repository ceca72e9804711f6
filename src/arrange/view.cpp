#include "arrange/view.h"

#include "base/contract.h"

#include <algorithm>
#include <numeric>

namespace wallwright::arrange {

namespace {

/// Sets of indices that grow together.
class Union {
  public:
    explicit Union(std::size_t count) : parent_(count) {
        std::iota(parent_.begin(), parent_.end(), std::size_t{0});
    }
    std::size_t root(std::size_t one) {
        while (parent_[one] != one)
            one = parent_[one] = parent_[parent_[one]];
        return one;
    }
    void join(std::size_t a, std::size_t b) { parent_[root(a)] = root(b); }

  private:
    std::vector<std::size_t> parent_;
};

std::vector<spacing::Facing> between_kept(std::span<const spacing::Facing> pairs,
                                          std::span<const std::size_t> new_index) {
    std::vector<spacing::Facing> kept;
    for (spacing::Facing pair : pairs) {
        pair.first = new_index[pair.first];
        pair.second = new_index[pair.second];
        if (pair.first != SIZE_MAX && pair.second != SIZE_MAX)
            kept.push_back(pair);
    }
    return kept;
}

}  // namespace

View::View(const Task& task)
    : task_(&task), any_fixed_(std::ranges::any_of(task.items, [](const Item& item) {
          return item.fixed.has_value();
      })) {
    for (const Item& item : task.items) {
        frames_.push_back(lab_of(item.frame));
        pictures_.push_back(lab_of(item.picture));
    }
}

void View::look(std::span<const Spot> layout) {
    WW_EXPECT(!layout.empty(), "a view needs a piece to look at");
    spots_.assign(layout.begin(), layout.end());
    places_.clear();
    for (const Spot& spot : spots_)
        places_.push_back(spot.place);
    find_pairs();
    keep_active_groups();
    sum_up();
}

void View::find_pairs() {
    facing_ = spacing::facing_pairs(places_, std::max(task_->reach, kSight * task_->gap));
    const auto beyond =
        std::stable_partition(facing_.begin(), facing_.end(),
                              [reach = task_->reach + geometry::kLengthEps](
                                  const spacing::Facing& pair) { return pair.size <= reach; });
    across_.assign(beyond, facing_.end());
    facing_.erase(beyond, facing_.end());
    if (!task_->floor.is_level())
        add_climbing_pairs();
    corners_ = spacing::corner_pairs(places_, task_->gap - geometry::kLengthEps);
}

/// On a stair two pieces side by side may be too low to face each other as they climb; one who
/// walks by sees neighbours all the same.
void View::add_climbing_pairs() {
    std::vector<WallRect> from_floor;
    for (const WallRect& place : places_)
        from_floor.push_back(geometry::above(task_->floor, place));
    const std::size_t seen = facing_.size();
    for (const spacing::Facing& pair : spacing::facing_pairs(from_floor, task_->reach)) {
        const auto is_same = [&pair](const spacing::Facing& other) {
            return other.first == pair.first && other.second == pair.second;
        };
        if (pair.axis == spacing::Axis::horizontal &&
            std::none_of(facing_.begin(), facing_.begin() + static_cast<std::ptrdiff_t>(seen),
                         is_same))
            facing_.push_back(pair);
    }
}

void View::keep_active_groups() {
    Union sets(spots_.size());
    for (const spacing::Facing& pair : facing_)
        sets.join(pair.first, pair.second);
    std::vector<bool> has_free(spots_.size(), false);
    bool all = true;
    groups_ = 0;
    for (std::size_t i = 0; i < spots_.size(); ++i)
        if (!item(i).fixed)
            has_free[sets.root(i)] = true;
    for (std::size_t i = 0; i < spots_.size(); ++i) {
        groups_ += sets.root(i) == i && has_free[i] ? 1U : 0U;
        all = all && has_free[sets.root(i)];
    }
    if (all)
        return;
    if (groups_ == 0) {
        for (std::size_t i = 0; i < spots_.size(); ++i)
            groups_ += sets.root(i) == i ? 1U : 0U;
        return;
    }
    std::vector<std::size_t> new_index(spots_.size(), SIZE_MAX);
    std::size_t kept = 0;
    for (std::size_t i = 0; i < new_index.size(); ++i) {
        if (!has_free[sets.root(i)])
            continue;
        new_index[i] = kept;
        spots_[kept++] = spots_[i];
    }
    spots_.resize(kept);
    facing_ = between_kept(facing_, new_index);
    across_ = between_kept(across_, new_index);
    corners_ = between_kept(corners_, new_index);
}

void View::sum_up() {
    bounds_ = spots_.front().place;
    bounds_from_floor_ = geometry::above(task_->floor, bounds_);
    from_floor_.clear();
    area_ = 0;
    mass_ = {0, 0};
    for (const Spot& spot : spots_) {
        const double area = spot.place.size().area();
        bounds_ = geometry::hull(bounds_, spot.place);
        from_floor_.push_back(geometry::above(task_->floor, spot.place));
        bounds_from_floor_ = geometry::hull(bounds_from_floor_, from_floor_.back());
        area_ += area;
        mass_.x += area * spot.place.centre().x;
        mass_.y += area * spot.place.centre().y;
    }
    mass_ = {mass_.x / area_, mass_.y / area_};
    beneath_ = beneath_group(*task_, bounds_);
    if (beneath_ == nullptr && !any_fixed_ && task_->beneath)
        beneath_ = &*task_->beneath;
}

}  // namespace wallwright::arrange
