#include "rules/way_clear.h"

#include "base/contract.h"
#include "rules/judge.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace wallwright::rules {

namespace {

using geometry::Polygon;
using WallRect = geometry::Rect<geometry::Wall>;
using Point = geometry::Point<geometry::Wall>;
using Step = geometry::Vec<geometry::Wall>;

constexpr double kShown = 0.1;         ///< mm; what a person is shown.
constexpr double kNearEnough = 0.001;  ///< mm

struct Direction {
    std::string_view words;
    Step step;
};

/// Up first: where two ways are equally short, a frame is more easily seen above a thing than
/// beside or below it.
constexpr std::array<Direction, 4> kDirections{
    {{"up", {0, 1}}, {"down", {0, -1}}, {"to the left", {-1, 0}}, {"to the right", {1, 0}}}};

/// How far `moving` goes in each direction, in the order of kDirections, until it is past `from`.
std::array<double, 4> distances_past(const WallRect& moving, const WallRect& from) {
    return {from.max.y - moving.min.y, moving.max.y - from.min.y, moving.max.x - from.min.x,
            from.max.x - moving.min.x};
}

/// mm; nothing on the wall needs to be moved farther.
double span_of(const Polygon& outline) {
    const WallRect bounds = geometry::bounds(outline);
    return bounds.width() + bounds.height();
}

bool inside(const Polygon& outline, const WallRect& place) {
    return !exceeds(geometry::protrusion(outline, place), 0);
}

/// The least distance along `step` that brings `place` inside but for a hair, rounded up to 0.1 mm;
/// nothing when that is over `farthest`.
std::optional<double> distance_inside(const Polygon& outline, const WallRect& place, Step step,
                                      double farthest) {
    const auto is_inside = [&](double distance) {
        return inside(outline, place.moved(distance * step));
    };
    double outside = 0;
    double reached = std::min(geometry::protrusion(outline, place), farthest);
    while (!is_inside(reached)) {
        if (reached >= farthest)
            return std::nullopt;
        outside = reached;
        reached = std::min(2 * reached, farthest);
    }
    while (reached - outside > kNearEnough) {
        const double middle = (outside + reached) / 2;
        (is_inside(middle) ? reached : outside) = middle;
    }
    return std::ceil(reached / kShown) * kShown;
}

/// How far `point` still has to go in a direction to be past every zone that it is in; 0 when it is
/// in none.
double still_to_go(Point point, std::size_t direction, std::span<const WallRect> zones) {
    double far = 0;
    for (const WallRect& zone : zones)
        if (zone.contains(point))
            far = std::max(far, distances_past({point, point}, zone).at(direction) + kHair);
    return far;
}

/// In whole mm, or over `farthest`. Each step takes one of the points past a zone that it is in, so
/// there are no more steps than points and zones.
double distance_out(std::span<const Point> points, std::size_t direction,
                    std::span<const WallRect> zones, double farthest) {
    double distance = 0;
    double more = 0;
    do {
        more = 0;
        for (const Point point : points)
            more = std::max(more, still_to_go(point + distance * kDirections.at(direction).step,
                                              direction, zones));
        distance = std::ceil(distance + more);
    } while (more > 0 && distance < farthest);
    return distance;
}

}  // namespace

Step step_of(const Way& way) {
    const auto* found = std::ranges::find(kDirections, way.direction, &Direction::words);
    WW_EXPECT(found != kDirections.end(), "a way goes up, down or aside");
    return way.distance * found->step;
}

double overlap_depth(const WallRect& a, const WallRect& b) {
    const double depth = std::ranges::min(distances_past(a, b));
    return exceeds(depth, 0) ? depth : 0;
}

Way way_clear(const Polygon& outline, const WallRect& moving, const WallRect& from, double margin) {
    const std::array<double, 4> distances = distances_past(moving, from.grown(margin));
    std::optional<Way> within;
    std::optional<Way> any;
    for (std::size_t i = 0; i < kDirections.size(); ++i) {
        const Way way{distances[i], kDirections[i].words};
        if (!any || way.distance < any->distance)
            any = way;
        const bool shorter = !within || way.distance < within->distance;
        if (shorter && inside(outline, moving.moved(way.distance * kDirections[i].step)))
            within = way;
    }
    return within ? *within : *any;
}

std::optional<Way> way_inside(const Polygon& outline, const WallRect& place) {
    const double farthest = geometry::protrusion(outline, place) + span_of(outline);
    std::optional<Way> shortest;
    for (const Direction& direction : kDirections) {
        const std::optional<double> distance = distance_inside(
            outline, place, direction.step, shortest ? shortest->distance : farthest);
        if (distance && (!shortest || *distance < shortest->distance))
            shortest = Way{*distance, direction.words};
    }
    return shortest;
}

std::optional<Way> way_out(const Polygon& outline, const Carried& carried,
                           std::span<const WallRect> zones) {
    const double farthest = span_of(outline);
    std::optional<Way> shortest;
    for (std::size_t i = 0; i < kDirections.size(); ++i) {
        const Step step = kDirections[i].step;
        const double distance =
            distance_out(carried.points, i, zones, shortest ? shortest->distance : farthest);
        const bool shorter = !shortest || distance < shortest->distance;
        if (shorter && geometry::contains(outline, carried.place.moved(distance * step)))
            shortest = Way{distance, kDirections[i].words};
    }
    return shortest;
}

}  // namespace wallwright::rules
