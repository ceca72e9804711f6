// Which pieces lie on the bench, and which of them is looked at.
#pragma once

#include "desk/session.h"

#include <optional>
#include <vector>

namespace wallwright::desk {

/// Pieces in the order in which they lie beside each other: those on the wall from left to right,
/// then those that wait.
std::vector<wall::PieceId> bench_order(const wall::Project& project);

/// The piece whose mount is looked at: the first of those that are selected.
std::optional<wall::PieceId> piece_on_bench(const Session& session);

/// Selects the piece so many places further in that order, from the one that is looked at or else
/// from before the first; it ends at the ends.
void select_mount(Session& session, int by);

/// Boards of the mount that is looked at, as it is cut; 0 without one.
std::size_t layer_count(const Session& session);

}  // namespace wallwright::desk
