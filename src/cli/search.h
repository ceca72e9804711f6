// What the commands that search have in common: their options, how far they are, and Ctrl-C.
#pragma once

#include "cli/command.h"
#include "cli/interrupt.h"

#include <cstdint>
#include <optional>
#include <string>

namespace wallwright::cli {

struct SearchWords {
    double seconds = 3;
    std::uint64_t seed = 1;
    std::optional<std::uint64_t> rounds;
};

/// --seconds, for a search that else goes on to its end.
void add_seconds(CLI::App& command, std::optional<double>& seconds);
/// --seconds, --seed and --rounds.
void add_search(CLI::App& command, SearchWords& words);

/// Where `options` (arrange::ArrangeOptions, GrowOptions) has the same members. With --rounds the
/// clock says nothing.
template <class Options>
void set_search(Options& options, const SearchWords& words) {
    constexpr double kNoClock = 1e6;
    options.seconds = words.rounds ? kNoClock : words.seconds;
    options.seed = words.seed;
    options.rounds = words.rounds.value_or(options.rounds);
}

/// A search while it runs. On a terminal, standard error has one line that says how far it is,
/// written anew when it changes and gone at the end. Lives until all is written, so that Ctrl-C in
/// between does not end the program either.
class Watch {
  public:
    /// `what` begins the line: "Arranging".
    explicit Watch(std::string what);
    ~Watch() { end(); }
    Watch(const Watch&) = delete;
    Watch& operator=(const Watch&) = delete;

    /// `done` from 0 to 1; `words` follow it on the line. False once the person wants it to stop.
    bool go_on(double done, const std::string& words);
    [[nodiscard]] bool stopped() const { return stopped_; }
    /// The line goes; what is to be said on standard error of a search that was stopped, or
    /// nothing.
    std::string end();

  private:
    void show(const std::string& line);

    Interrupt interrupt_;
    std::string what_;
    std::string shown_;
    bool on_terminal_ = false;
    bool stopped_ = false;
};

}  // namespace wallwright::cli
