#include "pages/sheet_marks.h"

#include "draw/letters.h"
#include "pages/strip_cards.h"
#include "pages/table.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::pages {

namespace {

using draw::Align;
using draw::Ink;
using hanging::CheckMeasure;
using hanging::Mark;
using hanging::MarkKind;

constexpr double kNumberSize = 2.7;  // mm: read at arm's length, with a tape in the other hand

std::string up_head(const wall::Project& project) {
    switch (project.datum.height) {
        case wall::DatumHeight::floor:
            return "Up from the floor";
        case wall::DatumHeight::ceiling:
            return "Down from the ceiling";
        case wall::DatumHeight::level_line:
            return "Up from the level line";
    }
    return "";
}

std::string how_to_measure(const wall::Project& project) {
    const std::string side =
        fmt::format("Across: level, from the {} corner. ", wall::name_of(project.datum.side));
    switch (project.datum.height) {
        case wall::DatumHeight::floor:
            return side +
                   "Up: plumb, from the floor right below the mark; where the floor slopes or "
                   "furniture is in the way, draw a level line and choose it as the datum.";
        case wall::DatumHeight::ceiling:
            return side + "Down: plumb, from the ceiling right above the mark.";
        case wall::DatumHeight::level_line:
            return side + fmt::format(
                              "Up: plumb, from a level line that you draw first, {} above the "
                              "wall's lowest floor; a minus is below it.",
                              units::format_length(project.datum.level_line, project.unit));
    }
    return side;
}

bool any(const std::vector<Mark>& marks, MarkKind kind) {
    return std::any_of(marks.begin(), marks.end(),
                       [kind](const Mark& mark) { return mark.kind == kind; });
}

/// Only on walls that grow, or that have frames to buy.
void add_what_can_wait(Flow& flow, const wall::Project& project, const hanging::MarksTable& table) {
    constexpr Type kBody{2.2, true};
    if (hanging::has_stages(table))
        flow.add_text(
            "The wall grows in stages: mark and hang one stage, and leave the next until then.",
            kBody);
    const auto is_wished = [&project](const Mark& mark) {
        const wall::Piece* piece = wall::find(project, mark.piece);
        return piece != nullptr && piece->wished;
    };
    if (std::ranges::any_of(table.marks, is_wished))
        flow.add_text(
            "Not bought yet: its marks hold for the size that is planned; measure the frame "
            "before you make them.",
            kBody);
}

void add_instructions(Flow& flow, const wall::Project& project, const hanging::MarksTable& table) {
    constexpr Type kBody{2.2, false};
    const std::vector<Mark>& marks = table.marks;
    add_what_can_wait(flow, project, table);
    flow.add_text(
        "Measure every mark from the same place, never from piece to piece, so that errors do not "
        "add up. The numbers follow the order of hanging: from the middle of the lowest row "
        "outward, each piece next to one that is up.",
        kBody);
    flow.add_text(how_to_measure(project), kBody);
    if (any(marks, MarkKind::hook))
        flow.add_text(
            "Hook or screw: the mark is where the ring or the cord comes to rest, which is lower "
            "than the nail.",
            kBody);
    if (any(marks, MarkKind::corner))
        flow.add_text(
            "Corner: the mark is the top corner of the frame itself; how its strips sit is shown "
            "below the table.",
            kBody);
    flow.add_text(
        fmt::format("Error: what a tape of class {} and a pencil leave open, to either side.",
                    wall::name_of(project.tape)),
        kBody);
    flow.advance(3);
}

/// The check measures that end at this mark.
std::string check_words(const std::vector<CheckMeasure>& checks, const Mark& mark,
                        units::LengthUnit unit) {
    std::string words;
    for (const CheckMeasure& check : checks)
        if (check.to == mark.number)
            words += fmt::format("{}{} and {}: {}", words.empty() ? "" : "; ", check.from, check.to,
                                 units::format_number(check.length, unit));
    return words;
}

/// "hook, 30 below the frame's top": what to hold against the frame before the nail goes in.
std::string what_words(const Mark& mark, units::LengthUnit unit) {
    if (mark.kind == MarkKind::corner)
        return mark.what;
    return fmt::format("{}, {} below the top{}", mark.what,
                       units::format_number(mark.below_top, unit),
                       mark.assumed ? " (assumed: measure)" : "");
}

std::string stage_words(int stage) {
    return stage > 0 ? fmt::format("Stage {}", stage) : "Before the first stage";
}

Row mark_row(const wall::Project& project, const hanging::MarksTable& marks, const Mark& mark,
             bool joined) {
    const units::LengthUnit unit = project.unit;
    const std::string name = fmt::format("{}  {}", draw::letter_of(project, mark.piece),
                                         wall::title_to_hang(project, mark.piece));
    const double error = std::max(mark.across_error, mark.up_error);
    return {{TickBox{}, Words{std::to_string(mark.number), true, Ink::mark, kNumberSize},
             Words{joined ? "" : name, true}, Words{what_words(mark, unit)},
             Words{units::format_number(mark.across, unit), true, Ink::text, kNumberSize},
             Words{units::format_number(mark.up, unit), true, Ink::text, kNumberSize},
             Words{"± " + units::format_tolerance(error, unit), false, Ink::quiet_text},
             Words{check_words(marks.checks, mark, unit)}},
            joined};
}

/// With a heading over each stage where there are any.
Table marks_table(const wall::Project& project, const hanging::MarksTable& marks) {
    const units::LengthUnit unit = project.unit;
    const std::string unit_name(units::name_of(unit));
    Table table;
    table.columns = {
        {"Done", 11, Align::centre},
        {"Mark", 11, Align::right},
        {"Piece", 0, Align::left},
        {"What to mark", 34, Align::left},
        {fmt::format("Across from the {} corner, {}", wall::name_of(project.datum.side), unit_name),
         25, Align::right},
        {fmt::format("{}, {}", up_head(project), unit_name), 25, Align::right},
        {"Error", 16, Align::right},
        {"Check: straight between, " + unit_name, 30, Align::left}};
    const bool staged = hanging::has_stages(marks);
    const Mark* last = nullptr;
    for (const Mark& mark : marks.marks) {
        if (staged && (last == nullptr || last->stage != mark.stage))
            table.rows.push_back({{}, false, stage_words(mark.stage)});
        const bool joined = last != nullptr && last->piece == mark.piece;
        table.rows.push_back(mark_row(project, marks, mark, joined));
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
    const hanging::MarksTable& marks = assessment.marks;
    if (marks.marks.empty()) {
        flow.add_text("No piece is planned that has a fixing, so there is nothing to mark.",
                      {2.5, false});
        return flow.take();
    }
    add_instructions(flow, project, marks);
    add_table(flow, marks_table(project, marks));
    add_strip_cards(flow, project, assessment);
    return flow.take();
}

}  // namespace wallwright::pages
