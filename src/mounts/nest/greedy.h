// Plans by rule alone, in less than a millisecond.
#pragma once

#include "mounts/nest/spots.h"

namespace wallwright::mounts {

/// Blank after blank by the rules; where none of the open sheets has room, one more is opened: the
/// largest at hand that holds it, and after those the largest to buy. Drop-outs are open from the
/// start.
Packing greedy(const Stock& stock, const Rules& rules, Random& random);

/// The best (see deck.h) of every fit with every split, largest area and longest side first.
Packing best_greedy(const Stock& stock);

}  // namespace wallwright::mounts
