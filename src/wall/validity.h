// What must be true of any project, however it came to be: loading and editing both end here.
#pragma once

#include "base/problem.h"
#include "wall/project.h"

#include <vector>

namespace wallwright::wall {

/// Every broken law: sizes finite and more than zero, outline simple, ids unique and present where
/// referred to, places given to all but waiting pieces, stages to planned ones only, nothing hung
/// that is still wished for, moulding narrower than the frame, its back board no larger, at most
/// four layers under a mount's top one, each window for a print of its own, sheets of card larger
/// than their margins, each layer of a piece's mount kept on one sheet at most, style and weights
/// within their bounds, wishes about pieces and things that are there and each said once. `where`
/// names the thing by kind and id ("pieces/kelp"). Empty for a sound project. A wall that breaks
/// *practice* is sound: rules/ speaks of that.
std::vector<Problem> faults(const Project& project);

/// Materials and fixings that the project names and `catalogue`, its own records included, does not
/// have; each with the names that would do.
std::vector<Problem> unknown_names(const Project& project, const Catalogue& catalogue);

/// Where the file holds keys that this version does not know, as "style/gap": a slip of the pen or
/// a later version's. They are kept on saving.
std::vector<std::string> unknown_paths(const Project& project);

}  // namespace wallwright::wall
