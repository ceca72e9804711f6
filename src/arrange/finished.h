// How finished a stage looks: against the best that its pieces could be.
#pragma once

#include "arrange/task.h"

#include <cstdint>
#include <functional>
#include <optional>

namespace wallwright::arrange {

/// The best total that a short walk of the search finds for the pieces of the layout, where all
/// that does not stay may go anywhere; at least the layout's own. `go_on` false ends it early, and
/// gives nothing when it was not to begin.
std::optional<double> best_total_of_same(const Task& task, const Layout& layout, std::uint64_t seed,
                                         std::uint64_t tries, const std::function<bool()>& go_on);

}  // namespace wallwright::arrange
