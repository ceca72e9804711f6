#include "arrange/set_down.h"

#include "arrange/score.h"
#include "arrange/settle.h"
#include "arrange/spots.h"

#include <algorithm>
#include <cmath>

namespace wallwright::arrange {

namespace {

using geometry::kLengthEps;

// What counts how much in worth_of(): our choices, tuned by the totals that the search reached.
constexpr double kExactGap = 1.0;
constexpr double kGapOff = 1.0;
constexpr double kEdgeInLine = 0.6;
constexpr double kMiddleInLine = 0.4;
constexpr double kRoomTaken = 1.2;

/// So many of the best are then judged by the whole score.
constexpr std::size_t kShortList = 4;
/// Larger groups cost too much to judge whole.
constexpr std::size_t kWholeScoreUpTo = 40;

bool in_line(double a, double b) {
    return std::abs(a - b) < kLengthEps;
}

double lines_in_common(double low_a, double high_a, double low_b, double high_b) {
    double worth = 0;
    if (in_line(low_a, low_b))
        worth += kEdgeInLine;
    if (in_line(high_a, high_b))
        worth += kEdgeInLine;
    if (worth == 0 && in_line(low_a + high_a, low_b + high_b))
        worth += kMiddleInLine;
    return worth;
}

/// Of a neighbour that faces the place at this distance.
double gap_worth(double distance, double gap) {
    if (in_line(distance, gap))
        return kExactGap;
    return -kGapOff * (0.5 + std::min(1.0, std::abs(distance - gap) / gap));
}

double worth_beside(const Task& task, const WallRect& one, const WallRect& place) {
    const double x = geometry::overlap_x(one, place);
    const double y = geometry::overlap_y(one, place);
    if (y > kLengthEps && x > -task.reach - kLengthEps)
        return gap_worth(-x, task.gap) +
               lines_in_common(one.bottom(), one.top(), place.bottom(), place.top());
    if (x > kLengthEps && y > -task.reach - kLengthEps)
        return gap_worth(-y, task.gap) +
               lines_in_common(one.left(), one.right(), place.left(), place.right());
    return 0;
}

}  // namespace

double worth_of(const Task& task, const Layout& layout, const WallRect& place) {
    double worth = 0;
    for (const Spot& spot : layout)
        worth += worth_beside(task, spot.place, place);
    const WallRect bounds = bounds_of(layout);
    const double own = place.grown(task.gap / 2).size().area();
    const WallRect larger = geometry::hull(bounds, place);
    const double taken = larger.size().area() - bounds.size().area();
    return worth - kRoomTaken * std::min(4.0, taken / own);
}

void SetDown::judge_offers(const Layout& layout, double noise, Random& random) {
    offers_.clear();
    for (const WallRect& place : places_)
        offers_.push_back({worth_of(*task_, layout, place) + noise * random.uniform(-2, 2), place});
    const std::size_t kept = std::min(kShortList, offers_.size());
    std::ranges::partial_sort(offers_, offers_.begin() + static_cast<std::ptrdiff_t>(kept),
                              std::greater<>{}, &Offer::worth);
    offers_.resize(kept);
}

bool SetDown::add(Layout& layout, std::uint32_t item, double noise, Random& random) {
    if (layout.empty()) {
        const auto settled =
            settle(*task_, {{item, WallRect::at({0, 0}, task_->items[item].size)}});
        if (settled)
            layout = *settled;
        return settled.has_value();
    }
    touching_spots(*task_, layout, item, places_);
    if (places_.empty())
        return false;
    judge_offers(layout, noise, random);
    layout.push_back({item, offers_.front().place});
    if (layout.size() > kWholeScoreUpTo)
        return true;
    double best = -1;
    WallRect chosen;
    for (const Offer& offer : offers_) {
        layout.back().place = offer.place;
        view_.look(layout);
        const double total = total_of(view_) + noise * random.uniform(-2, 2);
        if (total > best) {
            best = total;
            chosen = offer.place;
        }
    }
    layout.back().place = chosen;
    return true;
}

}  // namespace wallwright::arrange
