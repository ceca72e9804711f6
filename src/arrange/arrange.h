// Layouts to choose from: every pattern at once, then better ones for as long as there is time.
#pragma once

#include "arrange/pattern.h"
#include "arrange/score.h"

#include <cstdint>
#include <functional>
#include <limits>
#include <optional>
#include <vector>

namespace wallwright::arrange {

struct Candidate {
    Pattern pattern = Pattern::row;
    Layout layout;  ///< With what stays.
    Score score;
    std::vector<wall::PieceId> left_out;  ///< Pieces for which there was no room.
};

struct ArrangeOptions {
    double seconds = 3;  ///< Counted from the call; the first layouts come however little it is.
    /// Rounds of the search at most. A run that ends by its rounds gives the same answer every time
    /// that one build runs; one that ends by the clock, for as many rounds as it had time for.
    std::uint64_t rounds = std::numeric_limits<std::uint64_t>::max();
    std::uint64_t seed = 1;
    std::size_t layouts = 5;         ///< How many to choose from.
    std::optional<Pattern> pattern;  ///< Only this one.
};

/// The best so far; each call has all of them.
struct Progress {
    const std::vector<Candidate>& best;
    double done = 0;  ///< 0 to 1, of the time or the rounds.
};

/// Clearly different layouts, the best first: those with more pieces placed, then the higher
/// total. Runs on two threads; `go_on` is called on the caller's thread, first once the patterns
/// are there (within a tenth of a second for twelve pieces; for more than forty after each of
/// them), then every 50 ms; false stops the search and the best so far is the answer. Empty only
/// when there is nothing to place, or no room for any piece.
std::vector<Candidate> arrange(const Task& task, const ArrangeOptions& options,
                               const std::function<bool(const Progress&)>& go_on);

/// How unlike two layouts of one task look, 0 to 1: the share of both outlines that only one of
/// them covers, with their middles brought together; mirrored or upside down is not different.
double difference(const Layout& a, const Layout& b);

/// The project with the pieces of the layout where it has them: waiting ones become planned, and
/// free ones that are not in it wait. A Problem only when the result is not sound.
Result<wall::Project> with_layout(const wall::Project& project, const Task& task,
                                  const Layout& layout);

}  // namespace wallwright::arrange
