#include "arrange/even_words.h"
#include "cli/command.h"
#include "cli/findings_text.h"
#include "cli/json_out.h"
#include "cli/load.h"
#include "cli/save.h"
#include "edits/edit.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <cmath>

namespace wallwright::cli {

namespace {

struct EvenWords {
    Common common;
    std::string gap;
    std::string out;
};

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
    return {{"moved", evened.moved.size()},
            {"farthest_mm", number(evened.farthest)},
            {"moved_squared_mm2", number(evened.result.moved_squared)},
            {"least_proved", evened.result.least_proved},
            {"uneven", uneven},
            {"blocked", blocked}};
}

/// "4 mm to the right and 12 mm up".
std::string way_words(geometry::Point<geometry::Wall> by, units::LengthUnit unit) {
    std::string words;
    const auto add = [&](double way, std::string_view forward, std::string_view back) {
        if (units::rounded(std::abs(way), unit) == 0)
            return;
        words += fmt::format("{}{} {}", words.empty() ? "" : " and ",
                             units::format_length(std::abs(way), unit), way > 0 ? forward : back);
    };
    add(by.x, "to the right", "to the left");
    add(by.y, "up", "down");
    return words.empty() ? "by less than the ruler shows" : words;
}

std::string moved_text(const arrange::EvenedWall& evened, units::LengthUnit unit) {
    if (evened.moved.empty())
        return "Nothing had to move.\n";
    std::string text;
    for (const arrange::Movement& one : evened.moved)
        text += fmt::format("{} moves {}\n", title_of(evened.project, one.piece),
                            way_words(one.by, unit));
    if (evened.result.least_proved && evened.result.uneven.empty())
        text += "No smaller movement gives these gaps and lines: proved.\n";
    return text;
}

std::string text_of_evened(const arrange::EvenedWall& evened, units::LengthUnit unit) {
    std::string text = moved_text(evened, unit);
    for (const std::string& sentence : arrange::shortfalls(evened, unit))
        text += sentence + "\n";
    if (evened.result.uneven.empty() && evened.result.blocked.empty())
        text += arrange::all_even_words(evened, unit) + "\n";
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
    if (const auto saved = save(evened->project, *loaded, words.out); !saved)
        return fail(saved.error());
    const rules::Assessment after = rules::assess(evened->project, loaded->catalogue);
    const Status status = status_of(after.findings);
    if (words.common.json)
        return Answer{text_of(json_of_evened(*evened)), loaded->aside, status};
    return Answer{text_of_evened(*evened, loaded->shown) + stops_text(after.findings),
                  loaded->aside + fmt::format("Wrote {}\n", words.out), status};
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
