// How well blocks are packed: the public sets, and small cases that GLPK closes.
#pragma once

namespace wallwright::bench {

void packings_a_second();
/// Each set for so long, and to the end of the runs begun then, on two threads.
void public_sets(double seconds);
void against_glpk(double seconds);

}  // namespace wallwright::bench
