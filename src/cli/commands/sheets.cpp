#include "pages/sheets.h"

#include "cli/command.h"
#include "cli/load.h"
#include "pages/render.h"
#include "store/files.h"

#include <fmt/format.h>

#include <filesystem>

namespace wallwright::cli {

namespace {

struct SheetWords {
    Common common;
    std::string out;
    std::string paper = "a4";
};

Result<Answer> sheets(const SheetWords& words) {
    const auto loaded = load(words.common);
    if (!loaded)
        return fail(loaded.error());
    if (std::filesystem::path(words.out).extension() != ".pdf")
        return fail({"--out", fmt::format("\"{}\" is no name for a PDF", words.out),
                     "let it end in .pdf; wallwright draw makes pictures", ""});
    const auto paper = pages::paper_named(words.paper);
    if (!paper)
        return fail({"--paper", fmt::format("there is no paper \"{}\"", words.paper),
                     "use a4, letter or a3", ""});
    const wall::Project project = as_shown(*loaded);
    const rules::Assessment assessment = assess(*loaded);
    const auto all = pages::sheets(project, assessment, {*paper, loaded->folder});
    if (const auto saved = store::write_file(words.out, pages::to_pdf(all, project.title)); !saved)
        return fail(saved.error());
    return Answer{
        "",
        loaded->aside +
            fmt::format(
                "Wrote {}: {} pages. Print them at 100 %, and measure the bar on the first.\n",
                words.out, all.size()),
        status_of(assessment.findings)};
}

void define(CLI::App& command, SheetWords& words) {
    add_wall(command, words.common);
    command.add_option("-o,--out", words.out, "Where the sheets go")
        ->required()
        ->type_name("OUT.pdf");
    command.add_option("--paper", words.paper, "a4, letter or a3")->capture_default_str();
}

}  // namespace

void add_sheets(CLI::App& program, Chosen& chosen) {
    add_command<SheetWords>(
        program.add_subcommand(
            "sheets", "The pages to take to the wall: elevation, marks, loads, cautions, as a PDF"),
        chosen, define, sheets);
}

}  // namespace wallwright::cli
