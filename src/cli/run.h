// The program from its words to its exit status.
#pragma once

#include <iosfwd>

namespace wallwright::cli {

/// Reads the words, runs the command, prints. 0: fine; 1: the wall has a `stop` finding; 2:
/// unusable words or input, said on `err` after "wallwright: ", with the place in the input below
/// it where there is one.
int run(int argc, const char* const* argv, std::ostream& out, std::ostream& err);

}  // namespace wallwright::cli
