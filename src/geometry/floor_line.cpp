#include "geometry/floor_line.h"

#include "base/contract.h"

#include <algorithm>
#include <cmath>

namespace wallwright::geometry {

namespace {

using P = Point<Wall>;

constexpr double kTape = 20;  // mm by which floors and treads as measured may be out of level

// What reads as a stair (our choice): at least so many risers, no higher and no farther apart.
constexpr std::size_t kRisersLeast = 3;
constexpr double kRiserMost = 300;  // mm
constexpr double kTreadMost = 500;

// What reads as the slope of a stair or a ramp, and not as a jamb or a floor out of level (our
// choice).
constexpr double kSlopeLeast = 0.05;
constexpr double kSlopeMost = 1.5;
constexpr double kSlopeRunLeast = 500;  // mm

/// A straight piece of the outline's lower side.
struct Stretch {
    P from;
    P to;
    [[nodiscard]] double run() const { return to.x - from.x; }
    [[nodiscard]] double rise() const { return to.y - from.y; }
};

bool is_level(const Stretch& one) {
    return std::abs(one.rise()) <= kTape;
}

bool is_slope(const Stretch& one) {
    const double slope = std::abs(one.rise()) / one.run();
    return !is_level(one) && one.run() >= kSlopeRunLeast && slope >= kSlopeLeast &&
           slope <= kSlopeMost;
}

/// Between two corners' x, where nothing of the outline starts or ends.
Stretch between(const Polygon& outline, double from, double to) {
    const double quarter = (to - from) / 4;
    const double y1 = vertical_span(outline, from + quarter)->low;
    const double y2 = vertical_span(outline, to - quarter)->low;
    const double rise = (y2 - y1) / 2;
    return {{from, y1 - rise}, {to, y2 + rise}};
}

bool goes_on(const Stretch& one, const Stretch& next) {
    return is_level(one) && is_level(next) && std::abs(next.from.y - one.to.y) <= kTape;
}

/// From left to right, level ones that go on as one.
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
        if (!stretches.empty() && goes_on(stretches.back(), next))
            stretches.back().to = next.to;
        else
            stretches.push_back(next);
    }
    return stretches;
}

bool is_riser(const Stretch& before, const Stretch& after, bool up) {
    const double rise = up ? after.from.y - before.to.y : before.to.y - after.from.y;
    return is_level(before) && is_level(after) && rise > kTape && rise <= kRiserMost;
}

/// How many risers the flight has that starts from the first of them; 0 where none does.
std::size_t risers_from(std::span<const Stretch> floor, bool up) {
    std::size_t risers = 0;
    while (risers + 1 < floor.size() && is_riser(floor[risers], floor[risers + 1], up) &&
           (risers == 0 || floor[risers].run() <= kTreadMost))
        ++risers;
    return risers >= kRisersLeast ? risers : 0;
}

/// The nosings of a flight that goes up to the right, after the point where their line meets the
/// floor at its foot.
std::vector<P> line_up(std::span<const Stretch> flight) {
    const Stretch& foot = flight.front();
    std::vector<P> line{{std::max(foot.from.x, foot.to.x - flight[1].run()), foot.to.y}};
    for (const Stretch& tread : flight.subspan(1))
        line.push_back(tread.from);
    return line;
}

/// The same for one that goes down.
std::vector<P> line_down(std::span<const Stretch> flight) {
    std::vector<P> line;
    for (const Stretch& tread : flight.first(flight.size() - 1))
        line.push_back(tread.to);
    const Stretch& foot = flight.back();
    const double tread = flight[flight.size() - 2].run();
    line.push_back({std::min(foot.to.x, foot.from.x + tread), foot.from.y});
    return line;
}

}  // namespace

FloorLine::FloorLine(const Polygon& outline) {
    const std::vector<Stretch> all = stretches_of(outline);
    for (std::size_t i = 0; i < all.size();) {
        const std::span<const Stretch> rest = std::span(all).subspan(i);
        const std::size_t up = risers_from(rest, true);
        const std::size_t down = risers_from(rest, false);
        if (up > 0)
            add_flight(line_up(rest.first(up + 1)));
        else if (down > 0)
            add_flight(line_down(rest.first(down + 1)));
        else if (is_slope(all[i]))
            add_flight(std::vector{all[i].from, all[i].to});
        // A landing may be the foot of the next flight.
        i += std::max({up, down, std::size_t{1}});
    }
}

/// Where two flights meet in a valley, the foot of the first is the foot of both.
void FloorLine::add_flight(std::span<const P> corners) {
    for (const P& corner : corners)
        if (corners_.empty() || corner.x > corners_.back().x + kLengthEps)
            corners_.push_back(corner);
    const Vec<Wall> way = corners.back() - corners.front();
    if (way.x > longest_) {
        longest_ = way.x;
        pitch_ = way.y / way.x;
    }
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
