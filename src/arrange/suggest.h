// What to buy next: which frame of a standard size, where, and why.
#pragma once

#include "arrange/score.h"
#include "wall/project.h"

#include <functional>
#include <string>
#include <vector>

namespace wallwright::arrange {

/// A print that would go into the suggested frame.
struct PrintFit {
    wall::PrintId print;
    bool with_mount = false;
    double border = 0;  ///< mm of mount seen at its narrowest; 0 without a mount.
};

struct Suggestion {
    std::string size_name;  ///< As in the catalogue: "a3".
    wall::Frame frame;      ///< A usual frame that takes this size, as it would hang.
    WallRect place;
    double before = 0;   ///< Total of the group that it would join.
    double after = 0;    ///< With it.
    std::string reason;  ///< One sentence: "Fills the step at the right; its lower edge lines up
                         ///< with Boats."
    std::vector<PrintFit> prints;  ///< The best first, waiting prints alone.
};

struct SuggestOptions {
    std::size_t top = 5;
    double least_side = 150;  ///< mm; smaller and larger frames are not tried.
    double most_side = 1000;
};

/// The catalogue's sizes and the person's own, both ways up, in each place that touches a group;
/// the best first, those that take from the score last unless there is a target, each place and
/// each size once. Prefers what a waiting print fits and what leads to the project's target.
/// `go_on` false gives the best so far. Empty when nothing hangs.
std::vector<Suggestion> suggest(const wall::Project& project, const wall::Catalogue& catalogue,
                                const SuggestOptions& options,
                                const std::function<bool(double)>& go_on);

/// True when each of them takes something from the score: the group looks finished as it is.
bool none_betters(const std::vector<Suggestion>& suggestions);

/// The project with the suggestion as a planned piece that is wished for and not bought yet;
/// where others have stages, in one of its own after them.
Result<wall::Project> with_suggestion(const wall::Project& project, const Suggestion& suggestion);

}  // namespace wallwright::arrange
