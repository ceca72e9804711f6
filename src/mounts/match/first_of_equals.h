// Of all cheapest ways to pair, the one in which each row in turn has the first column it can.
#pragma once

#include "mounts/match/augmenting.h"

namespace wallwright::mounts {

/// `whole` is `table` with a price on its forbidden pairs and perhaps more columns; a row in such a
/// pair is left over, which counts as later than any column.
void take_first_of_equals(const CostTable& table, const CostTable& whole, CompletePairs& pairs);

}  // namespace wallwright::mounts
