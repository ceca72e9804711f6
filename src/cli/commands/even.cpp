#include "arrange/even_wall.h"
#include "cli/command.h"
#include "cli/findings_text.h"
#include "cli/json_out.h"
#include "cli/load.h"
#include "edits/edit.h"
#include "store/files.h"
#include "store/json_project.h"

#include <fmt/format.h>

namespace wallwright::cli {

namespace {

struct EvenWords {
    Common common;
    std::string gap;
    std::string out;
};

std::string list_of(const std::vector<std::string>& phrases) {
    std::string text;
    for (const std::string& phrase : phrases)
        text += (text.empty() ? "" : "; ") + phrase;
    return text;
}

Json json_of_uneven(const spacing::UnevenGap& uneven) {
    return {{"first", uneven.gap.first.text},
            {"second", uneven.gap.second.text},
            {"axis", uneven.gap.axis == spacing::Axis::horizontal ? "horizontal" : "vertical"},
            {"gap_mm", number(uneven.gap.size)},
            {"because", uneven.because}};
}

Json json_of_evened(const arrange::EvenedWall& evened) {
    Json uneven = Json::array();
    for (const spacing::UnevenGap& one : evened.result.uneven)
        uneven.push_back(json_of_uneven(one));
    Json blocked = Json::array();
    for (const auto& [piece, by] : evened.result.blocked)
        blocked.push_back({{"piece", piece.text}, {"by", by}});
    return {{"moved", evened.moved},
            {"farthest_mm", number(evened.farthest)},
            {"moved_squared_mm2", number(evened.result.moved_squared)},
            {"least_proved", evened.result.least_proved},
            {"uneven", uneven},
            {"blocked", blocked}};
}

std::string moved_text(const arrange::EvenedWall& evened, units::LengthUnit unit) {
    if (evened.moved == 0)
        return "Nothing had to move.\n";
    return fmt::format("Moved {} {}, the farthest by {}.{}\n", evened.moved,
                       evened.moved == 1 ? "piece" : "pieces",
                       units::format_length(evened.farthest, unit),
                       evened.result.least_proved ? " No smaller movement would do: proved." : "");
}

std::string text_of_evened(const arrange::EvenedWall& evened, units::LengthUnit unit) {
    std::string text = moved_text(evened, unit);
    for (const spacing::UnevenGap& one : evened.result.uneven)
        text += fmt::format("The gap between {} and {} stays {}: {}.\n", one.gap.first.text,
                            one.gap.second.text, units::format_length(one.gap.size, unit),
                            list_of(one.because));
    for (const auto& [piece, by] : evened.result.blocked)
        text += fmt::format("{} cannot get clear of {}.\n", piece.text, by);
    if (evened.result.uneven.empty() && evened.result.blocked.empty())
        text += fmt::format("Every gap between neighbours is {}.\n",
                            units::format_length(evened.project.style.gap, unit));
    return text;
}

Result<wall::Project> with_wanted_gap(const wall::Project& project, const std::string& gap,
                                      units::LengthUnit unit) {
    if (gap.empty())
        return project;
    const auto mm = units::parse_size(gap, unit);
    return mm ? edits::set_gap(project, *mm) : fail(within("--gap", mm.error()));
}

Result<Answer> even(const EvenWords& words) {
    const auto loaded = load(words.common);
    if (!loaded)
        return fail(loaded.error());
    const auto wanted = with_wanted_gap(loaded->project, words.gap, loaded->shown);
    if (!wanted)
        return fail(wanted.error());
    const auto evened = arrange::even_wall(*wanted);
    if (!evened)
        return fail(evened.error());
    if (const auto saved = store::write_file(words.out, store::write_project(evened->project));
        !saved)
        return fail(saved.error());
    if (words.common.json)
        return Answer{text_of(json_of_evened(*evened)), "", Status::fine};
    return Answer{text_of_evened(*evened, loaded->shown), fmt::format("Wrote {}\n", words.out),
                  Status::fine};
}

void define(CLI::App& command, EvenWords& words) {
    add_common(command, words.common);
    command
        .add_option("-o,--out", words.out, "Where the evened project goes; may be the same file")
        ->required()
        ->type_name("OUT.json");
    command
        .add_option("--gap", words.gap,
                    "The wanted gap, kept in the project; otherwise the project's own")
        ->type_name("LENGTH");
}

}  // namespace

void add_even(CLI::App& program, Chosen& chosen) {
    add_command<EvenWords>(
        program.add_subcommand("even",
                               "Move planned pieces as little as it takes to make the gaps even"),
        chosen, define, even);
}

}  // namespace wallwright::cli
