#include "cli/command.h"
#include "cli/findings_text.h"
#include "cli/json_out.h"
#include "cli/layout_out.h"
#include "cli/load.h"
#include "cli/text_table.h"
#include "wall/middle.h"

#include <fmt/format.h>

namespace wallwright::cli {

namespace {

std::string groups_text(const wall::Project& project, const rules::Assessment& assessment,
                        units::LengthUnit unit) {
    std::vector<std::vector<std::string>> rows;
    for (const spacing::Group& group : assessment.groups)
        rows.push_back({std::to_string(rows.size() + 1), std::to_string(group.pieces.size()),
                        units::format_number(group.bounds.left(), unit),
                        units::format_number(group.bounds.bottom(), unit),
                        units::format_number(group.bounds.width(), unit),
                        units::format_number(group.bounds.height(), unit),
                        units::format_number(wall::middle_above_floor(project, group.pieces), unit),
                        gaps_text(group, unit)});
    const std::string in(units::name_of(unit));
    return text_table({{"group"},
                       {"pieces", Side::right},
                       {"left " + in, Side::right},
                       {"bottom " + in, Side::right},
                       {"width " + in, Side::right},
                       {"height " + in, Side::right},
                       {"centre " + in, Side::right},
                       {"gaps"}},
                      rows);
}

Json json_of_groups(const wall::Project& project, const std::vector<spacing::Group>& groups) {
    Json all = Json::array();
    for (const spacing::Group& group : groups)
        all.push_back(json_of(project, group));
    return all;
}

Result<Answer> check(const Common& common) {
    const auto loaded = load(common);
    if (!loaded)
        return fail(loaded.error());
    const rules::Assessment assessment = assess(*loaded);
    const Status status = status_of(assessment.findings);
    if (common.json)
        return Answer{text_of({{"findings", json_of(assessment.findings)},
                               {"groups", json_of_groups(loaded->project, assessment.groups)}}),
                      loaded->aside, status};
    const std::string groups = assessment.groups.empty()
                                   ? "No piece is on the wall.\n"
                                   : groups_text(loaded->project, assessment, loaded->shown);
    return Answer{groups + "\n" + findings_text(assessment.findings), loaded->aside, status};
}

}  // namespace

void add_check(CLI::App& program, Chosen& chosen) {
    add_command<Common>(
        program.add_subcommand("check",
                               "What the wall's groups measure, and every rule that it breaks"),
        chosen, add_common, check);
}

}  // namespace wallwright::cli
