// How the search for layouts goes with time and with the number of pieces.
#pragma once

namespace wallwright::bench {

/// Walls of 12 pieces, one a seed: the best total at several times, and what of the end's was there
/// after 3 s.
void score_over_time(int seeds, double seconds);
/// From 5 to 300 pieces.
void scaling();

}  // namespace wallwright::bench
