#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

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

/// The tape runs level from the wall's end to the mark. From the edge of a piece it runs along the
/// line of its top.
bool is_across_in_sight(const wall::Project& project, DatumSide side, const Mark& mark) {
    const std::optional<Rect<Wall>> piece = wall::datum_place(project);
    const Rect<Wall> bounds = piece ? *piece : geometry::bounds(project.room.outline);
    const double end = side == DatumSide::left ? bounds.left() : bounds.right();
    if (!piece)
        return stays_on_wall(project.room.outline, {end, mark.at.y}, mark.at);
    return stays_on_wall(project.room.outline, {end, piece->top()}, {mark.at.x, piece->top()});
}

/// The height of the level line that marks are measured from; nothing for floor and ceiling, which
/// are always in sight.
std::optional<double> line_of(const wall::Project& project) {
    if (project.datum.height == wall::DatumHeight::level_line)
        return project.datum.level_line;
    const std::optional<Rect<Wall>> piece = wall::datum_place(project);
    return piece ? std::optional(piece->top()) : std::nullopt;
}

/// The tape runs plumb from the level line to the mark. What hangs from a rail needs no line.
bool is_line_in_sight(const wall::Project& project, const Mark& mark) {
    const std::optional<double> line = line_of(project);
    return !line || mark.kind == hanging::MarkKind::rail ||
           stays_on_wall(project.room.outline, {mark.at.x, *line}, mark.at);
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
    if (wall::datum_place(scene.project))
        return say(scene, marks,
                   fmt::format("cannot be reached level along the top edge of {}; measure from "
                               "another piece or from a corner.",
                               title_of(scene.project, *scene.project.datum.piece)),
                   findings);
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
    const bool from_piece = wall::datum_place(scene.project).has_value();
    say(scene, marks,
        fmt::format("cannot be measured plumb from the level line at {}, which is not on the wall "
                    "there; {}.",
                    length_text(scene, *line_of(scene.project)),
                    from_piece ? "measure from another piece or from the floor"
                               : "choose another height for it"),
        findings);
}

/// Edges to measure from are those of a piece that hangs.
void check_piece(const Scene& scene, std::vector<wall::Finding>& findings) {
    const wall::Datum& datum = scene.project.datum;
    if (datum.height != wall::DatumHeight::piece || !datum.piece || scene.marks.empty())
        return;
    const wall::Piece* piece = find(scene.project, *datum.piece);
    if (piece == nullptr || piece->state == wall::PieceState::hung)
        return;
    const auto place = place_of(scene.project, *piece);
    findings.push_back(finding(
        wall::Severity::mind, {piece->id}, place.value_or(Rect<Wall>{}), std::nullopt,
        fmt::format("Marks are measured from the edges of {}, which does not hang yet; hang it "
                    "first, or measure from the floor.",
                    title_of(*piece))));
}

}  // namespace

const Rule kDatumInSight{
    "datum-in-sight",
    "every mark can be measured along the wall from the corner and the line it is measured from",
    "plain geometry",
    [](const Scene& scene, std::vector<wall::Finding>& findings) {
        check_piece(scene, findings);
        check_across(scene, findings);
        check_line(scene, findings);
    },
};

}  // namespace wallwright::rules
