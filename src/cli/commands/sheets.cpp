#include "pages/sheets.h"

#include "cli/command.h"
#include "cli/load.h"
#include "cli/search.h"
#include "cli/svg_out.h"
#include "pages/render.h"
#include "pages/sheet_card.h"
#include "store/files.h"
#include "wall/names.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <filesystem>

namespace wallwright::cli {

namespace {

using pages::SheetPart;

struct SheetWords {
    Common common;
    std::string out;
    std::string paper = "a4";
    std::vector<std::string> what;
    std::string svg;
};

Result<std::vector<SheetPart>> parts_of(const std::vector<std::string>& words) {
    std::vector<SheetPart> parts;
    for (const std::string& word : words) {
        const auto part = wall::with_name<SheetPart>(word);
        if (!part)
            return fail({"--what", fmt::format("there are no sheets \"{}\"", word),
                         fmt::format("name some of {}, with commas between",
                                     fmt::join(wall::Names<SheetPart>::values, ", ")),
                         ""});
        parts.push_back(*part);
    }
    return parts;
}

bool is_asked(const std::vector<SheetPart>& parts, SheetPart part) {
    return parts.empty() || std::ranges::find(parts, part) != parts.end();
}

Result<pages::SheetOptions> options_of(const SheetWords& words, const std::string& folder) {
    if (std::filesystem::path(words.out).extension() != ".pdf")
        return fail({"--out", fmt::format("\"{}\" is no name for a PDF", words.out),
                     "let it end in .pdf; wallwright draw makes pictures", ""});
    const auto paper = pages::paper_named(words.paper);
    if (!paper)
        return fail({"--paper", fmt::format("there is no paper \"{}\"", words.paper),
                     "use a4, letter or a3", ""});
    auto parts = parts_of(words.what);
    if (!parts)
        return fail(std::move(parts.error()));
    return pages::SheetOptions{*paper, folder, std::move(*parts), std::nullopt};
}

/// How many pages were written.
Result<std::size_t> write_pdf(const SheetWords& words, const wall::Project& project,
                              const rules::Assessment& assessment,
                              const pages::SheetOptions& options) {
    const auto all = pages::sheets(project, assessment, options);
    if (all.empty())
        return fail({"--what", "there is nothing of that to print: no mount is to be cut",
                     "leave --what away for all sheets that there are", ""});
    if (const auto saved = store::write_file(words.out, pages::to_pdf(all, project.title)); !saved)
        return fail(saved.error());
    return all.size();
}

Result<Answer> sheets(const SheetWords& words) {
    const auto loaded = load(words.common);
    if (!loaded)
        return fail(loaded.error());
    auto options = options_of(words, loaded->folder);
    if (!options)
        return fail(std::move(options.error()));
    const wall::Project project = as_shown(*loaded);
    const rules::Assessment assessment = assess(*loaded);
    Watch watch("Planning the card");
    if (is_asked(options->parts, SheetPart::card))
        options->card = pages::card_plan_for_sheets(project, [&] { return watch.go_on(0, ""); });
    std::string aside = loaded->aside + watch.end();
    const auto count = write_pdf(words, project, assessment, *options);
    if (!count)
        return fail(count.error());
    aside +=
        fmt::format("Wrote {}: {} {}. Print {} at 100 %, and measure the bar on the first.\n",
                    words.out, *count, *count == 1 ? "page" : "pages", *count == 1 ? "it" : "them");
    if (!words.svg.empty()) {
        const auto written = write_svgs(words.svg, pages::mount_svgs(project));
        if (!written)
            return fail(written.error());
        aside += *written;
    }
    return Answer{"", std::move(aside), status_of(assessment.findings)};
}

void define(CLI::App& command, SheetWords& words) {
    add_wall(command, words.common);
    command.add_option("-o,--out", words.out, "Where the sheets go")
        ->required()
        ->type_name("OUT.pdf");
    command.add_option("--paper", words.paper, "a4, letter or a3")->capture_default_str();
    command
        .add_option("--what", words.what,
                    "Only these: elevation, marks, loads, findings, card, mounts")
        ->delimiter(',')
        ->type_name("PARTS");
    command
        .add_option("--svg", words.svg,
                    "Folder for each board of the mounts at true size, for a cutting machine")
        ->type_name("FOLDER");
}

}  // namespace

void add_sheets(CLI::App& program, Chosen& chosen) {
    add_command<SheetWords>(
        program.add_subcommand(
            "sheets",
            "The pages to take to the wall and to the cutting table, as a PDF: elevation, marks, "
            "loads, cautions, mounts, card"),
        chosen, define, sheets);
}

}  // namespace wallwright::cli
