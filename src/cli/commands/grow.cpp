#include "arrange/grow.h"

#include "arrange/growth_end.h"
#include "cli/command.h"
#include "cli/findings_text.h"
#include "cli/layout_out.h"
#include "cli/load.h"
#include "cli/numbered.h"
#include "cli/save.h"
#include "cli/search.h"
#include "cli/target_words.h"
#include "cli/text_table.h"
#include "edits/wishes.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::cli {

namespace {

struct GrowWords {
    Common common;
    SearchWords search;
    std::string out;
    std::string toward;
    std::string stages;
    std::size_t per_stage = 1;
};

/// What the search gave, and the project with it.
struct Grown {
    arrange::Task task;
    arrange::Growth growth;
    arrange::GrowthEnd end;
    wall::Project project;
    std::string aside;
};

/// With the target that is asked for, or else its own.
Result<wall::Project> with_target(const GrowWords& words, const Loaded& loaded) {
    if (!words.toward.empty()) {
        auto target = read_target(words.toward, loaded.project, loaded.shown);
        return target ? edits::set_target(loaded.project, std::move(*target))
                      : fail(std::move(target.error()));
    }
    if (!loaded.project.target)
        return fail({words.common.file, "the project does not say toward what the group is to grow",
                     "give --toward a piece of furniture or a fixture, a corner like top_right, or "
                     "a point like 3800,1500",
                     ""});
    return loaded.project;
}

Outcome can_grow(const GrowWords& words, const wall::Project& project, const arrange::Task& task) {
    if (arrange::fixed_part(task).empty())
        return fail({words.common.file, "nothing is on the wall yet that could grow",
                     "arrange some pieces first: wallwright arrange", ""});
    if (arrange::free_items(task).empty())
        return fail(
            {words.common.file,
             fmt::format("no piece waits: all ({}) are on the wall", project.pieces.size()),
             "set \"state\": \"waiting\" in the file for those that are to join later, or take "
             "them "
             "down in the app; add those to come, or let wallwright suggest say which frame "
             "to buy",
             ""});
    return {};
}

Problem no_stage(const GrowWords& words, const arrange::GrowthEnd& end) {
    const std::string why = arrange::in_the_way_words(end);
    return {
        words.common.file,
        fmt::format("there is no place for any of the waiting pieces beside those on the wall{}{}",
                    why.empty() ? "" : ": ", why),
        "look whether furniture and fixtures are where they stand, or move what hangs", ""};
}

Result<Grown> search(const GrowWords& words, const Loaded& loaded, Watch& watch) {
    const auto aimed = with_target(words, loaded);
    if (!aimed)
        return fail(aimed.error());
    const wall::Project project = arrange::growth_start(*aimed);
    Grown grown{
        arrange::task_of(project, loaded.catalogue, arrange::Free::waiting_alone), {}, {}, {}, {}};
    if (auto can = can_grow(words, project, grown.task); !can)
        return fail(std::move(can.error()));
    arrange::GrowOptions options;
    set_search(options, words.search);
    options.per_stage = words.per_stage;
    grown.growth =
        arrange::grow(grown.task, arrange::place_of(project.room, *project.target).value(), options,
                      [&watch](double done) { return watch.go_on(done, ""); });
    grown.aside = watch.end();
    grown.end = arrange::end_of(project, grown.task, grown.growth);
    if (grown.growth.stages.empty())
        return fail(no_stage(words, grown.end));
    auto with = arrange::with_growth(project, grown.task, grown.growth);
    if (!with)
        return fail(std::move(with.error()));
    grown.project = std::move(*with);
    return grown;
}

int number_of(std::size_t index) {
    return 1 + static_cast<int>(index);
}

std::string finished_words(const arrange::Stage& stage) {
    return stage.finished ? fmt::format("{:.0f} %", 100 * *stage.finished) : "-";
}

/// What to say on standard error.
Result<std::string> write(const GrowWords& words, const Loaded& loaded, const Grown& grown) {
    if (auto saved = save(grown.project, loaded, words.out); !saved)
        return fail(std::move(saved.error()));
    const std::string wrote = fmt::format("Wrote {}\n", words.out);
    if (words.stages.empty())
        return wrote;
    Numbered stages{.name = "stage", .projects = {}, .are_stages = true};
    for (std::size_t i = 0; i < grown.growth.stages.size(); ++i)
        stages.projects.push_back(arrange::at_stage(grown.project, number_of(i)));
    auto all = write_numbered(words.stages, stages, loaded);
    return all ? Result<std::string>(wrote + *all) : all;
}

std::string hang_words(const wall::Project& project, const wall::PieceId& id) {
    const wall::Piece* piece = find(project, id);
    const bool wished = piece != nullptr && piece->wished;
    return title_of(project, id) + (wished ? " (to buy)" : "");
}

std::vector<std::string> row_of(const Grown& grown, std::size_t index, const wall::PieceId& id,
                                units::LengthUnit unit) {
    const arrange::Stage& stage = grown.growth.stages[index];
    const wall::Rect<wall::Wall> place =
        wall::place_of(grown.project, *find(grown.project, id)).value();
    const bool last = id == stage.adds.back();
    return {id == stage.adds.front() ? std::to_string(number_of(index)) : "",
            hang_words(grown.project, id),
            units::format_number(place.left(), unit),
            units::format_number(place.bottom(), unit),
            last ? finished_words(stage) : "",
            last ? units::format_number(stage.to_target, unit) : ""};
}

/// How the growth ends, and what is left.
std::string end_text(const Loaded& loaded, const Grown& grown) {
    const std::string stops =
        arrange::words_of(grown.end, grown.project, grown.growth, loaded.shown);
    std::string text = stops.empty() ? "" : "\n" + stops + "\n";
    if (grown.growth.left_out.empty())
        return text;
    const std::string titles = titles_of(loaded.project, grown.growth.left_out);
    return text + (grown.growth.cut_short
                       ? fmt::format("Stopped before there was a place for {}; waiting on the "
                                     "floor.\n",
                                     titles)
                       : fmt::format("No place for {}; waiting on the floor.\n", titles));
}

std::string text_of_grown(const Loaded& loaded, const Grown& grown) {
    const units::LengthUnit unit = loaded.shown;
    std::vector<std::vector<std::string>> rows;
    for (std::size_t i = 0; i < grown.growth.stages.size(); ++i)
        for (const wall::PieceId& id : grown.growth.stages[i].adds)
            rows.push_back(row_of(grown, i, id, unit));
    const std::string in(units::name_of(unit));
    std::string text = fmt::format("Toward {}, in the order to hang:\n\n",
                                   title_of(grown.project, *grown.project.target, unit)) +
                       text_table({{"stage"},
                                   {"hang"},
                                   {"left " + in, Side::right},
                                   {"bottom " + in, Side::right},
                                   {"finished", Side::right},
                                   {"still to go " + in, Side::right}},
                                  rows);
    text +=
        "\nleft is from the wall's left end, bottom from the floor; finished: the score of the "
        "wall "
        "after\nthe stage over the best found for the same pieces, - where there was no time to "
        "compare.\n";
    return text + end_text(loaded, grown);
}

Json json_of_stage(const Loaded& loaded, const Grown& grown, std::size_t index) {
    const arrange::Stage& stage = grown.growth.stages[index];
    const arrange::View view(grown.task, stage.layout);
    Json json = {{"number", number_of(index)}, {"adds", json_of_ids(stage.adds)}};
    if (stage.finished)
        json["finished"] = number(*stage.finished);
    json["to_target_mm"] = number(stage.to_target);
    json.update(json_of(stage.score, view, loaded.shown));
    json["pieces"] = json_of(grown.task, stage.layout);
    return json;
}

Json json_of_grown(const Loaded& loaded, const Grown& grown) {
    Json stages = Json::array();
    for (std::size_t i = 0; i < grown.growth.stages.size(); ++i)
        stages.push_back(json_of_stage(loaded, grown, i));
    return {{"toward", title_of(grown.project, *grown.project.target, loaded.shown)},
            {"stages", stages},
            {"says", arrange::words_of(grown.end, grown.project, grown.growth, loaded.shown)},
            {"in_the_way", grown.end.in_the_way ? Json(grown.end.in_the_way->title) : Json()},
            {"cut_short", grown.growth.cut_short},
            {"left_out", json_of_ids(grown.growth.left_out)}};
}

Result<Answer> run_grow(const GrowWords& words) {
    const auto loaded = load(words.common);
    if (!loaded)
        return fail(loaded.error());
    if (!words.stages.empty())
        if (auto made = make_folder(words.stages); !made)
            return fail(std::move(made.error()));
    Watch watch("Growing");
    const auto grown = search(words, *loaded, watch);
    if (!grown)
        return fail(grown.error());
    const auto wrote = write(words, *loaded, *grown);
    if (!wrote)
        return fail(wrote.error());
    const auto findings = rules::assess(grown->project, loaded->catalogue).findings;
    const std::string aside = loaded->aside + grown->aside + *wrote;
    if (words.common.json)
        return Answer{text_of(json_of_grown(*loaded, *grown)), aside, status_of(findings)};
    return Answer{text_of_grown(*loaded, *grown) + stops_text(findings), aside,
                  status_of(findings)};
}

void define(CLI::App& command, GrowWords& words) {
    add_common(command, words.common);
    command
        .add_option("-o,--out", words.out,
                    "Where the project with every stage planned goes; may be the same file")
        ->required()
        ->type_name("OUT.json");
    command
        .add_option(
            "--toward", words.toward,
            "Furniture or a fixture by its id or title, a corner (top_left, top_right, "
            "bottom_left, "
            "bottom_right), or a point like 3800,1500; kept in the project, whose own it is "
            "otherwise")
        ->type_name("TARGET");
    command.add_option("--per-stage", words.per_stage, "How many pieces go up at a time")
        ->check(CLI::Range(1, 1000))
        ->capture_default_str();
    command
        .add_option("--stages", words.stages,
                    "A folder for every stage: stage-1.json and a picture in which the new pieces "
                    "stand out, stage-1.png, and so on")
        ->type_name("FOLDER");
    add_search(command, words.search);
}

}  // namespace

void add_grow(CLI::App& program, Chosen& chosen) {
    add_command<GrowWords>(
        program.add_subcommand(
            "grow",
            "Plan how the waiting pieces join what hangs, stage by stage, toward a place on the "
            "wall; stages from before are planned anew, but for pinned pieces"),
        chosen, define, run_grow);
}

}  // namespace wallwright::cli
