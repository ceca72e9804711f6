#include "arrange/arrange.h"

#include "cli/command.h"
#include "cli/findings_text.h"
#include "cli/layout_out.h"
#include "cli/load.h"
#include "cli/numbered.h"
#include "cli/save.h"
#include "cli/search.h"
#include "cli/text_table.h"
#include "wall/middle.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::cli {

namespace {

struct ArrangeWords {
    Common common;
    SearchWords search;
    std::string out;
    std::string all;
    std::size_t layouts = 5;
    std::string pattern = "any";
};

/// What the search gave, and the project with each of its layouts.
struct Arranged {
    arrange::Task task;
    std::vector<arrange::Candidate> layouts;
    std::vector<wall::Project> projects;
    std::vector<std::vector<wall::Finding>> findings;  ///< Of each project.
    std::string aside;
};

std::string pattern_names() {
    std::string names = "any";
    for (const std::string_view name : wall::Names<arrange::Pattern>::values)
        names += fmt::format(", {}", name);
    return names;
}

Result<arrange::ArrangeOptions> options_of(const ArrangeWords& words) {
    arrange::ArrangeOptions options;
    set_search(options, words.search);
    options.layouts = words.layouts;
    options.pattern = wall::with_name<arrange::Pattern>(words.pattern);
    if (!options.pattern && words.pattern != "any")
        return fail({"--pattern", fmt::format("\"{}\" is no pattern", words.pattern),
                     "use one of " + pattern_names(), ""});
    return options;
}

Problem nothing_to_arrange(const ArrangeWords& words, const wall::Project& project) {
    if (project.pieces.empty())
        return {words.common.file, "there is no piece to arrange",
                "add some in the app, or with wallwright new --frames", ""};
    return {
        words.common.file,
        fmt::format("there is nothing to arrange: all pieces ({}) hang or are pinned",
                    project.pieces.size()),
        "call those that may move planned or waiting; wallwright suggest says which frame would "
        "go with what hangs",
        ""};
}

Problem no_layout(const ArrangeWords& words, const Watch& watch) {
    if (watch.stopped())
        return {words.common.file, "stopped before there was any layout", "give it more time", ""};
    const bool any = words.pattern == "any";
    return {words.common.file,
            any ? "there is no room on the wall for any of the pieces"
                : fmt::format("these pieces make no {} on this wall", words.pattern),
            any ? "look whether furniture and fixtures are where they stand, and at the wishes"
                : "let --pattern any choose",
            ""};
}

std::string best_words(const arrange::Progress& progress) {
    return progress.best.empty()
               ? ""
               : fmt::format("best {}", points(progress.best.front().score.total));
}

Result<Arranged> search(const ArrangeWords& words, const Loaded& loaded, Watch& watch) {
    const auto options = options_of(words);
    if (!options)
        return fail(options.error());
    Arranged arranged{
        arrange::task_of(loaded.project, loaded.catalogue, arrange::Free::all_unfixed),
        {},
        {},
        {},
        {}};
    if (arrange::free_items(arranged.task).empty())
        return fail(nothing_to_arrange(words, loaded.project));
    arranged.layouts =
        arrange::arrange(arranged.task, *options, [&watch](const arrange::Progress& progress) {
            return watch.go_on(progress.done, best_words(progress));
        });
    arranged.aside = watch.end();
    if (arranged.layouts.empty())
        return fail(no_layout(words, watch));
    for (const arrange::Candidate& one : arranged.layouts) {
        auto project = arrange::with_layout(loaded.project, arranged.task, one.layout);
        if (!project)
            return fail(std::move(project.error()));
        arranged.findings.push_back(rules::assess(*project, loaded.catalogue).findings);
        arranged.projects.push_back(std::move(*project));
    }
    return arranged;
}

/// What to say on standard error.
Result<std::string> write(const ArrangeWords& words, const Loaded& loaded,
                          const Arranged& arranged) {
    if (auto saved = save(arranged.projects.front(), loaded, words.out); !saved)
        return fail(std::move(saved.error()));
    const std::string wrote = fmt::format("Wrote {}\n", words.out);
    if (words.all.empty())
        return wrote;
    auto all = write_numbered(
        words.all, {.name = "layout", .projects = arranged.projects, .are_stages = false}, loaded);
    return all ? Result<std::string>(wrote + *all) : all;
}

/// Of those that hold a piece that was arranged the one with most.
spacing::Group main_group(const wall::Project& project, const arrange::Task& task) {
    const auto groups =
        spacing::find_groups(wall::placed_pieces(project), spacing::group_reach(project.style.gap));
    const auto arranged = [&task](const spacing::Group& group) {
        return std::ranges::count_if(task.items, [&group](const arrange::Item& item) {
            return !item.fixed && std::ranges::find(group.pieces, item.id) != group.pieces.end();
        });
    };
    return *std::ranges::max_element(groups, {}, arranged);
}

/// Pieces that look at each other from farther apart than neighbours leave a hole.
std::string spacing_text(const spacing::Group& group, const arrange::View& view,
                         units::LengthUnit unit) {
    const std::size_t holes = view.across().size();
    if (holes == 0)
        return gaps_text(group, unit);
    return fmt::format("{}; {} {}", gaps_text(group, unit), holes, holes == 1 ? "hole" : "holes");
}

double alignment_of(const arrange::Score& score) {
    const auto part =
        std::find_if(score.parts.begin(), score.parts.end(),
                     [](const arrange::Part& one) { return one.measure->name == "alignment"; });
    return part == score.parts.end() ? 0 : part->value;
}

std::string layouts_text(const Arranged& arranged, units::LengthUnit unit) {
    std::vector<std::vector<std::string>> rows;
    for (std::size_t i = 0; i < arranged.layouts.size(); ++i) {
        const arrange::Candidate& one = arranged.layouts[i];
        const spacing::Group group = main_group(arranged.projects[i], arranged.task);
        rows.push_back({std::to_string(i + 1), std::string(wall::name_of(one.pattern)),
                        std::to_string(group.pieces.size()),
                        spacing_text(group, arrange::View(arranged.task, one.layout), unit),
                        fmt::format("{:.0f}", 100 * alignment_of(one.score)),
                        units::format_number(
                            wall::middle_above_floor(arranged.projects[i], group.pieces), unit),
                        units::format_number(group.bounds.width(), unit),
                        units::format_number(group.bounds.height(), unit), points(one.score.total),
                        counts_text(arranged.findings[i])});
    }
    const std::string in(units::name_of(unit));
    return text_table({{"layout"},
                       {"pattern"},
                       {"pieces", Side::right},
                       {"gaps " + in},
                       {"in line %", Side::right},
                       {"centre " + in, Side::right},
                       {"width " + in, Side::right},
                       {"height " + in, Side::right},
                       {"score", Side::right},
                       {"findings"}},
                      rows);
}

std::string text_of_arranged(const Loaded& loaded, const Arranged& arranged) {
    const arrange::Candidate& best = arranged.layouts.front();
    const arrange::View view(arranged.task, best.layout);
    std::string text = fmt::format(
        "{}\nLayout 1, from the wall's left end and from the floor:\n\n{}\n{}",
        layouts_text(arranged, loaded.shown),
        places_text(arranged.projects.front(), arranged.task, best.layout, loaded.shown),
        measures_text(best.score, view, loaded.shown));
    if (!best.left_out.empty())
        text += fmt::format("\nNo room for {}; waiting on the floor.\n",
                            titles_of(loaded.project, best.left_out));
    return text;
}

Json json_of_arranged(const Loaded& loaded, const Arranged& arranged) {
    Json layouts = Json::array();
    for (const arrange::Candidate& one : arranged.layouts) {
        const arrange::View view(arranged.task, one.layout);
        Json json = {{"number", layouts.size() + 1}, {"pattern", wall::name_of(one.pattern)}};
        json["findings"] = json_of_counts(arranged.findings[layouts.size()]);
        json.update(json_of(one.score, view, loaded.shown));
        json["pieces"] = json_of(arranged.task, one.layout);
        json["left_out"] = json_of_ids(one.left_out);
        layouts.push_back(std::move(json));
    }
    return {{"layouts", layouts}};
}

Result<Answer> run_arrange(const ArrangeWords& words) {
    const auto loaded = load(words.common);
    if (!loaded)
        return fail(loaded.error());
    if (!words.all.empty())
        if (auto made = make_folder(words.all); !made)
            return fail(std::move(made.error()));
    Watch watch("Arranging");
    const auto arranged = search(words, *loaded, watch);
    if (!arranged)
        return fail(arranged.error());
    const auto wrote = write(words, *loaded, *arranged);
    if (!wrote)
        return fail(wrote.error());
    const std::vector<wall::Finding>& findings = arranged->findings.front();
    const std::string aside = loaded->aside + arranged->aside + *wrote;
    if (words.common.json)
        return Answer{text_of(json_of_arranged(*loaded, *arranged)), aside, status_of(findings)};
    return Answer{text_of_arranged(*loaded, *arranged) + stops_text(findings), aside,
                  status_of(findings)};
}

void define(CLI::App& command, ArrangeWords& words) {
    add_common(command, words.common);
    command
        .add_option("-o,--out", words.out,
                    "Where the project with the best layout goes; may be the same file")
        ->required()
        ->type_name("OUT.json");
    command
        .add_option("--all", words.all,
                    "A folder for every layout: layout-1.json and a picture, layout-1.png, and so "
                    "on")
        ->type_name("FOLDER");
    command.add_option("--layouts", words.layouts, "How many to choose from")
        ->check(CLI::Range(1, 50))
        ->capture_default_str();
    command.add_option("--pattern", words.pattern, "One of " + pattern_names())
        ->type_name("PATTERN")
        ->capture_default_str();
    add_search(command, words.search);
}

}  // namespace

void add_arrange(CLI::App& program, Chosen& chosen) {
    add_command<ArrangeWords>(
        program.add_subcommand("arrange",
                               "Layouts to choose from for all pieces that do not hang or are not "
                               "pinned, each with its reasons"),
        chosen, define, run_arrange);
}

}  // namespace wallwright::cli
