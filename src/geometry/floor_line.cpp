#include "geometry/floor_line.h"

#include "base/contract.h"

#include <algorithm>
#include <cmath>

namespace wallwright::geometry {

namespace {

using P = Point<Wall>;

// What reads as a stair (our choice): at least so many risers, no higher and no farther apart.
constexpr std::size_t kRisersLeast = 3;
constexpr double kRiserMost = 300;  // mm
constexpr double kTreadMost = 500;

/// A straight piece of the floor.
struct Stretch {
    P from;
    P to;
};

bool is_level(const Stretch& one) {
    return is_same_length(one.from.y, one.to.y);
}

/// The floor between two corners' x, where nothing of the outline starts or ends.
Stretch between(const Polygon& outline, double from, double to) {
    const double quarter = (to - from) / 4;
    const double y1 = vertical_span(outline, from + quarter)->low;
    const double y2 = vertical_span(outline, to - quarter)->low;
    const double rise = (y2 - y1) / 2;
    return {{from, y1 - rise}, {to, y2 + rise}};
}

/// From left to right; the next starts where the last ends, and at its height unless there is a
/// step.
std::vector<Stretch> stretches_of(const Polygon& outline) {
    std::vector<double> ends;
    for (const P& corner : outline.corners)
        ends.push_back(corner.x);
    std::ranges::sort(ends);
    std::vector<Stretch> stretches;
    for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
        if (ends[i + 1] - ends[i] <= kLengthEps)
            continue;
        const Stretch next = between(outline, ends[i], ends[i + 1]);
        const bool goes_on = !stretches.empty() && is_level(next) && is_level(stretches.back()) &&
                             is_same_length(next.from.y, stretches.back().to.y);
        if (goes_on)
            stretches.back().to = next.to;
        else
            stretches.push_back(next);
    }
    return stretches;
}

/// mm up from the stretch to the next, negative down.
double riser_after(const std::vector<Stretch>& all, std::size_t i) {
    return all[i + 1].from.y - all[i].to.y;
}

bool is_riser(const std::vector<Stretch>& all, std::size_t i, bool up) {
    const double rise = up ? riser_after(all, i) : -riser_after(all, i);
    return is_level(all[i]) && is_level(all[i + 1]) && rise > kLengthEps && rise <= kRiserMost;
}

/// The stretch on which the flight that starts from this one ends; this one where none does.
std::size_t end_of_flight(const std::vector<Stretch>& all, std::size_t first, bool up) {
    std::size_t last = first;
    while (last + 1 < all.size() && is_riser(all, last, up) &&
           (last == first || all[last].to.x - all[last].from.x <= kTreadMost))
        ++last;
    return last - first >= kRisersLeast ? last : first;
}

P nosing_after(const std::vector<Stretch>& all, std::size_t i, bool up) {
    return up ? all[i + 1].from : all[i].to;
}

/// The line through the nosings, and on at their pitch to the floor at the foot.
void add_flight(const std::vector<Stretch>& all, std::size_t first, std::size_t last, bool up,
                std::vector<P>& corners) {
    const double tread = all[first + 1].to.x - all[first + 1].from.x;
    if (up)
        corners.push_back({std::max(all[first].from.x, all[first].to.x - tread), all[first].to.y});
    for (std::size_t i = first; i < last; ++i)
        corners.push_back(nosing_after(all, i, up));
    if (!up)
        corners.push_back({std::min(all[last].to.x, all[last].from.x + tread), all[last].from.y});
}

}  // namespace

FloorLine::FloorLine(const Polygon& outline) {
    const std::vector<Stretch> all = stretches_of(outline);
    for (std::size_t i = 0; i < all.size();) {
        const bool up = end_of_flight(all, i, true) > i;
        const std::size_t last = end_of_flight(all, i, up);
        if (corners_.empty() || corners_.back().x < all[i].from.x + kLengthEps)
            corners_.push_back(all[i].from);
        if (last > i)
            add_flight(all, i, last, up, corners_);
        else
            corners_.push_back(all[i].to);
        i = last > i && last + 1 < all.size() ? last : last + 1;
    }
    if (!all.empty() && corners_.back().x < all.back().to.x - kLengthEps)
        corners_.push_back(all.back().to);
}

double FloorLine::at(double x) const {
    if (corners_.empty())
        return 0;
    const auto after = std::ranges::upper_bound(corners_, x, {}, &P::x);
    if (after == corners_.begin())
        return corners_.front().y;
    if (after == corners_.end())
        return corners_.back().y;
    const P& from = *(after - 1);
    return from.y + (after->y - from.y) * (x - from.x) / (after->x - from.x);
}

bool FloorLine::is_level() const {
    return std::ranges::all_of(
        corners_, [this](const P& corner) { return is_same_length(corner.y, corners_.front().y); });
}

double FloorLine::pitch() const {
    double longest = 0;
    double pitch = 0;
    for (std::size_t first = 0; first + 1 < corners_.size();) {
        const auto slope = [this](std::size_t i) {
            const Vec<Wall> run = corners_[i + 1] - corners_[i];
            return run.x <= kLengthEps ? 0 : run.y / run.x;
        };
        constexpr double kSameSlope = 0.05;
        std::size_t last = first;
        while (last + 2 < corners_.size() && std::abs(slope(last + 1) - slope(first)) < kSameSlope)
            ++last;
        const Vec<Wall> run = corners_[last + 1] - corners_[first];
        if (!is_same_length(slope(first), 0) && run.x > longest) {
            longest = run.x;
            pitch = run.y / run.x;
        }
        first = last + 1;
    }
    return pitch;
}

Rect<Wall> above(const FloorLine& floor, const Rect<Wall>& place) {
    return place.moved({0, -floor.at(place.centre().x)});
}

double middle_above(const FloorLine& floor, std::span<const Rect<Wall>> places) {
    WW_EXPECT(!places.empty(), "a middle needs something to be the middle of");
    Rect<Wall> all = above(floor, places.front());
    for (const Rect<Wall>& place : places)
        all = hull(all, above(floor, place));
    return all.centre().y;
}

}  // namespace wallwright::geometry
