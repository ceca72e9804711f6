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
    std::string templates;
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
    return std::ranges::find(parts, part) != parts.end();
}

/// With the templates, where their kind is named, whatever else is asked for.
Result<void> add_templates(const SheetWords& words, pages::SheetOptions& options) {
    if (words.templates.empty())
        return {};
    const auto kind = wall::with_name<pages::TemplateKind>(words.templates);
    if (!kind)
        return fail({"--templates", fmt::format("there are no templates \"{}\"", words.templates),
                     fmt::format("use one of {}",
                                 fmt::join(wall::Names<pages::TemplateKind>::values, ", ")),
                     ""});
    options.templates = *kind;
    if (!is_asked(options.parts, SheetPart::templates))
        options.parts.push_back(SheetPart::templates);
    return {};
}

/// The list says what card to buy, so it needs the plan as well.
bool needs_card_plan(const std::vector<SheetPart>& parts) {
    return parts.empty() || is_asked(parts, SheetPart::card) || is_asked(parts, SheetPart::list);
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
    pages::SheetOptions options{*paper, folder, std::move(*parts), std::nullopt};
    if (const auto added = add_templates(words, options); !added)
        return fail(added.error());
    return options;
}

/// Of what was asked for, where not one sheet came of it.
Problem nothing_to_print(const std::vector<SheetPart>& parts) {
    const bool templates = is_asked(parts, SheetPart::templates);
    const bool mounts = is_asked(parts, SheetPart::card) || is_asked(parts, SheetPart::mounts);
    return {templates ? "--templates" : "--what",
            fmt::format("there is nothing of that to print: {}{}{}",
                        mounts ? "no mount is to be cut" : "", mounts && templates ? ", and " : "",
                        templates ? "no piece is planned that has a mark" : ""),
            templates ? "give a piece its place on the wall, in the app or by wallwright arrange"
                      : "leave --what away for all sheets that there are",
            ""};
}

/// How many pages were written.
Result<std::size_t> write_pdf(const SheetWords& words, const wall::Project& project,
                              const rules::Assessment& assessment,
                              const pages::SheetOptions& options) {
    const auto all = pages::sheets(project, assessment, options);
    if (all.empty())
        return fail(nothing_to_print(options.parts));
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
    if (needs_card_plan(options->parts))
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
                    fmt::format("Only these: {}. Without it all but templates",
                                fmt::join(wall::Names<SheetPart>::values, ", ")))
        ->delimiter(',')
        ->type_name("PARTS");
    command
        .add_option("--templates", words.templates,
                    "Papers at true size to hold against the wall: pieces (each outline, tiled), "
                    "points (the fixing points alone), strips (a row of marks each), group (one "
                    "large sheet for a plotter). Without --what these alone; --what templates is "
                    "pieces")
        ->type_name("KIND");
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
            "loads, cautions, what to buy, mounts, card, templates"),
        chosen, define, sheets);
}

}  // namespace wallwright::cli
