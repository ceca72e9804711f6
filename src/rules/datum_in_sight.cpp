#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::rules {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Wall;
using hanging::Mark;
using wall::DatumSide;

/// True when the straight line between two points at one height, or one above the other, stays on
/// the wall.
bool stays_on_wall(const geometry::Polygon& outline, Point<Wall> a, Point<Wall> b) {
    return geometry::contains(outline, Rect<Wall>{{std::min(a.x, b.x), std::min(a.y, b.y)},
                                                  {std::max(a.x, b.x), std::max(a.y, b.y)}});
}

/// The tape runs level from the wall's end to the mark.
bool is_across_in_sight(const wall::Project& project, DatumSide side, const Mark& mark) {
    const Rect<Wall> bounds = geometry::bounds(project.room.outline);
    const double end = side == DatumSide::left ? bounds.left() : bounds.right();
    return stays_on_wall(project.room.outline, {end, mark.at.y}, mark.at);
}

/// The tape runs plumb from the level line to the mark; floor and ceiling are always in sight.
bool is_line_in_sight(const wall::Project& project, const Mark& mark) {
    return project.datum.height != wall::DatumHeight::level_line ||
           stays_on_wall(project.room.outline, {mark.at.x, project.datum.level_line}, mark.at);
}

template <class InSight>
std::vector<const Mark*> hidden(const Scene& scene, InSight in_sight) {
    std::vector<const Mark*> out;
    for (const Mark& mark : scene.marks)
        if (!in_sight(mark))
            out.push_back(&mark);
    return out;
}

void say(const Scene& scene, const std::vector<const Mark*>& marks, const std::string& text,
         std::vector<wall::Finding>& findings) {
    std::vector<const OnWall*> pieces;
    for (const Mark* mark : marks)
        if (const OnWall* one = &on_wall(scene, mark->piece);
            std::ranges::find(pieces, one) == pieces.end())
            pieces.push_back(one);
    findings.push_back(finding(wall::Severity::mind, ids_of(pieces), bounds_of(pieces),
                               std::nullopt,
                               fmt::format("The marks of {} {}", titles_of(pieces), text)));
}

void check_across(const Scene& scene, std::vector<wall::Finding>& findings) {
    const DatumSide side = scene.project.datum.side;
    const DatumSide other = side == DatumSide::left ? DatumSide::right : DatumSide::left;
    const auto marks = hidden(
        scene, [&](const Mark& mark) { return is_across_in_sight(scene.project, side, mark); });
    if (marks.empty())
        return;
    const bool other_sees = std::ranges::all_of(scene.marks, [&](const Mark& mark) {
        return is_across_in_sight(scene.project, other, mark);
    });
    say(scene, marks,
        fmt::format("lie higher or lower than the wall is at its {} end, so no tape reaches them "
                    "level from there; {}.",
                    wall::name_of(side),
                    other_sees ? fmt::format("measure from the {} corner", wall::name_of(other))
                               : "drop a plumb line where both can be reached and measure from it"),
        findings);
}

void check_line(const Scene& scene, std::vector<wall::Finding>& findings) {
    const auto marks =
        hidden(scene, [&](const Mark& mark) { return is_line_in_sight(scene.project, mark); });
    if (marks.empty())
        return;
    say(scene, marks,
        fmt::format("cannot be measured plumb from the level line at {}, which is not on the wall "
                    "there; choose another height for it.",
                    length_text(scene, scene.project.datum.level_line)),
        findings);
}

}  // namespace

const Rule kDatumInSight{
    "datum-in-sight",
    "every mark can be measured along the wall from the corner and the line it is measured from",
    "plain geometry",
    [](const Scene& scene, std::vector<wall::Finding>& findings) {
        check_across(scene, findings);
        check_line(scene, findings);
    },
};

}  // namespace wallwright::rules
