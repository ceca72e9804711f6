#include "cli/command.h"
#include "cli/datum_choice.h"
#include "cli/findings_text.h"
#include "cli/json_out.h"
#include "cli/load.h"
#include "cli/marks_out.h"
#include "cli/text_table.h"
#include "hanging/verdict.h"
#include "pages/marks_csv.h"
#include "pages/render.h"
#include "pages/sheets.h"
#include "store/files.h"
#include "wall/titles.h"

#include <fmt/format.h>

namespace wallwright::cli {

namespace {

struct HangWords {
    Common common;
    bool csv = false;
    std::string datum;  ///< Empty for the project's own.
    std::string svg;    ///< Where the elevation goes; empty for nowhere.
};

std::string use_words(const hanging::Hanging& hanging) {
    if (hanging.fixings.empty())
        return "";
    if (verdict_on(hanging) == hanging::Verdict::does_not_hold)
        return hanging::kDoesNotHold;
    return fmt::format("{:.0f} %", 100 * hanging.use);
}

std::vector<std::string> load_row(const Loaded& loaded, const hanging::Hanging& hanging) {
    const units::LengthUnit unit = loaded.shown;
    const std::string count = fmt::format("{} x {}", hanging.fixings.size(), hanging.fixing_title);
    return {title_to_hang(loaded.project, hanging.piece),
            units::format_mass(hanging.mass.high, unit),
            hanging.fixings.empty() ? "none" : count,
            hanging.fixings.empty() ? "" : units::format_mass(hanging.fixings.front().rated, unit),
            use_words(hanging),
            hanging.fixings.empty() ? "" : fmt::format("{:.0f} %", 100 * limit_of(hanging)),
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
                       {"pull off wall", Side::right},
                       {"cord drop", Side::right}},
                      rows);
}

Json json_of_pieces(const wall::Project& project, const std::vector<hanging::Hanging>& hangings) {
    Json pieces = json_of(hangings);
    for (std::size_t i = 0; i < hangings.size(); ++i) {
        const wall::Piece* piece = find(project, hangings[i].piece);
        pieces[i]["wished"] = piece != nullptr && piece->wished;
    }
    return pieces;
}

Json json_of_assessment(const Loaded& loaded, const rules::Assessment& assessment) {
    Json json{{"pieces", json_of_pieces(loaded.project, assessment.hangings)}};
    add_marks(json, loaded, assessment);
    json["findings"] = json_of(assessment.findings);
    return json;
}

/// The project with the datum that was asked for.
Result<Loaded> load_for(const HangWords& words) {
    auto loaded = load(words.common);
    if (!loaded || words.datum.empty())
        return loaded;
    const auto datum = chosen_datum(words.datum, *loaded);
    if (!datum)
        return fail(datum.error());
    loaded->project.datum = *datum;
    return loaded;
}

/// The elevation with its marks; says that it is written.
Outcome write_svg(const HangWords& words, const rules::Assessment& assessment, Loaded& loaded) {
    const draw::PageDrawing page =
        pages::elevation_page(as_shown(loaded), assessment, loaded.folder);
    if (const auto saved = store::write_file(words.svg, pages::to_svg(page)); !saved)
        return fail(saved.error());
    loaded.aside += fmt::format("Wrote {}\n", words.svg);
    return {};
}

std::string printed(const HangWords& words, const Loaded& loaded,
                    const rules::Assessment& assessment) {
    if (words.common.json)
        return text_of(json_of_assessment(loaded, assessment));
    if (words.csv)
        return pages::marks_csv(loaded.project, assessment.marks);
    return fmt::format("{}\n{}\n{}", marks_text(loaded, assessment),
                       loads_text(loaded, assessment.hangings), findings_text(assessment.findings));
}

Result<Answer> hang(const HangWords& words) {
    auto loaded = load_for(words);
    if (!loaded)
        return fail(loaded.error());
    const rules::Assessment assessment = assess(*loaded);
    if (!words.svg.empty())
        if (const auto written = write_svg(words, assessment, *loaded); !written)
            return fail(written.error());
    return Answer{printed(words, *loaded, assessment), loaded->aside,
                  status_of(assessment.findings)};
}

void define(CLI::App& command, HangWords& words) {
    add_common(command, words.common);
    command.add_flag("--csv", words.csv, "Print the marks as CSV, in mm")->excludes("--json");
    command
        .add_option("--datum", words.datum,
                    "What marks are measured from, for this run: floor, ceiling, level (the line "
                    "that is proposed), a height such as 1450mm for a level line, or the id of a "
                    "piece that hangs; with \",left\" or \",right\" behind it")
        ->type_name("WORDS");
    command.add_option("--svg", words.svg, "Also draw the wall with its marks into this file")
        ->type_name("FILE");
}

}  // namespace

void add_hang(CLI::App& program, Chosen& chosen) {
    add_command<HangWords>(
        program.add_subcommand("hang", "The marks to make, and what each fixing has to carry"),
        chosen, define, hang);
}

}  // namespace wallwright::cli
