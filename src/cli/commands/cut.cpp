#include "cli/blanks.h"
#include "cli/card_out.h"
#include "cli/command.h"
#include "cli/load.h"
#include "cli/save.h"
#include "cli/search.h"
#include "edits/card.h"
#include "mounts/nest/nest.h"
#include "pages/render.h"
#include "pages/sheets.h"
#include "store/files.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>

namespace wallwright::cli {

namespace {

using mounts::CardPlan;
using mounts::NestPlan;
using mounts::NestTask;
using units::LengthUnit;

struct CutWords {
    Common common;
    std::vector<std::string> pieces;
    std::string out;
    std::string paper = "a4";
    std::string take;
    std::string sheet;
    std::string blanks;
    std::string margin;
    bool upright = false;
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

Result<NestTask> typed_task(const CutWords& words, LengthUnit unit) {
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

/// Blanks of a table on sheets of one size.
Result<Answer> cut_table(const CutWords& words) {
    const LengthUnit unit = unit_of_words(words.common.units, LengthUnit::mm);
    const auto task = typed_task(words, unit);
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
    if (words.common.json)
        return Answer{text_of(json_of_plan(*task, plan)), std::move(aside), Status::fine};
    std::string text = lot_text(lot_of(*task, plan), unit);
    for (const std::size_t blank : plan.left_out)
        text += fmt::format("\nNo sheet is large enough for {}.\n", task->blanks[blank].id);
    return Answer{std::move(text), std::move(aside), Status::fine};
}

Result<std::vector<wall::PieceId>> asked_for(const CutWords& words, const Loaded& loaded) {
    std::vector<wall::PieceId> ids;
    for (const std::string& piece : words.pieces) {
        if (find(loaded.project, wall::PieceId{piece}) == nullptr)
            return fail({words.common.file, fmt::format("no piece has the id \"{}\"", piece),
                         "wallwright list names them", ""});
        ids.push_back({piece});
    }
    return ids;
}

/// Of the PDF, whose name is looked at too, before anything is searched for.
Result<pages::Paper> paper_of(const CutWords& words) {
    if (!words.out.empty() && std::filesystem::path(words.out).extension() != ".pdf")
        return fail({"--out", fmt::format("\"{}\" is no name for a PDF", words.out),
                     "let it end in .pdf; --json prints the plan for other programs", ""});
    const auto paper = pages::paper_named(words.paper);
    if (!paper)
        return fail({"--paper", fmt::format("there is no paper \"{}\"", words.paper),
                     "use a4, letter or a3", ""});
    return *paper;
}

/// The plan as a PDF; what was written, for standard error.
Result<std::string> write_pdf(const CutWords& words, pages::Paper paper, const Loaded& loaded,
                              const CardPlan& plan) {
    if (words.out.empty())
        return std::string();
    pages::SheetOptions options{paper, loaded.folder, {pages::SheetPart::card}};
    options.card = plan;
    const auto sheets = pages::sheets(as_shown(loaded), assess(loaded), options);
    if (auto saved = store::write_file(words.out, pages::to_pdf(sheets, loaded.project.title));
        !saved)
        return fail(std::move(saved.error()));
    return fmt::format("Wrote {}: {}.\n", words.out,
                       sheets.size() == 1 ? "1 page" : fmt::format("{} pages", sheets.size()));
}

/// The project after cutting; what was written, for standard error.
Result<std::string> write_taken(const CutWords& words, const Loaded& loaded, const CardPlan& plan) {
    if (words.take.empty())
        return std::string();
    const mounts::AfterCutting after = mounts::after_cutting(plan);
    edits::CutCard cut{{}, after.left, after.cut};
    for (const mounts::AfterCutting::Used& one : after.used)
        cut.used.push_back({one.sheet, one.count});
    const auto taken = edits::use_card(loaded.project, cut);
    if (!taken)
        return fail(within(words.common.file, taken.error()));
    if (auto saved = save(*taken, loaded, words.take); !saved)
        return fail(std::move(saved.error()));
    return fmt::format("Wrote {}: the card as it is after cutting.\n", words.take);
}

/// The mounts of a project.
Result<Answer> cut_wall(const CutWords& words) {
    const auto loaded = load(words.common);
    if (!loaded)
        return fail(loaded.error());
    auto only = asked_for(words, *loaded);
    if (!only)
        return fail(std::move(only.error()));
    const auto paper = paper_of(words);
    if (!paper)
        return fail(paper.error());
    const wall::Project project = as_shown(*loaded);
    Watch watch("Nesting");
    const mounts::CardOptions options{words.seconds, words.seed, words.rounds, std::move(*only)};
    const CardPlan plan =
        mounts::plan_card(project, options, [&watch] { return watch.go_on(0, ""); });
    std::string aside = loaded->aside + watch.end();
    if (plan.lots.empty() && plan.notes.empty())
        return fail({words.common.file, "no mount is still to be cut",
                     "a mount is while it is not marked as cut, its piece does not hang and its "
                     "frame is bought; --piece "
                     "asks for one whatever its state",
                     ""});
    for (const auto& written :
         {write_pdf(words, *paper, *loaded, plan), write_taken(words, *loaded, plan)}) {
        if (!written)
            return fail(written.error());
        aside += *written;
    }
    return Answer{words.common.json ? text_of(json_of(plan)) : plan_text(plan), std::move(aside),
                  Status::fine};
}

Result<Answer> run_cut(const CutWords& words) {
    const bool has_table = !words.sheet.empty() || !words.blanks.empty();
    if (!words.common.file.empty() && has_table)
        return fail(
            {"", "there is a project and a table of blanks",
             "name the project file to cut its mounts, or type --sheet and --blanks without "
             "it",
             ""});
    if (!words.common.file.empty())
        return cut_wall(words);
    if (words.sheet.empty() || words.blanks.empty())
        return fail({"",
                     has_table ? "a sheet or the blanks are missing" : "there is nothing to cut",
                     "name a project file, or type both --sheet and --blanks", ""});
    return cut_table(words);
}

void define_wall(CLI::App& command, CutWords& words) {
    add_common(command, words.common);
    CLI::Option* file = command.get_option("wall")->required(false);
    command
        .add_option("--piece", words.pieces,
                    "Only the mount of this piece, even of one that hangs; may be given again")
        ->type_name("ID")
        ->needs(file);
    CLI::Option* out =
        command.add_option("-o,--out", words.out, "Where the plan goes to be printed")
            ->type_name("PLAN.pdf")
            ->needs(file);
    command.add_option("--paper", words.paper, "a4, letter or a3")
        ->needs(out)
        ->capture_default_str();
    command
        .add_option("--take", words.take,
                    "Where the project goes as it is after cutting: sheets taken off, offcuts put "
                    "in; may be the same file")
        ->type_name("OUT.json")
        ->needs(file);
}

void define_table(CLI::App& command, CutWords& words) {
    CLI::Option* sheet =
        command
            .add_option("--sheet", words.sheet, "Size of the sheets of card, for a table of blanks")
            ->type_name("SIZE");
    command
        .add_option("--blanks", words.blanks,
                    "A table of blanks: id, width, height, and perhaps count and turn (yes, no)")
        ->type_name("FILE.csv");
    command
        .add_option("--margin", words.margin, "What is damaged along every edge of the sheets; 0")
        ->type_name("LENGTH")
        ->needs(sheet);
    command
        .add_flag("--upright", words.upright,
                  "Turn no blank: the card's grain or pattern runs one way")
        ->needs(sheet);
}

void define(CLI::App& command, CutWords& words) {
    constexpr double kSecondsMost = 3600;
    define_wall(command, words);
    define_table(command, words);
    command
        .add_option("--seconds", words.seconds,
                    "How long to look for a better plan; of each card of a project at most")
        ->check(CLI::Range(0.01, kSecondsMost))
        ->capture_default_str();
    command.add_option("--seed", words.seed, "Another seed may find another plan")
        ->capture_default_str();
    command
        .add_option("--rounds", words.rounds,
                    "So many rounds whatever the time, for the same plan on every run")
        ->check(CLI::Range(1, 1000000));
}

}  // namespace

void add_cut(CLI::App& program, Chosen& chosen) {
    add_command<CutWords>(program.add_subcommand("cut",
                                                 "The mounts of a wall, or a table of blanks, on "
                                                 "sheets of card by straight cuts, fewest sheets"),
                          chosen, define, run_cut);
}

}  // namespace wallwright::cli
