#include "hanging/zones.h"

#include "hanging/in_wall.h"
#include "hanging/outline_edges.h"
#include "wall/this_side.h"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>

namespace wallwright::hanging {

namespace {

using geometry::Rect;
using geometry::Segment;
using geometry::Span;
using geometry::Wall;
using wall::Fixture;
using wall::FixtureType;

constexpr std::string_view kBritish = "BS 7671 522.6.202(i)";
constexpr std::string_view kGerman = "DIN 18015-3:2016-09";
constexpr std::string_view kHabit = "common practice, no source";
constexpr double kStep = 25;  ///< mm of height that one rectangle of a sloping zone may span.

/// A zone's words, before its place is known.
Zone words(std::string why, std::string_view source) {
    return {{}, std::move(why), std::string(source)};
}

/// Collects the zones of one room, none of them reaching outside the wall's bounds.
class Planner {
  public:
    explicit Planner(const wall::Room& room)
        : outline_(room.outline), bounds_(geometry::bounds(room.outline)) {}

    /// Between two distances above each of the sides, or below when they are negative, measured
    /// upright.
    void along(const std::vector<Segment<Wall>>& sides, Span off, const Zone& zone) {
        for (const Segment<Wall>& side : sides)
            for (const Rect<Wall>& step : steps_along(side, kStep))
                add({{step.left(), step.bottom() + off.low}, {step.right(), step.top() + off.high}},
                    zone);
    }

    /// Within `reach` below each of the sides, measured square to it: under a slope that leads
    /// aside as well as down.
    void below(const std::vector<Segment<Wall>>& sides, double reach, const Zone& zone) {
        for (const Segment<Wall>& side : sides) {
            const geometry::Vec<Wall> run = side.to - side.from;
            const double aside = reach * run.y / length(run);
            const double down = reach * run.x / length(run);
            for (const Rect<Wall>& step : steps_along(side, kStep))
                add({{step.left() + std::min(aside, 0.0), step.bottom() - down},
                     {step.right() + std::max(aside, 0.0), step.top()}},
                    zone);
        }
    }

    /// From the floor to the ceiling over a stretch of the width.
    void upright(Span across, const Zone& zone) {
        const double left = std::max(across.low, bounds_.left());
        const double right = std::min(across.high, bounds_.right());
        if (left >= right)
            return;
        if (const auto heights = height_between(outline_, left, right))
            add({{left, heights->low}, {right, heights->high}}, zone);
    }

    /// From one end of the wall to the other over a stretch of the height.
    void level(Span heights, const Zone& zone) {
        if (const auto across = width_between(outline_, heights.low, heights.high))
            add({{across->low, heights.low}, {across->high, heights.high}}, zone);
    }

    [[nodiscard]] std::vector<Zone> take() { return std::move(zones_); }

  private:
    void add(const Rect<Wall>& place, const Zone& zone) {
        const Rect<Wall> inside{
            {std::max(place.left(), bounds_.left()), std::max(place.bottom(), bounds_.bottom())},
            {std::min(place.right(), bounds_.right()), std::min(place.top(), bounds_.top())}};
        if (inside.width() > geometry::kLengthEps && inside.height() > geometry::kLengthEps)
            zones_.push_back({inside, zone.why, zone.source});
    }

    const geometry::Polygon& outline_;
    Rect<Wall> bounds_;
    std::vector<Zone> zones_;
};

std::string called(const Fixture& fixture) {
    const std::string_view type = name_of(fixture.type);
    const std::string_view behind = fixture.other_side ? " in the room behind" : "";
    if (fixture.title.empty())
        return fmt::format("{}{}", type, behind);
    return fmt::format("{} \"{}\"{}", type, fixture.title, behind);
}

enum class InLine { upright, upright_and_level };

void in_line_with_accessories(const wall::Room& room, InLine ways, std::string_view source,
                              Planner& plan) {
    for (const Fixture& fixture : room.fixtures) {
        if (!shows_cables(room, fixture))
            continue;
        const std::string name = called(fixture);
        const Rect<Wall>& place = fixture.place;
        plan.upright({place.left(), place.right()},
                     words("straight above or below the " + name, source));
        if (ways == InLine::upright_and_level)
            plan.level({place.bottom(), place.top()}, words("level with the " + name, source));
    }
}

void british(const wall::Room& room, Planner& plan) {
    const OutlineEdges edges = edges_of(room.outline);
    plan.below(edges.ceiling, 150, words("within 150 mm of the top of the wall", kBritish));
    for (const Segment<Wall>& end : edges.ends)
        plan.upright({end.from.x - 150, end.from.x + 150},
                     words("within 150 mm of a corner of the room", kBritish));
    in_line_with_accessories(room, InLine::upright_and_level, kBritish, plan);
}

void german(const wall::Room& room, Planner& plan) {
    const OutlineEdges edges = edges_of(room.outline);
    plan.along(edges.ceiling, {-450, -150}, words("150 to 450 mm below the ceiling", kGerman));
    plan.along(edges.floor, {150, 450}, words("150 to 450 mm above the floor", kGerman));
    if (room.use == wall::RoomUse::kitchen)
        plan.along(edges.floor, {1000, 1300},
                   words("1000 to 1300 mm above the floor of a kitchen", kGerman));
    const auto beside = [&plan](double left, double right, const std::string& what) {
        const Zone zone = words("100 to 300 mm beside " + what, kGerman);
        plan.upright({left - 300, left - 100}, zone);
        plan.upright({right + 100, right + 300}, zone);
    };
    for (const Segment<Wall>& end : edges.ends)
        beside(end.from.x, end.from.x, "a corner of the room");
    // A door has its zone at the lock, or on both sides when it is double; which one it is, is not
    // recorded.
    for (const Fixture* fixture : wall::fixtures_here(room))
        if (fixture->type == FixtureType::door || fixture->type == FixtureType::window)
            beside(fixture->place.left(), fixture->place.right(), "the " + called(*fixture));
    // Cables reach what lies outside the zones upright from the nearest level one (from memory of
    // the standard).
    in_line_with_accessories(room, InLine::upright, kGerman, plan);
}

}  // namespace

bool shows_cables(const wall::Room& room, const wall::Fixture& fixture) {
    return is_accessory(fixture.type) && is_in_wall(room, fixture);
}

std::vector<Zone> cable_zones(const wall::Room& room) {
    Planner plan(room);
    switch (room.cable_practice) {
        case wall::CablePractice::bs_7671:
            british(room, plan);
            break;
        case wall::CablePractice::din_18015_3:
            german(room, plan);
            break;
        case wall::CablePractice::none_known:
            in_line_with_accessories(room, InLine::upright_and_level, kHabit, plan);
            break;
    }
    return plan.take();
}

}  // namespace wallwright::hanging
