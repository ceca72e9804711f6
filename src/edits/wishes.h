// Edits of what the person wishes of the arrangement: wishes, target, weights, frames not bought
// yet.
#pragma once

#include "edits/pieces.h"

#include <cstddef>
#include <optional>
#include <string>

namespace wallwright::edits {

/// A wish about what is not there, or one that is there already, is a Problem.
Result<wall::Project> add_wish(wall::Project project, wall::Wish wish);
/// By its index, from 0.
Result<wall::Project> remove_wish(wall::Project project, std::size_t index);

/// Toward which the group grows; nothing for no target.
Result<wall::Project> set_target(wall::Project project, std::optional<wall::Target> target);

/// How much the measure counts, 0 to 10; nothing for as much as usual.
Result<wall::Project> set_weight(wall::Project project, const std::string& measure,
                                 std::optional<double> weight);

/// Calls frames not bought yet, or bought. One that hangs cannot be wished for.
Result<wall::Project> set_wished(wall::Project project, PieceIds ids, bool wished);

/// No piece has a stage; all stay where they are.
Result<wall::Project> clear_stages(wall::Project project);

/// Changes the project in place for an edit that takes the pieces or the thing away: their wishes
/// go, and a target that is the thing.
void drop_wishes_about(wall::Project& project, PieceIds ids);
void drop_wishes_about(wall::Project& project, const wall::ThingId& thing);

}  // namespace wallwright::edits
