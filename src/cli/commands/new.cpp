#include "cli/command.h"
#include "edits/edit.h"
#include "store/catalogue.h"
#include "store/csv.h"
#include "store/files.h"
#include "store/json_project.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>

namespace wallwright::cli {

namespace {

struct NewWords {
    std::string wall;
    std::string frames;
    std::vector<std::string> furniture;
    std::string title = "A wall";
    std::string surface = "painted";
    std::string units = "mm";
    std::string out;
    bool replace = false;
};

/// "sofa" and the rest from "sofa:1900x800@700".
struct FurnitureWords {
    std::string type;
    std::string size;
    std::string left;
};

Result<FurnitureWords> split_furniture(const std::string& text) {
    const std::size_t colon = text.find(':');
    const std::size_t at = text.rfind('@');
    if (colon == std::string::npos || at == std::string::npos || at < colon)
        return fail({"--furniture", fmt::format("\"{}\" is not understood", text),
                     "write its kind, size and left edge like sofa:1900x800@700", ""});
    return FurnitureWords{text.substr(0, colon), text.substr(colon + 1, at - colon - 1),
                          text.substr(at + 1)};
}

std::vector<std::string> surface_names() {
    const auto& values = wall::Names<wall::Surface>::values;
    return {std::begin(values), std::end(values)};
}

std::string furniture_names() {
    std::string names;
    for (const std::string_view name : wall::Names<wall::FurnitureType>::values)
        names += (names.empty() ? "" : ", ") + std::string(name);
    return names;
}

Result<wall::Furniture> parse_furniture(const std::string& text, units::LengthUnit unit) {
    const auto words = split_furniture(text);
    if (!words)
        return fail(words.error());
    const auto type = wall::with_name<wall::FurnitureType>(words->type);
    if (!type)
        return fail({"--furniture", fmt::format("\"{}\" is no kind of furniture", words->type),
                     "use one of " + furniture_names(), ""});
    const auto size = units::parse_size_pair(words->size, unit);
    if (!size)
        return fail(within("--furniture", size.error()));
    const auto left = units::parse_length(words->left, unit);
    if (!left)
        return fail(within("--furniture", left.error()));
    wall::Furniture furniture;
    furniture.type = *type;
    furniture.place = wall::Rect<wall::Wall>::at({*left, 0}, {size->width_mm, size->height_mm});
    return furniture;
}

Result<wall::Project> with_frames(wall::Project project, const std::string& file) {
    const auto text = store::read_file(file);
    if (!text)
        return fail(text.error());
    const auto rows =
        store::read_frames_csv(*text, file, project.unit, store::built_in_catalogue().sizes);
    if (!rows)
        return fail(rows.error());
    auto framed = edits::add_frames(std::move(project), *rows);
    return framed ? std::move(framed) : fail(within(file, std::move(framed.error())));
}

Result<wall::Project> with_furniture(wall::Project project, const std::vector<std::string>& all) {
    for (const std::string& text : all) {
        auto furniture = parse_furniture(text, project.unit);
        if (!furniture)
            return fail(std::move(furniture.error()));
        auto added = edits::add_furniture(std::move(project), std::move(*furniture));
        if (!added)
            return fail(within("--furniture", std::move(added.error())));
        project = std::move(*added);
    }
    return project;
}

Result<wall::Project> build(const NewWords& words) {
    const units::LengthUnit unit = units::parse_unit(words.units).value();
    const auto size = units::parse_size_pair(words.wall, unit);
    if (!size)
        return fail(within("--wall", size.error()));
    auto project = edits::start({size->width_mm, size->height_mm}, unit);
    if (!project)
        return project;
    project->title = words.title;
    project->room.surface = wall::with_name<wall::Surface>(words.surface).value();
    auto furnished = with_furniture(std::move(*project), words.furniture);
    if (!furnished || words.frames.empty())
        return furnished;
    return with_frames(std::move(*furnished), words.frames);
}

Result<Answer> make_new(const NewWords& words) {
    if (std::filesystem::exists(words.out) && !words.replace)
        return fail({words.out, "there is a file of that name already",
                     "choose another, or say --replace", ""});
    const auto project = build(words);
    if (!project)
        return fail(project.error());
    if (const auto saved = store::write_file(words.out, store::write_project(*project)); !saved)
        return fail(saved.error());
    return Answer{"",
                  fmt::format("Wrote {}: {} {}\n", words.out, project->pieces.size(),
                              project->pieces.size() == 1 ? "piece" : "pieces"),
                  Status::fine};
}

void define(CLI::App& command, NewWords& words) {
    command.add_option("--wall", words.wall, "Width and height of a flat wall")
        ->required()
        ->type_name("WxH");
    command
        .add_option(
            "--frames", words.frames,
            "A table of frames: title, width, height; if known weight, depth, hanger, status, x, y")
        ->type_name("FRAMES.csv");
    command
        .add_option("--furniture", words.furniture,
                    "What stands before the wall, its left edge after the @; may be repeated")
        ->type_name("KIND:WxH@LEFT");
    command.add_option("--title", words.title, "What the wall is called")->capture_default_str();
    command
        .add_option("--units", words.units,
                    "The project's unit, and that of bare numbers: mm, cm or in")
        ->check(CLI::IsMember({"mm", "cm", "in"}))
        ->capture_default_str();
    command.add_option("-o,--out", words.out, "Where the project goes")
        ->required()
        ->type_name("WALL.json");
    command.add_option("--surface", words.surface, "What the wall is finished with")
        ->check(CLI::IsMember(surface_names()))
        ->capture_default_str();
    command.add_flag("--replace", words.replace, "Write over a file that is there");
}

}  // namespace

void add_new(CLI::App& program, Chosen& chosen) {
    add_command<NewWords>(
        program.add_subcommand("new", "Start a wall: its size, its furniture, a table of frames"),
        chosen, define, make_new);
}

}  // namespace wallwright::cli
