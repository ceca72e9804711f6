#include "arrange/growth_goal.h"

#include "arrange/standing.h"
#include "base/contract.h"

#include <algorithm>
#include <vector>

namespace wallwright::arrange {

namespace {

// Points beside the total's 100: our choices, by what the demo walls looked like.
constexpr double kWay = 35;   ///< From today to the target.
constexpr double kNear = 15;  ///< For pieces that hang at the target.
constexpr double kBack = 4;   ///< For a piece on the far side of the group.
constexpr double kCrowd = 4;  ///< For a piece against furniture or the wall's edge.
constexpr double kLow = 6;    ///< For a piece beside the furniture rather than above it.

std::size_t growing(const std::vector<Layout>& groups, const WallRect& target) {
    std::size_t most = 0;
    for (const Layout& group : groups)
        most = std::max(most, group.size());
    std::size_t chosen = groups.size();
    for (std::size_t i = 0; i < groups.size(); ++i)
        if (3 * groups[i].size() >= most &&
            (chosen == groups.size() ||
             distance_between(groups[i], target) < distance_between(groups[chosen], target)))
            chosen = i;
    return chosen;
}

}  // namespace

GrowthGoal::GrowthGoal(const Task& task, const WallRect& target)
    : target_(target), gap_(task.gap), keep_out_(task.keep_out), furniture_(task.furniture) {
    std::erase_if(keep_out_, [&](const WallRect& one) { return geometry::overlaps(one, target); });
    const std::vector<Layout> groups = standing_groups(task);
    WW_EXPECT(!groups.empty(), "a group grows from pieces that stay");
    const std::size_t chosen = growing(groups, target);
    for (std::size_t i = 0; i < groups.size(); ++i) {
        Layout& part = i == chosen ? group_ : others_;
        part.insert(part.end(), groups[i].begin(), groups[i].end());
    }
    const WallRect bounds = bounds_of(group_);
    today_ = distance_between(group_, target);
    spread_ = std::max(bounds.width(), bounds.height());
}

double GrowthGoal::distance(const WallRect& place) const {
    return distance_between(place, target_);
}

/// A group at the gap from the target is there.
double GrowthGoal::way_gone(double to_target) const {
    const double way = today_ - gap_;
    return way <= 0 ? 1 : 1 - std::max(0.0, to_target - gap_) / way;
}

double GrowthGoal::nearness(const WallRect& place) const {
    const double away = std::max(0.0, distance(place) - gap_);
    return 1 - std::min(1.0, away / (today_ + spread_));
}

/// Behind the middle of the group as seen from the target: 1 for half the group's length.
double GrowthGoal::behind(const WallRect& place) const {
    return std::max(0.0, (distance(place) - today_) / (spread_ / 2) - 1);
}

/// Nearer than twice the gap to what is no wall, the target aside: 1 where they touch.
double GrowthGoal::crowding(const WallRect& place) const {
    double least = 2 * gap_;
    for (const WallRect& one : keep_out_)
        least = std::min(least, distance_between(one, place));
    return 1 - least / (2 * gap_);
}

double GrowthGoal::amiss(const WallRect& place) const {
    return kCrowd * crowding(place) + kBack * behind(place) +
           kLow * sunk_below_furniture(furniture_, place);
}

double GrowthGoal::points(std::span<const Spot> added, std::size_t of) const {
    double to_target = today_;
    double near = 0;
    double faults = 0;
    for (const Spot& spot : added) {
        to_target = std::min(to_target, distance(spot.place));
        near += nearness(spot.place);
        faults += amiss(spot.place);
    }
    const double count = static_cast<double>(added.size());
    const double pace = count / static_cast<double>(of);
    return kWay * std::min(way_gone(to_target), pace) + kNear * near / count - faults;
}

double GrowthGoal::glance(double to_target, const WallRect& place, std::size_t number) const {
    const double after = std::min(to_target, distance(place));
    return kWay * (way_gone(after) - way_gone(to_target)) +
           kNear * nearness(place) / static_cast<double>(number) - amiss(place);
}

}  // namespace wallwright::arrange
