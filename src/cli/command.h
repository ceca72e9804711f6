// What a command is: it reads its words, calls the floors below, and says what to print. It never
// computes.
#pragma once

#include "base/problem.h"
#include "units/length.h"

#include <CLI/CLI.hpp>

#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace wallwright::cli {

/// Exit status of the program.
enum class Status { fine = 0, stop_finding = 1, unusable = 2 };

/// What a command gives back: text for standard output, words for standard error that are not in
/// the way of a pipe.
struct Answer {
    std::string out;
    std::string aside;
    Status status = Status::fine;
};

/// The command that the person asked for, waiting to be run; set while the words are read.
using Chosen = std::function<Result<Answer>()>;

/// Options that most commands share.
struct Common {
    std::string file;  ///< The project.
    bool json = false;
    std::string units;  ///< Empty for the project's own.
};

/// Adds one command to the program; when its words are read, it puts its work into `chosen`.
using AddCommand = void (*)(CLI::App& program, Chosen& chosen);

void add_new(CLI::App& program, Chosen& chosen);
void add_list(CLI::App& program, Chosen& chosen);
void add_check(CLI::App& program, Chosen& chosen);
void add_even(CLI::App& program, Chosen& chosen);
void add_hang(CLI::App& program, Chosen& chosen);
void add_sheets(CLI::App& program, Chosen& chosen);
void add_draw(CLI::App& program, Chosen& chosen);
void add_arrange(CLI::App& program, Chosen& chosen);
void add_grow(CLI::App& program, Chosen& chosen);
void add_suggest(CLI::App& program, Chosen& chosen);
void add_mount(CLI::App& program, Chosen& chosen);
void add_match(CLI::App& program, Chosen& chosen);
void add_cut(CLI::App& program, Chosen& chosen);
void add_buy(CLI::App& program, Chosen& chosen);

/// Positional `file` and --units.
void add_wall(CLI::App& command, Common& common);
/// add_wall and --json.
void add_common(CLI::App& command, Common& common);

/// A command whose options live in `Options` until it runs.
template <class Options, class Define, class Run>
void add_command(CLI::App* command, Chosen& chosen, Define define, Run run) {
    auto options = std::make_shared<Options>();
    define(*command, *options);
    command->callback(
        [options, run, &chosen] { chosen = [options, run] { return run(*options); }; });
}

}  // namespace wallwright::cli
