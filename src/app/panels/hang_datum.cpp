#include "app/panels/change_project.h"
#include "app/panels/hang_sections.h"
#include "app/widgets.h"
#include "hanging/marks.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using wall::Datum;
using wall::DatumHeight;
using wall::EndHeights;
using wall::HangingStyle;
using wall::PieceId;
using wall::Project;

double proposed_line(const desk::Session& session) {
    return hanging::proposed_level_line(session.project(), session.assessment().hangings);
}

void level_line_rows(Ui& ui, desk::Session& session) {
    const Project& project = session.project();
    if (project.datum.height != DatumHeight::level_line)
        return;
    if (const auto height =
            measure_row(ui, "hang/line", "Level line", project.datum.level_line, project.unit,
                        "Above the wall's lowest floor. Draw it lightly with a spirit level."))
        return change_project(session, "Move the level line",
                              [height](Project& changed) { changed.datum.level_line = *height; });
    if (button(ui, "hang/propose-line", "Propose a height",
               "Within reach, clear of what hangs and stands there, and near the marks."))
        change_project(session, "Propose a level line",
                       [height = proposed_line(session)](Project& changed) {
                           changed.datum.level_line = height;
                       });
}

/// Those that hang already, and the one that the marks are measured from now.
std::vector<PieceId> edges_offered(const Project& project) {
    std::vector<PieceId> ids;
    for (const wall::Piece& piece : project.pieces)
        if (piece.state == wall::PieceState::hung || piece.id == project.datum.piece)
            ids.push_back(piece.id);
    return ids;
}

void piece_row(Ui& ui, desk::Session& session, const std::vector<PieceId>& offered) {
    const Project& project = session.project();
    if (project.datum.height != DatumHeight::piece)
        return;
    std::vector<std::string> titles;
    int chosen = -1;
    for (const PieceId& id : offered) {
        if (id == project.datum.piece)
            chosen = static_cast<int>(titles.size());
        titles.push_back(wall::title_of(project, id));
    }
    if (const auto other =
            choice_row(ui, "hang/piece", "Its edges", chosen, titles,
                       "Up from a level line along its top edge, across from its side."))
        change_project(session, "Change the datum",
                       [&id = offered[static_cast<std::size_t>(*other)]](Project& changed) {
                           changed.datum.piece = id;
                       });
}

void height_row(Ui& ui, desk::Session& session, const std::vector<PieceId>& offered) {
    std::vector<std::string> heights = spoken_names<DatumHeight>();
    heights[static_cast<std::size_t>(DatumHeight::piece)] = "a piece that hangs";
    if (offered.empty())
        heights.pop_back();
    const Datum& datum = session.project().datum;
    const auto chosen =
        choice_row(ui, "hang/height", "Up or down from", static_cast<int>(datum.height), heights,
                   "Floors and ceilings are seldom level; a level line is.");
    if (!chosen)
        return;
    change_project(session, "Change the datum", [chosen, &offered](Project& changed) {
        changed.datum.height = DatumHeight(*chosen);
        if (changed.datum.height == DatumHeight::piece && !changed.datum.piece)
            changed.datum.piece = offered.front();
    });
}

void side_row(Ui& ui, desk::Session& session) {
    const bool of_piece = session.project().datum.height == DatumHeight::piece;
    const std::vector<std::string> sides = spoken_names<wall::DatumSide>();
    if (const auto side =
            choice_row(ui, "hang/side", of_piece ? "Across from its" : "Across from the",
                       static_cast<int>(session.project().datum.side), sides,
                       of_piece ? "The edge at which the tape begins."
                                : "The corner at which the tape begins."))
        change_project(session, "Change the datum",
                       [side](Project& project) { project.datum.side = wall::DatumSide(*side); });
}

/// A floor or a ceiling that was measured to a level line at both ends of the wall.
struct Surface {
    DatumHeight height;
    const char* name;
    const char* label;
    const char* step;
    const char* why;
    const char* left_label;
    std::optional<EndHeights> Datum::*ends;
};

constexpr Surface kSurfaces[] = {
    {DatumHeight::floor, "hang/floor", "The floor is off level", "Measure the floor",
     "Draw one level line across the wall, and measure straight up to it from the floor at both "
     "ends.",
     "   up to a level line, left end", &Datum::floor},
    {DatumHeight::ceiling, "hang/ceiling", "The ceiling is off level", "Measure the ceiling",
     "Draw one level line across the wall, and measure straight down to it from the ceiling at "
     "both ends.",
     "   down to a level line, left end", &Datum::ceiling}};

/// As if it were level, with the line at the height that is proposed.
EndHeights level_ends(const desk::Session& session, const Surface& surface) {
    const double line = proposed_line(session);
    if (surface.height == DatumHeight::floor)
        return {line, line};
    const double top = geometry::bounds(session.project().room.outline).top();
    return {std::max(0.0, top - line), std::max(0.0, top - line)};
}

void end_row(Ui& ui, desk::Session& session, const Surface& surface, const char* end_name,
             const char* label, double EndHeights::*end) {
    const Project& project = session.project();
    const double now = (*(project.datum.*surface.ends)).*end;
    const std::string name = std::string(surface.name) + end_name;
    if (const auto typed = measure_row(ui, name.c_str(), label, now, project.unit, surface.why))
        change_project(session, surface.step, [&surface, end, typed](Project& changed) {
            (*(changed.datum.*surface.ends)).*end = *typed;
        });
}

/// Of the one that the marks are measured from.
void surface_rows(Ui& ui, desk::Session& session, const Surface& surface) {
    const bool there = (session.project().datum.*surface.ends).has_value();
    if (const auto on = switch_row(ui, surface.name, surface.label, there, surface.why))
        return change_project(
            session, surface.step,
            [&surface, on, ends = level_ends(session, surface)](Project& changed) {
                changed.datum.*surface.ends = *on ? std::optional(ends) : std::nullopt;
            });
    if (!there)
        return;
    end_row(ui, session, surface, "/left", surface.left_label, &EndHeights::left);
    end_row(ui, session, surface, "/right", "   right end", &EndHeights::right);
    hint(ui, hanging::slope_words(session.project()));
    ui.probe.note(std::string(surface.name) + "/words");
}

std::string step_words(double mm, units::LengthUnit unit) {
    if (mm > 0)
        return unit == units::LengthUnit::inch ? fmt::format("1/{:.0f} in", units::kMmPerInch / mm)
                                               : fmt::format("{:g} mm", mm);
    return unit == units::LengthUnit::inch ? "1/16 in, as usual" : "1 mm, as usual";
}

std::string level_words(double mm_in_a_metre, units::LengthUnit) {
    return fmt::format("± {:g} mm in 1 m", mm_in_a_metre);
}

/// A length of the style, mm, that is chosen from a few.
struct StyleChoice {
    const char* name;
    const char* label;
    double HangingStyle::*part;
    std::string (*words)(double, units::LengthUnit);
    const char* why;
};

constexpr StyleChoice kRuler{"hang/ruler", "The tape shows", &HangingStyle::ruler_step, step_words,
                             "The smallest step on your tape. Marks are rounded to it, all "
                             "together, so that gaps stay even."};
constexpr StyleChoice kLevel{"hang/level", "Spirit level", &HangingStyle::level_error, level_words,
                             "How true it is, as printed on it: 0.5 mm in a metre for a good one, "
                             "1 mm for a cheap one. Turn it round on the same line to see what "
                             "yours does."};

/// The value that it has is among those there are to choose from.
void choose_style(Ui& ui, desk::Session& session, const StyleChoice& choice,
                  std::vector<double> values) {
    const Project& project = session.project();
    const double now = project.style.*choice.part;
    auto at = std::ranges::find(values, now);
    if (at == values.end())
        at = values.insert(at, now);
    std::vector<std::string> shown;
    for (const double value : values)
        shown.push_back(choice.words(value, project.unit));
    const auto chosen = choice_row(ui, choice.name, choice.label,
                                   static_cast<int>(at - values.begin()), shown, choice.why);
    if (chosen)
        change_project(session, "Change what it is measured with",
                       [part = choice.part, value = values[static_cast<std::size_t>(*chosen)]](
                           Project& changed) { changed.style.*part = value; });
}

void tape_row(Ui& ui, desk::Session& session) {
    const std::vector<std::string> classes = spoken_names<wall::TapeClass>();
    const int now = static_cast<int>(session.project().tape);
    if (const auto tape = choice_row(
            ui, "hang/tape", "Tape class", now, classes,
            "Printed on the tape in an oval: Measuring Instruments Directive 2014/32/EU, Annex X."))
        change_project(session, "Change the tape",
                       [tape](Project& project) { project.tape = wall::TapeClass(*tape); });
}

void tool_rows(Ui& ui, desk::Session& session) {
    tape_row(ui, session);
    const std::vector<double> steps =
        session.project().unit == units::LengthUnit::inch
            ? std::vector{0.0, units::kMmPerInch / 32, units::kMmPerInch / 8}
            : std::vector{0.0, 0.5, 2.0, 5.0};
    choose_style(ui, session, kRuler, steps);
    choose_style(ui, session, kLevel, {0.2, 0.5, 1.0, 2.0});
}

}  // namespace

void datum_part(Ui& ui, desk::Session& session) {
    heading(ui, "Measured from");
    const std::vector<PieceId> offered = edges_offered(session.project());
    height_row(ui, session, offered);
    level_line_rows(ui, session);
    piece_row(ui, session, offered);
    side_row(ui, session);
    for (const Surface& surface : kSurfaces)
        if (surface.height == session.project().datum.height)
            surface_rows(ui, session, surface);
    if (section(ui, "hang/tools", "Tape and level", false))
        tool_rows(ui, session);
}

}  // namespace wallwright::app
