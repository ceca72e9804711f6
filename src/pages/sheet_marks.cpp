#include "pages/sheet_marks.h"

#include "draw/letters.h"
#include "hanging/mark_words.h"
#include "pages/stop_notes.h"
#include "pages/strip_cards.h"
#include "pages/table.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <set>

namespace wallwright::pages {

namespace {

using draw::Align;
using draw::Ink;
using hanging::CheckMeasure;
using hanging::Mark;
using hanging::MarkKind;

constexpr Type kBody{2.2, false};
constexpr double kNumberSize = 2.7;  // mm: read at arm's length, with a tape in the other hand

/// "Up from the floor": words as the head of a column.
std::string head(std::string words) {
    words.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(words.front())));
    return words;
}

/// What is to be known about floor and ceiling before one measures from them.
std::string datum_advice(const wall::Project& project, const rules::Assessment& assessment) {
    const std::string slope = hanging::slope_words(project);
    const wall::DatumHeight height = assessment.marks.datum.height;
    const bool off_floor = height == wall::DatumHeight::floor;
    if (!slope.empty() || (!off_floor && height != wall::DatumHeight::ceiling))
        return slope;
    return fmt::format(
        "Nobody has measured whether the {} is level. Where it is not, or something is in the way, "
        "draw a level line and choose it as the datum: {} above the floor would serve best.",
        off_floor ? "floor" : "ceiling",
        units::format_length(hanging::proposed_level_line(project, assessment.hangings),
                             project.unit));
}

/// What leaves the error of the table's column, and what it comes to.
std::string error_words(const wall::Project& project, const hanging::MarksTable& marks) {
    const bool level = marks.datum.height == wall::DatumHeight::level_line ||
                       marks.datum.height == wall::DatumHeight::piece ||
                       !hanging::slope_words(project).empty();
    std::string words =
        fmt::format("Error: what a tape of class {}{} and a pencil leave open, to either side.",
                    wall::name_of(project.tape), level ? ", the level" : "");
    for (const std::string& more : {hanging::gaps_words(marks, project.unit),
                                    hanging::chain_words(marks.chain, project.unit)})
        if (!more.empty())
            words += " " + more;
    return words;
}

bool any(const std::vector<Mark>& marks, MarkKind kind) {
    return std::any_of(marks.begin(), marks.end(),
                       [kind](const Mark& mark) { return mark.kind == kind; });
}

void add_paragraph(Flow& flow, const std::string& text, const Type& type = kBody) {
    constexpr double kAfter = 0.6;  // mm
    flow.add_text(text, type);
    flow.advance(kAfter);
}

/// Only on walls that grow, or that have frames to buy.
void add_what_can_wait(Flow& flow, const wall::Project& project, const hanging::MarksTable& table) {
    constexpr Type kFirst{2.2, true};
    if (hanging::has_stages(table))
        add_paragraph(
            flow,
            "The wall grows in stages: mark and hang one stage, and leave the next until then.",
            kFirst);
    const auto is_wished = [&project](const Mark& mark) {
        const wall::Piece* piece = wall::find(project, mark.piece);
        return piece != nullptr && piece->wished;
    };
    if (std::ranges::any_of(table.marks, is_wished))
        add_paragraph(
            flow,
            "Not bought yet: its marks hold for the size that is planned; measure the frame "
            "before you make them.",
            kFirst);
}

/// What the marked pieces hang on, each kind once.
std::set<wall::FixingKind> kinds_of(const rules::Assessment& assessment) {
    std::set<wall::FixingKind> kinds;
    for (const Mark& mark : assessment.marks.marks)
        for (const hanging::Hanging& hanging : assessment.hangings)
            if (hanging.piece == mark.piece)
                kinds.insert(hanging.fixings.front().kind);
    return kinds;
}

bool has_cord(const rules::Assessment& assessment, const Mark& mark) {
    return mark.kind == MarkKind::rail ||
           std::ranges::any_of(assessment.hangings, [&mark](const hanging::Hanging& hanging) {
               return hanging.piece == mark.piece && hanging.cord.has_value();
           });
}

/// Only those of the kinds of marks that there are.
void add_kinds(Flow& flow, const rules::Assessment& assessment) {
    const std::vector<Mark>& marks = assessment.marks.marks;
    for (const wall::FixingKind kind : kinds_of(assessment))
        if (const std::string words = hanging::seat_words(kind); !words.empty())
            add_paragraph(flow, words);
    if (any(marks, MarkKind::corner))
        add_paragraph(
            flow,
            "Corner: the mark is the top corner of the frame itself; how its strips sit is shown "
            "below the table.");
    if (std::ranges::any_of(marks,
                            [&assessment](const Mark& mark) { return has_cord(assessment, mark); }))
        add_paragraph(flow,
                      "Cords stretch: hang the piece, let it settle, measure its top edge again.");
}

/// Along the rail alone there is nothing to measure upright.
void add_how_to_measure(Flow& flow, const wall::Project& project,
                        const rules::Assessment& assessment) {
    const hanging::MarksTable& table = assessment.marks;
    if (!any(table.marks, MarkKind::hook) && !any(table.marks, MarkKind::corner))
        return add_paragraph(
            flow, head(hanging::across_words(table.datum)) + ": level, along the picture rail.");
    add_paragraph(flow, hanging::how_to_measure(project));
    if (const std::string advice = datum_advice(project, assessment); !advice.empty())
        add_paragraph(flow, advice);
}

void add_instructions(Flow& flow, const wall::Project& project,
                      const rules::Assessment& assessment) {
    const hanging::MarksTable& table = assessment.marks;
    add_what_can_wait(flow, project, table);
    add_paragraph(
        flow,
        fmt::format("Measure every mark from {}, never from piece to piece, so that errors do not "
                    "add up. The numbers follow the order of hanging: from the middle of the "
                    "lowest row outward, each piece next to one that is up.",
                    hanging::datum_words(project)));
    add_how_to_measure(flow, project, assessment);
    add_kinds(flow, assessment);
    add_paragraph(
        flow, fmt::format("Figures are in steps of {}, rounded together so that gaps stay even.",
                          units::format_length(table.step, project.unit)));
    add_paragraph(flow, error_words(project, table));
    flow.advance(2);
}

/// The check measures that end at this mark.
std::string check_words(const std::vector<CheckMeasure>& checks, const Mark& mark,
                        units::LengthUnit unit) {
    std::string words;
    for (const CheckMeasure& check : checks)
        if (check.to == mark.number)
            words += fmt::format("{}to\u00A0{}:\u00A0{}", words.empty() ? "" : "; ", check.from,
                                 units::format_number(check.length, unit));
    return words;
}

/// "hook, 30 below the frame's top": what to hold against the frame before the nail goes in.
std::string what_words(const Mark& mark, units::LengthUnit unit) {
    if (mark.kind == MarkKind::corner)
        return mark.what;
    if (mark.kind == MarkKind::rail)
        return fmt::format("{}, cord\u00A0{}", mark.what, units::format_number(mark.cord, unit));
    return fmt::format("{}, {}\u00A0below\u00A0the\u00A0top{}", mark.what,
                       units::format_number(mark.below_top, unit),
                       mark.assumed ? " (assumed: measure)" : "");
}

std::string stage_words(int stage) {
    return stage > 0 ? fmt::format("Stage {}", stage) : "Before the first stage";
}

Words up_cell(const Mark& mark, units::LengthUnit unit) {
    if (mark.kind == MarkKind::rail)
        return Words{"on the rail"};
    return Words{units::format_number(mark.up, unit), true, Ink::text, kNumberSize};
}

/// Its name in the first of its rows, with its stop.
Cell piece_cell(const wall::Project& project, const rules::Assessment& assessment, const Mark& mark,
                bool joined) {
    if (joined)
        return Words{};
    Words name{fmt::format("{}  {}", draw::letter_of(project, mark.piece),
                           wall::title_to_hang(project, mark.piece)),
               true};
    std::string stop = stop_words(assessment, mark.piece);
    if (stop.empty())
        return name;
    return Stopped{std::move(name), std::move(stop)};
}

Row mark_row(const wall::Project& project, const rules::Assessment& assessment, const Mark& mark,
             bool joined) {
    const units::LengthUnit unit = project.unit;
    const double error = std::max(mark.across_error, mark.up_error);
    return {{TickBox{}, Words{std::to_string(mark.number), true, Ink::mark, kNumberSize},
             piece_cell(project, assessment, mark, joined), Words{what_words(mark, unit)},
             Words{units::format_number(mark.across, unit), true, Ink::text, kNumberSize},
             up_cell(mark, unit),
             Words{"± " + units::format_tolerance(error, unit), false, Ink::quiet_text},
             Words{check_words(assessment.marks.checks, mark, unit)}},
            joined};
}

/// With a heading over each stage where there are any.
Table marks_table(const wall::Project& project, const rules::Assessment& assessment) {
    const hanging::MarksTable& marks = assessment.marks;
    const units::LengthUnit unit = project.unit;
    const std::string unit_name(units::name_of(unit));
    Table table;
    table.columns = {{"Done", 11, Align::centre},
                     {"Mark", 11, Align::right},
                     {"Piece", 0, Align::left},
                     {"What to mark", 34, Align::left},
                     {fmt::format("{}, {}", head(hanging::across_words(marks.datum)), unit_name),
                      25, Align::right},
                     {fmt::format("{}, {}", head(hanging::up_words(marks.datum.height)), unit_name),
                      25, Align::right},
                     {"Error", 16, Align::right},
                     {"Check: straight to mark, " + unit_name, 30, Align::left}};
    const bool staged = hanging::has_stages(marks);
    const Mark* last = nullptr;
    for (const Mark& mark : marks.marks) {
        if (staged && (last == nullptr || last->stage != mark.stage))
            table.rows.push_back({{}, false, stage_words(mark.stage)});
        const bool joined = last != nullptr && last->piece == mark.piece;
        table.rows.push_back(mark_row(project, assessment, mark, joined));
        last = &mark;
    }
    return table;
}

}  // namespace

std::vector<draw::PageDrawing> mark_sheets(const wall::Project& project,
                                           const rules::Assessment& assessment,
                                           const SheetOptions& options) {
    Flow flow({options.paper,
               false,
               project.title,
               "Marks",
               {{"lengths in", std::string(units::name_of(project.unit))}}});
    add_stop_notes(flow, project, assessment);
    if (assessment.marks.marks.empty()) {
        flow.add_text("No piece is planned that has a fixing, so there is nothing to mark.",
                      {2.5, false});
        return flow.take();
    }
    add_instructions(flow, project, assessment);
    add_table(flow, marks_table(project, assessment));
    add_strip_cards(flow, project, assessment);
    return flow.take();
}

}  // namespace wallwright::pages
