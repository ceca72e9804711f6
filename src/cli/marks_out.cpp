#include "cli/marks_out.h"

#include "cli/text_table.h"
#include "rules/stops.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::cli {

namespace {

using hanging::Mark;
using hanging::MarksTable;

bool has_stop(const rules::Assessment& assessment, const Mark& mark) {
    return !rules::stops_of(assessment, mark.piece).empty();
}

/// A column more where a mark is of a piece that has a stop.
bool any_stop(const rules::Assessment& assessment) {
    return std::ranges::any_of(assessment.marks.marks, [&assessment](const Mark& mark) {
        return has_stop(assessment, mark);
    });
}

std::vector<Column> mark_columns(const rules::Assessment& assessment, units::LengthUnit unit) {
    const MarksTable& table = assessment.marks;
    const std::string in(units::name_of(unit));
    const bool down = table.datum.height == wall::DatumHeight::ceiling;
    std::vector<Column> columns{{"mark", Side::right},
                                {"piece"},
                                {"what to mark"},
                                {fmt::format("across {}", in), Side::right},
                                {fmt::format("{} {}", down ? "down" : "up", in), Side::right},
                                {"expected error"}};
    if (any_stop(assessment))
        columns.insert(columns.begin(), {"!"});
    if (hanging::has_stages(table))
        columns.insert(columns.begin(), {"stage", Side::right});
    return columns;
}

std::string what_text(const Mark& mark, units::LengthUnit unit) {
    if (mark.kind != hanging::MarkKind::rail)
        return mark.what;
    return fmt::format("{}, {} of cord", mark.what, units::format_length(mark.cord, unit));
}

std::vector<std::string> mark_row(const Loaded& loaded, const Mark& mark) {
    const units::LengthUnit unit = loaded.shown;
    const bool rail = mark.kind == hanging::MarkKind::rail;
    return {std::to_string(mark.number),
            title_to_hang(loaded.project, mark.piece),
            what_text(mark, unit),
            units::format_number(mark.across, unit),
            rail ? "on the rail" : units::format_number(mark.up, unit),
            "+-" + units::format_tolerance(std::max(mark.across_error, mark.up_error), unit)};
}

std::string table_text(const Loaded& loaded, const rules::Assessment& assessment) {
    const MarksTable& table = assessment.marks;
    const bool stopped = any_stop(assessment);
    const bool staged = hanging::has_stages(table);
    std::vector<std::vector<std::string>> rows;
    for (const Mark& mark : table.marks) {
        rows.push_back(mark_row(loaded, mark));
        if (stopped)
            rows.back().insert(rows.back().begin(), has_stop(assessment, mark) ? "STOP" : "");
        if (staged)
            rows.back().insert(rows.back().begin(),
                               mark.stage > 0 ? std::to_string(mark.stage) : "now");
    }
    return text_table(mark_columns(assessment, loaded.shown), rows);
}

/// Which pieces must not go up as they are, and which have no mark.
std::vector<std::string> stop_sentences(const Loaded& loaded, const rules::Assessment& assessment) {
    std::vector<std::string> sentences;
    const wall::Project& project = loaded.project;
    const auto stopped = rules::stopped_pieces(project, assessment);
    if (!stopped.empty())
        sentences.push_back(fmt::format("Stop: see the findings on {} before you make {} marks.",
                                        titles_of(project, stopped),
                                        stopped.size() == 1 ? "its" : "their"));
    for (const wall::PieceId& piece : rules::unmarked_pieces(project, assessment))
        sentences.push_back(fmt::format("{} has no mark: {}", title_of(project, piece),
                                        rules::why_unmarked(project, assessment, piece)));
    return sentences;
}

/// From a line or a piece figures may be less than nothing.
std::string signs_text(const Loaded& loaded, const MarksTable& table) {
    const wall::DatumHeight height = table.datum.height;
    const auto is_on_rail = [](const Mark& mark) { return mark.kind == hanging::MarkKind::rail; };
    const bool is_signed =
        height == wall::DatumHeight::level_line || height == wall::DatumHeight::piece;
    if (!is_signed || std::ranges::all_of(table.marks, is_on_rail))
        return "";
    return hanging::how_to_measure(as_shown(loaded));
}

std::string checks_text(const Loaded& loaded, const MarksTable& table) {
    std::string text;
    for (const hanging::CheckMeasure& check : table.checks)
        text += fmt::format("{}{} to {}: {}", text.empty() ? "Check between marks: " : ", ",
                            check.from, check.to, units::format_number(check.length, loaded.shown));
    return text.empty() ? "" : fmt::format("{} ({}).", text, units::name_of(loaded.shown));
}

/// A level line is proposed neither to who has one nor for what hangs from a rail.
std::string line_text(const Loaded& loaded, const rules::Assessment& assessment) {
    const MarksTable& table = assessment.marks;
    const auto on_rail = [](const Mark& mark) { return mark.kind == hanging::MarkKind::rail; };
    if (table.datum.height == wall::DatumHeight::level_line ||
        std::ranges::all_of(table.marks, on_rail))
        return "";
    const double line = hanging::proposed_level_line(as_shown(loaded), assessment.hangings);
    return fmt::format("A level line would serve best {} above the floor (--datum level).",
                       units::format_length(line, loaded.shown));
}

Json json_of_datum(const Loaded& loaded, const wall::Datum& datum) {
    Json json{{"height", wall::name_of(datum.height)}, {"side", wall::name_of(datum.side)}};
    if (datum.height == wall::DatumHeight::level_line)
        json["level_line_mm"] = number(datum.level_line);
    if (datum.height == wall::DatumHeight::piece && datum.piece)
        json["piece"] = datum.piece->text;
    json["words"] = hanging::datum_words(as_shown(loaded));
    return json;
}

Json json_of_checks(const MarksTable& table) {
    Json checks = Json::array();
    for (const hanging::CheckMeasure& check : table.checks)
        checks.push_back(
            {{"from", check.from}, {"to", check.to}, {"length_mm", number(check.length)}});
    return checks;
}

Json json_of_gaps(const MarksTable& table) {
    Json gaps = Json::array();
    for (const hanging::GapForecast& gap : table.gaps)
        gaps.push_back({{"first", gap.first.text},
                        {"second", gap.second.text},
                        {"along", gap.across ? "across" : "up"},
                        {"gap_mm", number(gap.gap)},
                        {"spread_mm", number(gap.spread)}});
    return gaps;
}

Json json_of_chain(const hanging::ChainCompared& chain) {
    if (chain.marks < 3)
        return {};
    return {{"marks", chain.marks},
            {"from_datum_mm", number(chain.from_datum)},
            {"chain_likely_mm", number(chain.chain_likely)},
            {"chain_worst_mm", number(chain.chain_worst)}};
}

}  // namespace

std::string marks_text(const Loaded& loaded, const rules::Assessment& assessment) {
    const MarksTable& table = assessment.marks;
    const wall::Project shown = as_shown(loaded);
    std::string text = fmt::format("Marks, measured from {}:\n\n{}\n", hanging::datum_words(shown),
                                   table_text(loaded, assessment));
    for (const std::string& sentence : stop_sentences(loaded, assessment))
        text += sentence + "\n";
    for (const std::string& sentence :
         {signs_text(loaded, table), hanging::slope_words(shown),
          std::string(hanging::has_stages(table) ? "Mark and hang one stage at a time." : ""),
          checks_text(loaded, table), hanging::gaps_words(table, loaded.shown),
          hanging::chain_words(table.chain, loaded.shown), line_text(loaded, assessment)})
        if (!sentence.empty())
            text += sentence + "\n";
    return text;
}

void add_marks(Json& json, const Loaded& loaded, const rules::Assessment& assessment) {
    const MarksTable& table = assessment.marks;
    json["datum"] = json_of_datum(loaded, table.datum);
    json["step_mm"] = number(table.step);
    json["marks"] = json_of(table.marks);
    json["checks"] = json_of_checks(table);
    json["gaps"] = json_of_gaps(table);
    json["chain"] = json_of_chain(table.chain);
    json["rows"] = table.rows;
    json["proposed_level_line_mm"] =
        number(hanging::proposed_level_line(as_shown(loaded), assessment.hangings));
}

}  // namespace wallwright::cli
