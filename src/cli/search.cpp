#include "cli/search.h"

#include "cli/text_table.h"

#include <fmt/format.h>
#include <unistd.h>

#include <cstdio>
#include <cstdlib>
#include <utility>

namespace wallwright::cli {

namespace {

constexpr double kMostSeconds = 86400;  ///< A day.
constexpr const char* kSecondsWords = "For how long to look; Ctrl-C takes the best so far";

/// CLI::Range lets "nan" through.
std::string refuse_seconds(const std::string& text) {
    char* end = nullptr;
    const double value = std::strtod(text.c_str(), &end);
    const bool is_good = *end == '\0' && value >= 0 && value <= kMostSeconds;
    return is_good ? "" : fmt::format("\"{}\" is no time from 0 to 86400 seconds", text);
}

/// CLI::PositiveNumber answers with three hundred digits.
std::string refuse_rounds(const std::string& text) {
    const bool is_good = text.find_first_not_of("0123456789") == std::string::npos &&
                         text.find_first_not_of('0') != std::string::npos;
    return is_good ? "" : fmt::format("\"{}\" is no number of rounds, which is 1 or more", text);
}

CLI::Option* finish_seconds(CLI::Option* option) {
    return option->check(CLI::Validator(refuse_seconds, ""))->type_name("SECONDS");
}

}  // namespace

void add_seconds(CLI::App& command, std::optional<double>& seconds) {
    finish_seconds(command.add_option("--seconds", seconds, kSecondsWords));
}

void add_search(CLI::App& command, SearchWords& words) {
    finish_seconds(command.add_option("--seconds", words.seconds, kSecondsWords))
        ->capture_default_str();
    command.add_option("--seed", words.seed, "Another number looks in another order")
        ->type_name("NUMBER")
        ->capture_default_str();
    command
        .add_option("--rounds", words.rounds,
                    "End after so many rounds of the search whatever the clock says; then every "
                    "run of the same build gives the same answer")
        ->check(CLI::Validator(refuse_rounds, ""))
        ->type_name("NUMBER");
}

Watch::Watch(std::string what)
    : what_(std::move(what)), on_terminal_(::isatty(STDERR_FILENO) == 1) {}

bool Watch::go_on(double done, const std::string& words) {
    show(fmt::format("{}: {:.0f} %{}{}; Ctrl-C takes the best so far", what_, 100 * done,
                     words.empty() ? "" : ", ", words));
    stopped_ = stopped_ || interrupt_.asked();
    return !stopped_;
}

std::string Watch::end() {
    show("");
    return stopped_ ? "Stopped; this is the best so far.\n" : "";
}

void Watch::show(const std::string& line) {
    if (!on_terminal_ || line == shown_)
        return;
    const std::size_t before = columns_of(shown_);
    const std::size_t now = columns_of(line);
    const std::string rest(before > now ? before - now : 0, ' ');
    fmt::print(stderr, "\r{}{}{}", line, rest, line.empty() ? "\r" : "");
    std::fflush(stderr);
    shown_ = line;
}

}  // namespace wallwright::cli
