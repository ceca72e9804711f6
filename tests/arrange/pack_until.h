// Packing as well as can be: many runs, the best of all.
#pragma once

#include "arrange/packing.h"

#include <functional>

namespace wallwright::tests {

/// Runs of growing length on `threads` threads until `go_on` gives false; the best of all. `go_on`
/// is asked on the caller's thread alone, after each of its runs. A seed has one endless list of
/// runs, each alike whichever thread makes it, so that more of them are never worse.
arrange::Packing pack_until(std::span<const arrange::Block> blocks,
                            const arrange::PackingGoal& goal, std::uint64_t seed, unsigned threads,
                            const std::function<bool()>& go_on);

/// So many runs of the seed on one thread; the best of them.
arrange::Packing best_of_runs(int runs, std::span<const arrange::Block> blocks,
                              const arrange::PackingGoal& goal, std::uint64_t seed);

}  // namespace wallwright::tests
