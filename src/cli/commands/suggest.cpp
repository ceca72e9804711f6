#include "arrange/suggest.h"

#include "cli/command.h"
#include "cli/layout_out.h"
#include "cli/load.h"
#include "cli/save.h"
#include "cli/search.h"
#include "cli/text_table.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>

namespace wallwright::cli {

namespace {

struct SuggestWords {
    Common common;
    std::size_t top = 5;
    std::optional<double> seconds;
    std::string out;
    std::optional<std::size_t> wish;
};

struct Suggested {
    std::vector<arrange::Suggestion> list;
    std::size_t left_out = 0;  ///< Those that lower the score, where others raise it.
    std::string aside;
};

Result<Suggested> search(const SuggestWords& words, const Loaded& loaded, Watch& watch) {
    if (wall::placed_pieces(loaded.project).empty())
        return fail({words.common.file, "nothing is on the wall yet that a frame could join",
                     "arrange some pieces first: wallwright arrange", ""});
    arrange::SuggestOptions options;
    options.top = words.top;
    using Clock = std::chrono::steady_clock;
    const auto start = Clock::now();
    const auto has_time = [&words, start] {
        const std::chrono::duration<double> gone = Clock::now() - start;
        return !words.seconds || gone.count() < *words.seconds;
    };
    auto list = arrange::suggest(as_shown(loaded), loaded.catalogue, options,
                                 [&](double done) { return watch.go_on(done, "") && has_time(); });
    std::size_t left_out = 0;
    if (!arrange::none_betters(list))
        left_out = std::erase_if(
            list, [](const arrange::Suggestion& one) { return one.after < one.before; });
    return Suggested{std::move(list), left_out, watch.end()};
}

std::string fit_words(const wall::Project& project, const arrange::PrintFit& fit,
                      units::LengthUnit unit) {
    const std::string name = title_of(project, fit.print);
    return fit.with_mount ? fmt::format("{} with {} of mount seen at its narrowest", name,
                                        units::format_length(fit.border, unit))
                          : fmt::format("{} without a mount", name);
}

/// What it does for the wall, and whose frame it could be.
std::string reason_text(const wall::Project& project, const arrange::Suggestion& one,
                        std::size_t number, units::LengthUnit unit) {
    std::string text = fmt::format("{}  {}\n", number, one.reason);
    for (std::size_t i = 0; i < one.prints.size(); ++i)
        text += fmt::format("   {} {}\n", i == 0 ? "Takes the print" : "or",
                            fit_words(project, one.prints[i], unit));
    return text;
}

/// What stands below the list as a whole.
std::string remarks(const Loaded& loaded, const Suggested& suggested) {
    if (arrange::none_betters(suggested.list))
        return "\nThe groups look finished as they are: each of these takes a little of the "
               "score.\n";
    std::string text;
    if (suggested.list.size() > 1) {
        const std::string target =
            loaded.project.target
                ? fmt::format(", and how far it leads toward {}",
                              wall::title_of(loaded.project, *loaded.project.target, loaded.shown))
                : "";
        text += fmt::format(
            "\nThe order goes by the score, how near the size is to its neighbours', whether a "
            "waiting\nprint fits{}.\n",
            target);
    }
    if (suggested.left_out > 0)
        text +=
            fmt::format("\nLeft out: {} more that would lower the score.\n", suggested.left_out);
    return text;
}

std::string text_of_suggested(const Loaded& loaded, const Suggested& suggested) {
    if (suggested.list.empty())
        return "No frame of a usual size has a place beside what is on the wall.\n";
    const units::LengthUnit unit = loaded.shown;
    std::vector<std::vector<std::string>> rows;
    std::string reasons;
    for (const arrange::Suggestion& one : suggested.list) {
        rows.push_back({std::to_string(rows.size() + 1), one.size_name,
                        units::format_number(one.place.width(), unit),
                        units::format_number(one.place.height(), unit),
                        units::format_number(one.place.left(), unit),
                        units::format_number(one.place.bottom(), unit),
                        fmt::format("{} -> {}", points(one.before), points(one.after))});
        reasons += reason_text(loaded.project, one, rows.size(), unit);
    }
    const std::string in(units::name_of(unit));
    return fmt::format("{}\n{}{}",
                       text_table({{"no"},
                                   {"for"},
                                   {"width " + in, Side::right},
                                   {"height " + in, Side::right},
                                   {"left " + in, Side::right},
                                   {"bottom " + in, Side::right},
                                   {"score"}},
                                  rows),
                       reasons, remarks(loaded, suggested));
}

Json json_of_fit(const arrange::PrintFit& fit) {
    return {{"print", fit.print.text},
            {"with_mount", fit.with_mount},
            {"border_mm", number(fit.border)}};
}

Json json_of_suggested(const Suggested& suggested) {
    Json list = Json::array();
    for (const arrange::Suggestion& one : suggested.list) {
        Json prints = Json::array();
        for (const arrange::PrintFit& fit : one.prints)
            prints.push_back(json_of_fit(fit));
        list.push_back({{"number", list.size() + 1},
                        {"size", one.size_name},
                        {"width_mm", number(one.place.width())},
                        {"height_mm", number(one.place.height())},
                        {"x_mm", number(one.place.left())},
                        {"y_mm", number(one.place.bottom())},
                        {"before", number(one.before)},
                        {"after", number(one.after)},
                        {"reason", one.reason},
                        {"prints", prints}});
    }
    return {{"suggestions", list}};
}

/// What to say on standard error; nothing without -o.
Result<std::string> write_wish(const SuggestWords& words, const Loaded& loaded,
                               const Suggested& suggested) {
    if (words.out.empty())
        return std::string();
    const std::size_t wish = words.wish.value_or(1);
    if (wish > suggested.list.size())
        return fail(
            {"--wish",
             fmt::format("there is no number {}: the list has {}", wish, suggested.list.size()),
             "choose a number from the list, or make it longer with --top", ""});
    const auto project = arrange::with_suggestion(loaded.project, suggested.list[wish - 1]);
    if (!project)
        return fail(project.error());
    if (auto saved = save(*project, loaded, words.out); !saved)
        return fail(std::move(saved.error()));
    return fmt::format("Wrote {}, with frame {} planned and to buy\n", words.out, wish);
}

Result<Answer> run_suggest(const SuggestWords& words) {
    const auto loaded = load(words.common);
    if (!loaded)
        return fail(loaded.error());
    Watch watch("Trying frames");
    const auto suggested = search(words, *loaded, watch);
    if (!suggested)
        return fail(suggested.error());
    const auto wrote = write_wish(words, *loaded, *suggested);
    if (!wrote)
        return fail(wrote.error());
    return Answer{words.common.json ? text_of(json_of_suggested(*suggested))
                                    : text_of_suggested(*loaded, *suggested),
                  loaded->aside + suggested->aside + *wrote, Status::fine};
}

void define(CLI::App& command, SuggestWords& words) {
    add_common(command, words.common);
    command.add_option("--top", words.top, "How many frames to name")
        ->check(CLI::Range(1, 100))
        ->capture_default_str();
    add_seconds(command, words.seconds);
    auto* out = command
                    .add_option("-o,--out", words.out,
                                "Where the project with one of the frames planned, and to buy, "
                                "goes; may be the same file")
                    ->type_name("OUT.json");
    command.add_option("--wish", words.wish, "Which of the list -o adds; otherwise the first")
        ->check(CLI::Range(1, 100))
        ->needs(out)
        ->type_name("NUMBER");
}

}  // namespace

void add_suggest(CLI::App& program, Chosen& chosen) {
    add_command<SuggestWords>(
        program.add_subcommand("suggest",
                               "Which frame to buy next: usual sizes in the places where they do "
                               "most for the wall, with the reason"),
        chosen, define, run_suggest);
}

}  // namespace wallwright::cli
