// The words behind the program's name.
#pragma once

#include "app/app.h"
#include "app/loop.h"

#include <iosfwd>
#include <variant>

namespace wallwright::app {

struct Options {
    AppOptions app;
    LoopOptions loop;
};

/// What was asked for; or the exit status where there is nothing to open, after what there is to
/// say went to `out` or `err`.
std::variant<Options, int> parse_options(int argc, const char* const* argv, std::ostream& out,
                                         std::ostream& err);

}  // namespace wallwright::app
