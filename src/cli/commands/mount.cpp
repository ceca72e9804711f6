#include "cli/command.h"
#include "cli/load.h"
#include "cli/mount_out.h"
#include "cli/svg_out.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::cli {

namespace {

using units::LengthUnit;

/// Lengths and sizes as they were typed.
struct MountWords {
    Common common;
    std::string piece;
    std::string blank;
    std::string print;
    std::string overlap;
    std::string base;
    std::string reveal;
    std::string svg;
    int layers = 1;
};

Result<geometry::Size> typed_size(const char* option, const std::string& words, LengthUnit unit) {
    const auto size = units::parse_size_pair(words, unit);
    if (!size)
        return fail(within(option, size.error()));
    return geometry::Size{size->width_mm, size->height_mm};
}

/// Where it was typed at all.
Outcome set_length(const char* option, const std::string& words, LengthUnit unit, double& length) {
    if (words.empty())
        return {};
    const auto typed = units::parse_length(words, unit);
    if (!typed)
        return fail(within(option, typed.error()));
    if (*typed < 0)
        return fail({option, "a length below 0", "type one of 0 or more", ""});
    length = *typed;
    return {};
}

Result<wall::Mount> typed_mount(const MountWords& words, LengthUnit unit) {
    wall::Mount mount;
    if (auto set = set_length("--overlap", words.overlap, unit, mount.overlap); !set)
        return fail(std::move(set.error()));
    if (auto set = set_length("--base", words.base, unit, mount.base_extra); !set)
        return fail(std::move(set.error()));
    wall::UnderLayer under;
    if (auto set = set_length("--reveal", words.reveal, unit, under.reveal); !set)
        return fail(std::move(set.error()));
    mount.overlap_most = std::max(mount.overlap_most, mount.overlap);
    mount.under.assign(static_cast<std::size_t>(words.layers - 1), under);
    return mount;
}

/// One mount without a project.
Result<std::vector<MadeMount>> made_as_typed(const MountWords& words, LengthUnit unit) {
    const auto blank = typed_size("--blank", words.blank, unit);
    if (!blank)
        return fail(blank.error());
    const auto size = typed_size("--print", words.print, unit);
    if (!size)
        return fail(size.error());
    const auto mount = typed_mount(words, unit);
    if (!mount)
        return fail(mount.error());
    wall::Print print;
    print.title = "the print";
    print.size = *size;
    MadeMount made{
        "", "Mount", mounts::design_mount(mounts::frame_around(*blank), *mount, {print}), {}};
    made.remarks = mounts::remarks_on(made.design, *mount, unit);
    return std::vector{made};
}

Result<std::vector<MadeMount>> made_of(const MountWords& words, const Loaded& loaded) {
    const wall::Project& project = loaded.project;
    if (!words.piece.empty() && find(project, wall::PieceId{words.piece}) == nullptr)
        return fail({words.common.file, fmt::format("no piece has the id \"{}\"", words.piece),
                     "wallwright list names them", ""});
    std::vector<MadeMount> all;
    for (const wall::Piece& piece : project.pieces) {
        if (!words.piece.empty() && piece.id.text != words.piece)
            continue;
        if (auto design = mounts::design_of(project, piece))
            all.push_back(
                {piece.id.text, title_of(piece), *design,
                 mounts::remarks_on(*design, *find(project, *piece.mount), loaded.shown)});
    }
    if (all.empty())
        return fail({words.common.file, "there is no piece with a mount and a print",
                     "give a piece both, or ask for a mount by --blank and --print", ""});
    return all;
}

Answer answer_of(const std::vector<MadeMount>& all, bool json, LengthUnit unit, std::string aside) {
    const bool stops = std::ranges::any_of(all, [](const MadeMount& made) {
        return std::ranges::any_of(made.remarks, [](const mounts::Remark& remark) {
            return remark.severity == wall::Severity::stop;
        });
    });
    const Status status = stops ? Status::stop_finding : Status::fine;
    if (json)
        return {text_of({{"mounts", json_of(all)}, {"findings", json_of_remarks(all)}}),
                std::move(aside), status};
    std::string text;
    for (const MadeMount& made : all)
        text += (text.empty() ? "" : "\n\n") + mount_text(made, unit);
    return {std::move(text), std::move(aside), status};
}

/// Where a folder for them was named.
Outcome add_svgs(Answer& answer, const std::vector<MadeMount>& all, const std::string& folder) {
    if (folder.empty())
        return {};
    std::vector<pages::BoardSvg> boards;
    for (const MadeMount& made : all)
        for (pages::BoardSvg& board :
             pages::mount_svgs(made.design, made.piece.empty() ? "mount" : made.piece, made.title))
            boards.push_back(std::move(board));
    const auto written = write_svgs(folder, boards);
    if (!written)
        return fail(written.error());
    answer.aside += *written;
    return {};
}

Result<Answer> answered(const MountWords& words, const Result<std::vector<MadeMount>>& made,
                        LengthUnit unit, const std::string& aside) {
    if (!made)
        return fail(made.error());
    Answer answer = answer_of(*made, words.common.json, unit, aside);
    if (auto written = add_svgs(answer, *made, words.svg); !written)
        return fail(std::move(written.error()));
    return answer;
}

Result<Answer> run_mount(const MountWords& words) {
    if (words.common.file.empty()) {
        if (words.blank.empty() || words.print.empty())
            return fail({"", "there is nothing to make a mount of",
                         "name a project file, or type --blank and --print", ""});
        const LengthUnit unit = unit_of_words(words.common.units, LengthUnit::mm);
        return answered(words, made_as_typed(words, unit), unit, "");
    }
    const auto loaded = load(words.common);
    if (!loaded)
        return fail(loaded.error());
    return answered(words, made_of(words, *loaded), loaded->shown, loaded->aside);
}

void define(CLI::App& command, MountWords& words) {
    constexpr int kLayersMost = 3;
    add_common(command, words.common);
    CLI::Option* file = command.get_option("wall")->required(false);
    command.add_option("--piece", words.piece, "Only the mount of this piece")
        ->type_name("ID")
        ->needs(file);
    CLI::Option* blank =
        command.add_option("--blank", words.blank, "Size of the blank, for a mount by itself")
            ->type_name("SIZE")
            ->excludes(file);
    CLI::Option* print = command.add_option("--print", words.print, "Size of the print")
                             ->type_name("SIZE")
                             ->needs(blank);
    const auto length = [&](const char* name, std::string& into, const char* help) {
        command.add_option(name, into, help)->type_name("LENGTH")->needs(print);
    };
    length("--overlap", words.overlap, "How far the window covers the print on each side; 5 mm");
    length("--base", words.base, "How much wider the border below is than the one above; 0");
    length("--reveal", words.reveal, "What each layer shows of the one behind it; 4 mm");
    command.add_option("--layers", words.layers, "Boards one behind the other")
        ->check(CLI::Range(1, kLayersMost))
        ->needs(print)
        ->capture_default_str();
    command
        .add_option("--svg", words.svg, "Folder for each board at true size, for a cutting machine")
        ->type_name("FOLDER");
}

}  // namespace

void add_mount(CLI::App& program, Chosen& chosen) {
    add_command<MountWords>(
        program.add_subcommand("mount",
                               "What to cut for each mount: blank, windows, borders, the "
                               "lines on the back, in which order"),
        chosen, define, run_mount);
}

}  // namespace wallwright::cli
