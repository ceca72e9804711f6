// Contracts: what our own code promises itself. On in every build, since a wrong mark on a wall is
// worse than a stop.
#pragma once

namespace wallwright {

/// Prints the broken promise and ends the program; never returns.
[[noreturn]] void broken_contract(const char* promise, const char* file, int line);

}  // namespace wallwright

/// A promise between parts of this program, said as a sentence. Input from people is checked with
/// Problem instead.
#define WW_EXPECT(condition, promise)                                     \
    do {                                                                  \
        if (!(condition))                                                 \
            ::wallwright::broken_contract((promise), __FILE__, __LINE__); \
    } while (false)
