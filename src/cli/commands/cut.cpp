#include "cli/blanks.h"
#include "cli/command.h"
#include "cli/json_out.h"
#include "cli/load.h"
#include "cli/search.h"
#include "cli/text_table.h"
#include "mounts/nest/nest.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::cli {

namespace {

using mounts::CutSheet;
using mounts::NestPlan;
using mounts::NestTask;
using units::LengthUnit;

struct CutWords {
    std::string sheet;
    std::string blanks;
    std::string margin;
    std::string units;
    bool upright = false;
    bool json = false;
    double seconds = 1;
    std::uint64_t seed = 1;
    std::uint64_t rounds = 0;
};

Result<mounts::NestSheet> typed_sheet(const CutWords& words, LengthUnit unit) {
    const auto size = units::parse_size_pair(words.sheet, unit);
    if (!size)
        return fail(within("--sheet", size.error()));
    mounts::NestSheet sheet{"sheet", {size->width_mm, size->height_mm}};
    if (words.margin.empty())
        return sheet;
    const auto margin = units::parse_length(words.margin, unit);
    if (!margin)
        return fail(within("--margin", margin.error()));
    const double most = std::min(sheet.size.width, sheet.size.height) / 2;
    if (*margin < 0 || *margin >= most)
        return fail({"--margin", "nothing of the sheet is left inside",
                     "type a length from 0 to less than half of the sheet's shorter side", ""});
    sheet.margin = *margin;
    return sheet;
}

Result<NestTask> task_of(const CutWords& words, LengthUnit unit) {
    const auto sheet = typed_sheet(words, unit);
    if (!sheet)
        return fail(sheet.error());
    auto blanks = read_blanks(words.blanks, unit);
    if (!blanks)
        return fail(blanks.error());
    for (mounts::NestBlank& blank : *blanks)
        blank.may_turn = blank.may_turn && !words.upright;
    return NestTask{std::move(*blanks), {*sheet}};
}

std::string bound_text(const NestPlan& plan) {
    if (plan.proved)
        return "No plan has fewer sheets: that is proved.";
    return fmt::format("At least {} are needed; whether {} would do is not proved.", plan.bound,
                       plan.count - 1);
}

std::string placed_text(const NestTask& task, const CutSheet& sheet, LengthUnit unit) {
    std::vector<std::vector<std::string>> rows;
    for (const mounts::PlacedBlank& one : sheet.placed)
        rows.push_back({task.blanks[one.blank].id, units::format_number(one.place.left, unit),
                        units::format_number(one.place.top, unit),
                        units::format_number(one.place.size.width, unit),
                        units::format_number(one.place.size.height, unit),
                        one.turned ? "turned" : ""});
    const std::string in(units::name_of(unit));
    return text_table({{"blank"},
                       {"left " + in, Side::right},
                       {"top " + in, Side::right},
                       {"width " + in, Side::right},
                       {"height " + in, Side::right},
                       {""}},
                      rows);
}

std::string cuts_text(const CutSheet& sheet, LengthUnit unit) {
    std::string text;
    for (const mounts::SheetCut& cut : sheet.cuts) {
        const double start = cut.upright ? cut.piece.left : cut.piece.top;
        text += fmt::format(
            "{:>3}. {} through the piece of {} x {}, {} from its {} edge\n", cut.number,
            cut.upright ? "Upright" : "Across", units::format_number(cut.piece.size.width, unit),
            units::format_length(cut.piece.size.height, unit),
            units::format_length(cut.at - start, unit), cut.upright ? "left" : "top");
    }
    return text;
}

std::string offcuts_text(const CutSheet& sheet, LengthUnit unit) {
    std::string text;
    for (const mounts::OnSheet& one : sheet.offcuts)
        text += fmt::format("{}{} x {}", text.empty() ? "Left: " : ", ",
                            units::format_number(one.size.width, unit),
                            units::format_length(one.size.height, unit));
    return text.empty() ? "Nothing is left.\n" : text + ".\n";
}

std::string plan_text(const NestTask& task, const NestPlan& plan, LengthUnit unit) {
    std::string text =
        fmt::format("{} {}, {:.1f} % of them waste. {}\n", plan.count,
                    plan.count == 1 ? "sheet" : "sheets", 100 * plan.waste, bound_text(plan));
    for (std::size_t i = 0; i < plan.sheets.size(); ++i)
        text += fmt::format("\nSheet {}, from its left and top edges:\n\n{}\n{}{}", i + 1,
                            placed_text(task, plan.sheets[i], unit),
                            cuts_text(plan.sheets[i], unit), offcuts_text(plan.sheets[i], unit));
    for (const std::size_t blank : plan.left_out)
        text += fmt::format("\nNo sheet is large enough for {}.\n", task.blanks[blank].id);
    return text;
}

Json json_of_place(const mounts::OnSheet& place) {
    return {{"left_mm", number(place.left)},
            {"top_mm", number(place.top)},
            {"width_mm", number(place.size.width)},
            {"height_mm", number(place.size.height)}};
}

Json json_of_sheet(const NestTask& task, const CutSheet& sheet) {
    Json placed = Json::array();
    for (const mounts::PlacedBlank& one : sheet.placed) {
        Json json = {{"id", task.blanks[one.blank].id}};
        json.update(json_of_place(one.place));
        json["turned"] = one.turned;
        placed.push_back(std::move(json));
    }
    Json cuts = Json::array();
    for (const mounts::SheetCut& cut : sheet.cuts)
        cuts.push_back({{"number", cut.number},
                        {"piece", json_of_place(cut.piece)},
                        {"upright", cut.upright},
                        {"at_mm", number(cut.at)}});
    Json offcuts = Json::array();
    for (const mounts::OnSheet& one : sheet.offcuts)
        offcuts.push_back(json_of_place(one));
    const geometry::Size size = task.sheets[sheet.sheet].size;
    return {{"width_mm", number(size.width)},
            {"height_mm", number(size.height)},
            {"placed", placed},
            {"cuts", cuts},
            {"offcuts", offcuts}};
}

Json json_of_plan(const NestTask& task, const NestPlan& plan) {
    Json sheets = Json::array();
    for (const CutSheet& sheet : plan.sheets)
        sheets.push_back(json_of_sheet(task, sheet));
    Json left_out = Json::array();
    for (const std::size_t blank : plan.left_out)
        left_out.push_back(task.blanks[blank].id);
    return {{"sheets", sheets},
            {"waste", number(plan.waste)},
            {"bound", plan.bound},
            {"proved", plan.proved},
            {"left_out", left_out}};
}

Result<Answer> run_cut(const CutWords& words) {
    const LengthUnit unit = unit_of_words(words.units, LengthUnit::mm);
    const auto task = task_of(words, unit);
    if (!task)
        return fail(task.error());
    Watch watch("Nesting");
    mounts::NestOptions options;
    options.seconds = words.rounds > 0 ? 0 : words.seconds;
    options.seed = words.seed;
    options.rounds = words.rounds;
    const NestPlan plan = mounts::nest(*task, options, [&watch] { return watch.go_on(0, ""); });
    std::string aside = watch.end();
    if (plan.sheets.empty())
        return fail({words.blanks, "no blank fits the sheet",
                     "look at the unit of the sizes, or take a larger sheet", ""});
    return Answer{words.json ? text_of(json_of_plan(*task, plan)) : plan_text(*task, plan, unit),
                  std::move(aside), Status::fine};
}

void define(CLI::App& command, CutWords& words) {
    constexpr double kSecondsMost = 3600;
    command.add_option("--sheet", words.sheet, "Size of the sheets of card")
        ->required()
        ->type_name("SIZE");
    command
        .add_option("--blanks", words.blanks,
                    "A table of blanks: id, width, height, and perhaps count and turn (yes, no)")
        ->required()
        ->type_name("FILE.csv");
    command
        .add_option("--margin", words.margin, "What is damaged along every edge of the sheets; 0")
        ->type_name("LENGTH");
    command.add_flag("--upright", words.upright,
                     "Turn no blank: the card's grain or pattern runs one way");
    command.add_option("--units", words.units, "Lengths are in mm, cm or in; mm")
        ->check(CLI::IsMember({"mm", "cm", "in"}));
    command.add_option("--seconds", words.seconds, "How long to look for a better plan")
        ->check(CLI::Range(0.01, kSecondsMost))
        ->capture_default_str();
    command.add_option("--seed", words.seed, "Another seed may find another plan")
        ->capture_default_str();
    command
        .add_option("--rounds", words.rounds,
                    "So many rounds whatever the time, for the same plan on every run")
        ->check(CLI::Range(1, 1000000));
    command.add_flag("--json", words.json, "Print JSON for another program");
}

}  // namespace

void add_cut(CLI::App& program, Chosen& chosen) {
    add_command<CutWords>(
        program.add_subcommand(
            "cut", "Blanks on sheets of card by straight cuts from edge to edge, fewest sheets"),
        chosen, define, run_cut);
}

}  // namespace wallwright::cli
