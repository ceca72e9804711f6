#include "app/flatten.h"

#include <algorithm>
#include <cmath>

namespace wallwright::app {

namespace {

constexpr float kTolerance = 0.1F;   // px
constexpr float kSamePlace = 0.01F;  // px
constexpr int kMostParts = 64;

ImVec2 plus(ImVec2 a, ImVec2 b) {
    return {a.x + b.x, a.y + b.y};
}
ImVec2 times(float factor, ImVec2 a) {
    return {factor * a.x, factor * a.y};
}

void add(std::vector<ImVec2>& points, ImVec2 point) {
    if (points.empty() || std::abs(points.back().x - point.x) > kSamePlace ||
        std::abs(points.back().y - point.y) > kSamePlace)
        points.push_back(point);
}

/// How far b is from the middle of a and c, twice.
float bend(ImVec2 a, ImVec2 b, ImVec2 c) {
    return std::hypot(a.x - 2 * b.x + c.x, a.y - 2 * b.y + c.y);
}

/// A cubic curve of n equal steps is at most 6 bend / (8 n^2) from its chords.
void add_curve(std::vector<ImVec2>& points, ImVec2 a, ImVec2 b, ImVec2 c, ImVec2 d) {
    const float most = std::max(bend(a, b, c), bend(b, c, d));
    const int parts = std::clamp(static_cast<int>(std::ceil(std::sqrt(0.75F * most / kTolerance))),
                                 1, kMostParts);
    for (int i = 1; i <= parts; ++i) {
        const float t = static_cast<float>(i) / static_cast<float>(parts);
        const float s = 1 - t;
        add(points, plus(plus(times(s * s * s, a), times(3 * s * s * t, b)),
                         plus(times(3 * s * t * t, c), times(t * t * t, d))));
    }
}

double turn(ImVec2 a, ImVec2 b, ImVec2 c) {
    return (double{b.x} - a.x) * (double{c.y} - b.y) - (double{b.y} - a.y) * (double{c.x} - b.x);
}

/// One of the four sides to clip to: what is kept has sign * coordinate <= sign * limit.
struct ClipSide {
    bool across = false;  ///< The limit is an x.
    float sign = 1;
    float limit = 0;

    [[nodiscard]] float beyond(ImVec2 p) const { return sign * ((across ? p.x : p.y) - limit); }
};

void clip_side(const std::vector<ImVec2>& corners, const ClipSide& side,
               std::vector<ImVec2>& kept) {
    kept.clear();
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const ImVec2 from = corners[i];
        const ImVec2 to = corners[(i + 1) % corners.size()];
        const float before = side.beyond(from);
        const float after = side.beyond(to);
        if (before <= 0)
            kept.push_back(from);
        if ((before < 0 && after > 0) || (before > 0 && after < 0)) {
            const float share = before / (before - after);
            kept.push_back(plus(times(1 - share, from), times(share, to)));
        }
    }
}

}  // namespace

ImVec2 on_screen(const ToScreen& to_screen, geometry::Point<geometry::Wall> point) {
    const geometry::Point<geometry::Screen> at = to_screen(point);
    return {static_cast<float>(at.x), static_cast<float>(at.y)};
}

ImVec4 on_screen(const ToScreen& to_screen, const geometry::Rect<geometry::Wall>& rect) {
    const geometry::Rect<geometry::Screen> at = to_screen(rect);
    return {static_cast<float>(at.min.x), static_cast<float>(at.min.y),
            static_cast<float>(at.max.x), static_cast<float>(at.max.y)};
}

void flatten(const draw::Path<geometry::Wall>& path, const ToScreen& to_screen,
             std::vector<ImVec2>& points) {
    points.clear();
    ImVec2 pen = on_screen(to_screen, path.start);
    points.push_back(pen);
    for (const draw::Step<geometry::Wall>& step : path.steps) {
        const ImVec2 to = on_screen(to_screen, step.to);
        if (step.controls)
            add_curve(points, pen, on_screen(to_screen, step.controls->first),
                      on_screen(to_screen, step.controls->second), to);
        else
            add(points, to);
        pen = to;
    }
    while (path.closed && points.size() > 1 &&
           std::abs(points.back().x - points.front().x) <= kSamePlace &&
           std::abs(points.back().y - points.front().y) <= kSamePlace)
        points.pop_back();
}

ImVec4 bounds_of(std::span<const ImVec2> points) {
    ImVec4 all{points.front().x, points.front().y, points.front().x, points.front().y};
    for (const ImVec2 point : points)
        all = {std::min(all.x, point.x), std::min(all.y, point.y), std::max(all.z, point.x),
               std::max(all.w, point.y)};
    return all;
}

bool is_apart(const ImVec4& one, const ImVec4& other) {
    return one.z < other.x || one.x > other.z || one.w < other.y || one.y > other.w;
}

bool is_inside(const ImVec4& one, const ImVec4& other) {
    return one.x >= other.x && one.y >= other.y && one.z <= other.z && one.w <= other.w;
}

ImVec4 grown(const ImVec4& rect, float margin) {
    return {rect.x - margin, rect.y - margin, rect.z + margin, rect.w + margin};
}

bool is_convex(std::span<const ImVec2> corners) {
    const std::size_t count = corners.size();
    bool left = false;
    bool right = false;
    int changes = 0;  // of the way along x; a spiral has more than two
    for (std::size_t i = 0; i < count; ++i) {
        const ImVec2 a = corners[i];
        const ImVec2 b = corners[(i + 1) % count];
        const ImVec2 c = corners[(i + 2) % count];
        const double by = turn(a, b, c);
        left = left || by < 0;
        right = right || by > 0;
        changes += (b.x >= a.x) != (c.x >= b.x) ? 1 : 0;
    }
    return !(left && right) && changes <= 2;
}

bool is_upright(std::span<const ImVec2> points, bool closed) {
    const std::size_t lines = closed ? points.size() : points.size() - 1;
    for (std::size_t i = 0; i < lines; ++i) {
        const ImVec2 a = points[i];
        const ImVec2 b = points[(i + 1) % points.size()];
        if (std::abs(a.x - b.x) > kSamePlace && std::abs(a.y - b.y) > kSamePlace)
            return false;
    }
    return true;
}

void clip_polygon(std::vector<ImVec2>& corners, const ImVec4& rect, std::vector<ImVec2>& spare) {
    const ClipSide sides[] = {
        {true, -1, rect.x}, {false, -1, rect.y}, {true, 1, rect.z}, {false, 1, rect.w}};
    for (const ClipSide& side : sides) {
        clip_side(corners, side, spare);
        corners.swap(spare);
    }
}

}  // namespace wallwright::app
