#include "rules/all.h"
#include "rules/judge.h"
#include "rules/way_clear.h"
#include "rules/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace wallwright::rules {

namespace {

using hanging::Fixing;
using wall::Severity;
using Pieces = std::vector<const OnWall*>;

/// Part of the rail, mm across; what lies on its ends is not in it.
struct Stretch {
    double from = 0;
    double to = 0;
};

bool is_in(const Stretch& stretch, double across) {
    return exceeds(across, stretch.from) && exceeds(stretch.to, across);
}

bool on_rail(const OnWall& one) {
    const std::vector<Fixing>& fixings = one.hanging->fixings;
    return !fixings.empty() && fixings.front().kind == wall::FixingKind::rail_hook;
}

/// True when `above` hangs higher than the piece and lower than the rail, so that a cord could run
/// behind it.
bool is_between(const OnWall& above, const OnWall& hanging_from_rail) {
    const double rail = hanging_from_rail.hanging->fixings.front().at.y;
    return &above != &hanging_from_rail && exceeds(rail, above.place.bottom()) &&
           exceeds(above.place.top(), hanging_from_rail.place.top());
}

Stretch behind(const OnWall& one) {
    return {one.place.left(), one.place.right()};
}

/// Where the middle of a hook may not be beside another hook.
Stretch beside(const Fixing& there, const Fixing& hook) {
    const double apart = (there.footprint.width + hook.footprint.width) / 2;
    return {there.at.x - apart, there.at.x + apart};
}

/// What the place of a piece must respect.
struct Limits {
    std::vector<Stretch> taken;  ///< Of the rail, for its hooks.
    std::vector<double> cords;   ///< Of others, mm across, that must not run behind it.
};

void add_limits(const OnWall& other, const OnWall& one, Limits& limits) {
    if (on_rail(one) && is_between(other, one))
        limits.taken.push_back(behind(other));
    if (!on_rail(other))
        return;
    for (const Fixing& there : other.hanging->fixings) {
        if (on_rail(one))
            limits.taken.push_back(beside(there, one.hanging->fixings.front()));
        if (is_between(one, other))
            limits.cords.push_back(there.at.x);
    }
}

Limits limits_of(const Scene& scene, const OnWall& one) {
    Limits limits;
    for (const OnWall& other : scene.pieces)
        if (&other != &one)
            add_limits(other, one, limits);
    return limits;
}

/// Away from 0 to what a rule shows.
double rounded_out(const Scene& scene, double move) {
    const double step = scene.project.unit == units::LengthUnit::inch ? units::kMmPerInch / 16 : 1;
    return std::copysign(std::ceil((std::abs(move) - kHair) / step) * step, move);
}

/// All moves to the very edge of a limit, the shortest first, none farther than the piece is wide:
/// that would be another layout (our choice).
std::vector<double> moves_to(const Scene& scene, const OnWall& one, const Limits& limits) {
    std::vector<double> moves;
    for (const Stretch& stretch : limits.taken)
        for (const Fixing& hook : one.hanging->fixings)
            for (const double end : {stretch.from, stretch.to})
                moves.push_back(rounded_out(scene, end - hook.at.x));
    for (const double cord : limits.cords)
        for (const double edge : {one.place.left(), one.place.right()})
            moves.push_back(rounded_out(scene, cord - edge));
    std::erase_if(moves,
                  [&one](double move) { return exceeds(std::abs(move), one.place.width()); });
    std::ranges::sort(moves, {}, [](double move) { return std::pair(std::abs(move), move); });
    return moves;
}

bool keeps(const Limits& limits, const OnWall& one, double move) {
    const Stretch body{one.place.left() + move, one.place.right() + move};
    const auto is_taken = [&](double across) {
        return std::ranges::any_of(
            limits.taken, [across](const Stretch& stretch) { return is_in(stretch, across); });
    };
    return std::ranges::none_of(limits.cords, [&body](double cord) { return is_in(body, cord); }) &&
           std::ranges::none_of(one.hanging->fixings,
                                [&](const Fixing& hook) { return is_taken(hook.at.x + move); });
}

/// True when it is on the wall and overlaps no other piece.
bool has_room(const Scene& scene, const OnWall& one, double move) {
    const geometry::Rect<geometry::Wall> place = one.place.moved({move, 0});
    return geometry::contains(scene.project.room.outline, place) &&
           std::ranges::none_of(scene.pieces, [&](const OnWall& other) {
               return &other != &one && overlap_depth(place, other.place) > 0;
           });
}

/// The shortest move aside, mm to the right or less than 0, after which it keeps its limits and has
/// room; nothing where there is none.
std::optional<double> move_aside(const Scene& scene, const OnWall& one) {
    const Limits limits = limits_of(scene, one);
    for (const double move : moves_to(scene, one, limits))
        if (keeps(limits, one, move) && has_room(scene, one, move))
            return move;
    return std::nullopt;
}

/// How far to move the first of these that may be moved and has somewhere to go.
std::string advice(const Scene& scene, const Pieces& movable) {
    for (const OnWall* one : movable) {
        if (wall::is_fixed(*one->piece))
            continue;
        if (const std::optional<double> move = move_aside(scene, *one))
            return fmt::format("move {} {} {}", title_of(*one), length_text(scene, std::abs(*move)),
                               *move < 0 ? "to the left" : "to the right");
    }
    return fmt::format("hang {} another way, or elsewhere", title_of(*movable.front()));
}

/// How near the hooks of two pieces come to each other where they overlap the most.
std::optional<Measure> overlap_of(const OnWall& first, const OnWall& second) {
    std::optional<Measure> worst;
    for (const Fixing& a : first.hanging->fixings)
        for (const Fixing& b : second.hanging->fixings) {
            if (!is_in(beside(a, b), b.at.x))
                continue;
            const Measure near{std::abs(a.at.x - b.at.x),
                               (a.footprint.width + b.footprint.width) / 2};
            if (!worst || near.wanted - near.measured > worst->wanted - worst->measured)
                worst = near;
        }
    return worst;
}

void check_hooks(const Scene& scene, const Pieces& hanging, std::vector<wall::Finding>& findings) {
    for (auto first = hanging.begin(); first != hanging.end(); ++first)
        for (auto second = first + 1; second != hanging.end(); ++second) {
            const std::optional<Measure> near = overlap_of(**first, **second);
            if (!near)
                continue;
            Pieces lower_first{*first, *second};
            if ((*second)->place.top() < (*first)->place.top())
                std::swap(lower_first.front(), lower_first.back());
            findings.push_back(finding(
                Severity::stop, {(*first)->piece->id, (*second)->piece->id},
                geometry::hull((*first)->place, (*second)->place), near,
                fmt::format("Rail hooks of {} and {} would be {} apart from middle to middle, and "
                            "take {}; {}.",
                            title_of(**first), title_of(**second),
                            length_text(scene, near->measured), length_text(scene, near->wanted),
                            advice(scene, lower_first))));
        }
}

/// How many of the piece's cords run behind any of these.
std::size_t cords_behind(const Pieces& above, const OnWall& one) {
    return static_cast<std::size_t>(
        std::ranges::count_if(one.hanging->fixings, [&above](const Fixing& hook) {
            return std::ranges::any_of(
                above, [&hook](const OnWall* other) { return is_in(behind(*other), hook.at.x); });
        }));
}

std::string cord_words(const OnWall& one, const Pieces& above) {
    const std::size_t count = cords_behind(above, one);
    const char* which = one.hanging->fixings.size() == 1 ? "The rail cord"
                        : count == 1                     ? "One rail cord"
                                                         : "The rail cords";
    return fmt::format("{} of {} {} behind {} and {} {} off the wall", which, title_of(one),
                       count == 1 ? "runs" : "run", titles_of(above),
                       count == 1 ? "pushes" : "push", above.size() == 1 ? "it" : "them");
}

void check_cords(const Scene& scene, const Pieces& hanging, std::vector<wall::Finding>& findings) {
    for (const OnWall* one : hanging) {
        Pieces above;
        for (const OnWall& other : scene.pieces)
            if (is_between(other, *one) && cords_behind({&other}, *one) > 0)
                above.push_back(&other);
        if (above.empty())
            continue;
        Pieces all = above;
        all.insert(all.begin(), one);
        Pieces movable{one};
        if (above.size() == 1)
            movable.push_back(above.front());
        findings.push_back(
            finding(Severity::mind, ids_of(all), bounds_of(all), std::nullopt,
                    fmt::format("{}; {}.", cord_words(*one, above), advice(scene, movable))));
    }
}

void check(const Scene& scene, std::vector<wall::Finding>& findings) {
    Pieces hanging;
    for (const OnWall& one : scene.pieces)
        if (on_rail(one))
            hanging.push_back(&one);
    check_hooks(scene, hanging, findings);
    check_cords(scene, hanging, findings);
}

}  // namespace

const Rule kRailClear{
    "rail-clear",
    "no two hooks sit on one spot of the picture rail, and no cord runs behind another piece",
    "plain geometry: a cord behind a frame holds it off the wall",
    check,
};

}  // namespace wallwright::rules
