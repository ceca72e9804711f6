#include "base/contract.h"
#include "cli/command.h"
#include "cli/findings_text.h"
#include "cli/json_out.h"
#include "cli/load.h"
#include "cli/text_table.h"
#include "pages/marks_csv.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::cli {

namespace {

struct HangWords {
    Common common;
    bool csv = false;
};

std::string datum_text(const wall::Datum& datum, units::LengthUnit unit) {
    const std::string side = fmt::format("the wall's {} end", wall::name_of(datum.side));
    switch (datum.height) {
        case wall::DatumHeight::floor:
            return fmt::format("across from {}, up from the floor", side);
        case wall::DatumHeight::ceiling:
            return fmt::format("across from {}, down from the ceiling", side);
        case wall::DatumHeight::level_line:
            return fmt::format("across from {}, up from a level line {} above the floor", side,
                               units::format_length(datum.level_line, unit));
    }
    broken_contract("every datum has its words", __FILE__, __LINE__);
}

std::vector<Column> mark_columns(const hanging::MarksTable& table, units::LengthUnit unit) {
    const std::string in(units::name_of(unit));
    const bool down = table.datum.height == wall::DatumHeight::ceiling;
    std::vector<Column> columns{{"mark", Side::right},
                                {"piece"},
                                {"what to mark"},
                                {fmt::format("across {}", in), Side::right},
                                {fmt::format("{} {}", down ? "down" : "up", in), Side::right},
                                {"expected error"}};
    if (hanging::has_stages(table))
        columns.insert(columns.begin(), {"stage", Side::right});
    return columns;
}

std::string marks_text(const Loaded& loaded, const hanging::MarksTable& table) {
    const units::LengthUnit unit = loaded.shown;
    const bool staged = hanging::has_stages(table);
    std::vector<std::vector<std::string>> rows;
    for (const hanging::Mark& mark : table.marks) {
        rows.push_back(
            {std::to_string(mark.number), title_to_hang(loaded.project, mark.piece), mark.what,
             units::format_number(mark.across, unit), units::format_number(mark.up, unit),
             "+-" + units::format_tolerance(std::max(mark.across_error, mark.up_error), unit)});
        if (staged)
            rows.back().insert(rows.back().begin(),
                               mark.stage > 0 ? fmt::format("{}", mark.stage) : "now");
    }
    return fmt::format("Marks, {}:\n\n{}{}", datum_text(table.datum, unit),
                       text_table(mark_columns(table, unit), rows),
                       staged ? "\nMark and hang one stage at a time.\n" : "");
}

std::string checks_text(const Loaded& loaded, const hanging::MarksTable& table) {
    std::string text;
    for (const hanging::CheckMeasure& check : table.checks)
        text += fmt::format("{}{} to {}: {}", text.empty() ? "Check between marks: " : ", ",
                            check.from, check.to, units::format_number(check.length, loaded.shown));
    return text.empty() ? "" : text + fmt::format(" ({})\n", units::name_of(loaded.shown));
}

std::vector<std::string> load_row(const Loaded& loaded, const hanging::Hanging& hanging) {
    const units::LengthUnit unit = loaded.shown;
    const std::string count = fmt::format("{} x {}", hanging.fixings.size(), hanging.fixing_title);
    return {title_to_hang(loaded.project, hanging.piece),
            units::format_mass(hanging.mass.high, unit),
            hanging.fixings.empty() ? "none" : count,
            hanging.fixings.empty() ? "" : units::format_mass(hanging.fixings.front().rated, unit),
            hanging.fixings.empty() ? "" : fmt::format("{:.0f} %", 100 * hanging.use),
            hanging.fixings.empty() ? "" : fmt::format("{:.0f} %", 100 / hanging.margin),
            hanging.top_pull ? units::format_force(*hanging.top_pull, unit) : "",
            hanging.cord ? units::format_length(hanging.cord->drop, unit) : ""};
}

std::string loads_text(const Loaded& loaded, const std::vector<hanging::Hanging>& hangings) {
    std::vector<std::vector<std::string>> rows;
    for (const hanging::Hanging& hanging : hangings)
        rows.push_back(load_row(loaded, hanging));
    return text_table({{"piece"},
                       {"weight at most", Side::right},
                       {"fixings"},
                       {"rated each", Side::right},
                       {"in use", Side::right},
                       {"limit", Side::right},
                       {"pull at top", Side::right},
                       {"cord drop", Side::right}},
                      rows);
}

Json json_of_checks(const hanging::MarksTable& table) {
    Json checks = Json::array();
    for (const hanging::CheckMeasure& check : table.checks)
        checks.push_back(
            {{"from", check.from}, {"to", check.to}, {"length_mm", number(check.length)}});
    return checks;
}

Json json_of_pieces(const wall::Project& project, const std::vector<hanging::Hanging>& hangings) {
    Json pieces = json_of(hangings);
    for (std::size_t i = 0; i < hangings.size(); ++i) {
        const wall::Piece* piece = find(project, hangings[i].piece);
        pieces[i]["wished"] = piece != nullptr && piece->wished;
    }
    return pieces;
}

Json json_of_assessment(const wall::Project& project, const rules::Assessment& assessment) {
    return {{"pieces", json_of_pieces(project, assessment.hangings)},
            {"datum",
             {{"height", wall::name_of(assessment.marks.datum.height)},
              {"side", wall::name_of(assessment.marks.datum.side)}}},
            {"marks", json_of(assessment.marks.marks)},
            {"checks", json_of_checks(assessment.marks)},
            {"findings", json_of(assessment.findings)}};
}

Result<Answer> hang(const HangWords& words) {
    const auto loaded = load(words.common);
    if (!loaded)
        return fail(loaded.error());
    const rules::Assessment assessment = assess(*loaded);
    const Status status = status_of(assessment.findings);
    if (words.common.json)
        return Answer{text_of(json_of_assessment(loaded->project, assessment)), loaded->aside,
                      status};
    if (words.csv)
        return Answer{pages::marks_csv(loaded->project, assessment.marks), loaded->aside, status};
    return Answer{marks_text(*loaded, assessment.marks) + "\n" +
                      checks_text(*loaded, assessment.marks) + "\n" +
                      loads_text(*loaded, assessment.hangings) + "\n" +
                      findings_text(assessment.findings),
                  loaded->aside, status};
}

void define(CLI::App& command, HangWords& words) {
    add_common(command, words.common);
    command.add_flag("--csv", words.csv, "Print the marks as CSV, in mm")->excludes("--json");
}

}  // namespace

void add_hang(CLI::App& program, Chosen& chosen) {
    add_command<HangWords>(
        program.add_subcommand("hang", "The marks to make, and what each fixing has to carry"),
        chosen, define, hang);
}

}  // namespace wallwright::cli
