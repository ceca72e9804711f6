#include "cli/command.h"
#include "cli/load.h"
#include "cli/numbered.h"
#include "pages/render.h"
#include "pages/sheets.h"
#include "store/files.h"

#include <fmt/format.h>

#include <filesystem>

namespace wallwright::cli {

namespace {

struct DrawWords {
    Common common;
    std::string out;
    double pixels_per_mm = kPixelsPerMm;
};

Result<std::string> painted(const draw::PageDrawing& page, const std::string& title,
                            const DrawWords& words) {
    const std::string ending = std::filesystem::path(words.out).extension().string();
    if (ending == ".svg")
        return pages::to_svg(page);
    if (ending == ".pdf")
        return pages::to_pdf({page}, title);
    if (ending == ".png")
        return pages::to_png(page, words.pixels_per_mm);
    return fail({"--out", fmt::format("\"{}\" does not say what kind of picture it is", words.out),
                 "end the name in .svg, .png or .pdf", ""});
}

Result<Answer> draw(const DrawWords& words) {
    const auto loaded = load(words.common);
    if (!loaded)
        return fail(loaded.error());
    const wall::Project project = as_shown(*loaded);
    const draw::PageDrawing page = pages::elevation_page(project, assess(*loaded), loaded->folder);
    const auto bytes = painted(page, project.title, words);
    if (!bytes)
        return fail(bytes.error());
    if (const auto saved = store::write_file(words.out, *bytes); !saved)
        return fail(saved.error());
    return Answer{"", loaded->aside + fmt::format("Wrote {}\n", words.out), Status::fine};
}

void define(CLI::App& command, DrawWords& words) {
    add_wall(command, words.common);
    command.add_option("-o,--out", words.out, "Where the picture goes: .svg, .png or .pdf")
        ->required()
        ->type_name("OUT");
    command.add_option("--pixels-per-mm", words.pixels_per_mm, "How fine a PNG is")
        ->check(CLI::Range(0.5, 40.0))
        ->capture_default_str();
}

}  // namespace

void add_draw(CLI::App& program, Chosen& chosen) {
    add_command<DrawWords>(
        program.add_subcommand("draw", "A picture of the wall, drawn as an elevation"), chosen,
        define, draw);
}

}  // namespace wallwright::cli
