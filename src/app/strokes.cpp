#include "app/strokes.h"

#include "app/flatten.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace wallwright::app {

namespace {

constexpr float kThin = 1.5F;  // px; wider lines need no whole pixels to look sharp

/// Shares of the line from..to between which it is in the rectangle (Liang and Barsky's method).
std::optional<std::pair<float, float>> part_in(ImVec2 from, ImVec2 to, const ImVec4& rect) {
    float enter = 0;
    float leave = 1;
    const auto limit = [&](float by, float room) {
        if (by == 0)
            return room >= 0;
        const float share = room / by;
        if (by < 0)
            enter = std::max(enter, share);
        else
            leave = std::min(leave, share);
        return true;
    };
    const float dx = to.x - from.x;
    const float dy = to.y - from.y;
    const bool possible = limit(-dx, from.x - rect.x) && limit(dx, rect.z - from.x) &&
                          limit(-dy, from.y - rect.y) && limit(dy, rect.w - from.y);
    if (!possible || enter >= leave)
        return std::nullopt;
    return std::pair{enter, leave};
}

ImVec2 between(ImVec2 from, ImVec2 to, float share) {
    return {from.x + share * (to.x - from.x), from.y + share * (to.y - from.y)};
}

/// A dash is at least a pixel long, so that dots of thin lines can be seen.
double part_length(const LineLook& look, std::size_t part) {
    const double length = look.dashes[part] * look.width;
    return part % 2 == 0 ? std::max(1.0, length) : length;
}

double pattern_length(const LineLook& look) {
    double sum = 0;
    for (std::size_t part = 0; part < look.dashes.size(); ++part)
        sum += part_length(look, part);
    return sum;
}

}  // namespace

void StrokePen::stroke(std::span<const ImVec2> points, bool closed, const LineLook& look) {
    if (points.size() < 2)
        return;
    if (look.width < kThin && is_upright(points, closed)) {
        snapped_.clear();
        for (const ImVec2 point : points)
            snapped_.push_back({std::floor(point.x) + 0.5F, std::floor(point.y) + 0.5F});
        points = snapped_;
    }
    if (!look.dashes.empty())
        dashed(points, closed, look);
    else if (is_inside(bounds_of(points), clip_))
        whole(points, closed, look);
    else
        clipped(points, closed, look);
}

void StrokePen::whole(std::span<const ImVec2> points, bool closed, const LineLook& look) {
    list_.AddPolyline(points.data(), static_cast<int>(points.size()), look.colour,
                      closed ? ImDrawFlags_Closed : ImDrawFlags_None, std::max(1.0F, look.width));
}

void StrokePen::end_run(const LineLook& look) {
    if (run_.size() > 1)
        whole(run_, false, look);
    run_.clear();
}

void StrokePen::clipped(std::span<const ImVec2> points, bool closed, const LineLook& look) {
    const std::size_t lines = closed ? points.size() : points.size() - 1;
    for (std::size_t i = 0; i < lines; ++i) {
        const ImVec2 from = points[i];
        const ImVec2 to = points[(i + 1) % points.size()];
        const auto seen = part_in(from, to, clip_);
        if (!seen || seen->first > 0)
            end_run(look);
        if (!seen)
            continue;
        if (run_.empty())
            run_.push_back(between(from, to, seen->first));
        run_.push_back(between(from, to, seen->second));
        if (seen->second < 1)
            end_run(look);
    }
    end_run(look);
}

void StrokePen::dashed(std::span<const ImVec2> points, bool closed, const LineLook& look) {
    const double whole_pattern = pattern_length(look);
    const std::size_t lines = closed ? points.size() : points.size() - 1;
    double along = 0;
    for (std::size_t i = 0; i < lines; ++i) {
        const ImVec2 from = points[i];
        const ImVec2 to = points[(i + 1) % points.size()];
        const float length = std::hypot(to.x - from.x, to.y - from.y);
        const auto seen = part_in(from, to, clip_);
        if (!seen || seen->first > 0)
            end_run(look);
        if (seen)
            dash_line(between(from, to, seen->first), between(from, to, seen->second),
                      std::fmod(along + double{seen->first * length}, whole_pattern), look);
        along = std::fmod(along + double{length}, whole_pattern);
    }
    end_run(look);
}

void StrokePen::dash_line(ImVec2 from, ImVec2 to, double along, const LineLook& look) {
    const double length = std::hypot(to.x - from.x, to.y - from.y);
    std::size_t part = 0;
    while (along >= part_length(look, part)) {
        along -= part_length(look, part);
        part = (part + 1) % look.dashes.size();
    }
    double at = 0;
    double left = part_length(look, part) - along;
    while (at < length) {
        const double end = std::min(length, at + left);
        if (part % 2 == 0) {
            if (run_.empty())
                run_.push_back(between(from, to, static_cast<float>(at / length)));
            run_.push_back(between(from, to, static_cast<float>(end / length)));
        }
        if (at + left <= length) {
            end_run(look);
            part = (part + 1) % look.dashes.size();
            left = part_length(look, part);
        }
        at = end;
    }
}

}  // namespace wallwright::app
