#include "cli/run.h"

#include "cli/command.h"

#include <fmt/format.h>

#include <ostream>

namespace wallwright::cli {

namespace {

constexpr AddCommand kCommands[] = {add_new,  add_list,    add_check,  add_match, add_mount,
                                    add_cut,  add_arrange, add_grow,   add_even,  add_suggest,
                                    add_hang, add_buy,     add_sheets, add_draw};

constexpr const char* kFooter =
    "Lengths may be typed as 42, 42cm, \"16 1/2 in\" or 420mm; without a unit they are in the "
    "project's own.\n"
    "Exit status: 0 fine, 1 the wall has a stop finding, 2 unusable words or input.";

int answer(const Chosen& chosen, std::ostream& out, std::ostream& err) {
    const auto result = chosen();
    if (!result) {
        err << "wallwright: " << to_text(result.error()) << '\n';
        return static_cast<int>(Status::unusable);
    }
    out << result->out << std::flush;
    err << result->aside;
    if (!out) {
        err << "wallwright: the output could not be written; look whether the disk is full\n";
        return static_cast<int>(Status::unusable);
    }
    return static_cast<int>(result->status);
}

/// What to say when the first word is neither an option nor a command; empty when it is.
std::string unknown_command(int argc, const char* const* argv, const CLI::App& program) {
    if (argc < 2 || argv[1][0] == '-')
        return "";
    std::string names;
    for (const CLI::App* command : program.get_subcommands([](const CLI::App*) { return true; })) {
        if (command->get_name() == argv[1])
            return "";
        names += (names.empty() ? "" : ", ") + command->get_name();
    }
    return fmt::format("wallwright: \"{}\" is no command; use one of {}\n", argv[1], names);
}

int wrong_words(const CLI::ParseError& error, const CLI::App& program, std::ostream& out,
                std::ostream& err) {
    if (error.get_exit_code() == 0) {  // --help or --version
        program.exit(error, out, err);
        return static_cast<int>(Status::fine);
    }
    err << "wallwright: " << error.what()
        << "; wallwright --help lists the commands, wallwright COMMAND --help its words\n";
    return static_cast<int>(Status::unusable);
}

}  // namespace

int run(int argc, const char* const* argv, std::ostream& out, std::ostream& err) {
    CLI::App program{"Plans a wall of framed pictures and prints the marks to hang it by.",
                     "wallwright"};
    program.set_version_flag("--version", WW_VERSION);
    program.require_subcommand(1);
    program.footer(kFooter);
    Chosen chosen;
    for (const AddCommand add : kCommands)
        add(program, chosen);
    if (const std::string wrong = unknown_command(argc, argv, program); !wrong.empty()) {
        err << wrong;
        return static_cast<int>(Status::unusable);
    }
    try {
        program.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        return wrong_words(error, program, out, err);
    }
    return answer(chosen, out, err);
}

void add_wall(CLI::App& command, Common& common) {
    command.add_option("wall", common.file, "The project file")->required()->type_name("WALL.json");
    command
        .add_option("--units", common.units,
                    "Show lengths in mm, cm or in; otherwise as the project says")
        ->check(CLI::IsMember({"mm", "cm", "in"}));
}

void add_common(CLI::App& command, Common& common) {
    add_wall(command, common);
    command.add_flag("--json", common.json, "Print JSON for another program");
}

}  // namespace wallwright::cli
