// What a person reads when something cannot be done.
#pragma once

#include <tl/expected.hpp>

#include <optional>
#include <string>

namespace wallwright {

/// Something the person can mend: where it is, what is wrong, what to do. Every part is a phrase
/// fit to show.
struct Problem {
    std::string where;    ///< File, and the place in it ("wall.json: pieces/kelp/width_mm",
                          ///< "frames.csv:4"); may be empty.
    std::string what;     ///< What is wrong, with the offending text quoted.
    std::string remedy;   ///< What to do about it; may be empty.
    std::string excerpt;  ///< The line of input with a caret under the place; may be empty.

    bool operator==(const Problem&) const = default;
};

/// One paragraph: "where: what; remedy", the excerpt on lines of its own.
std::string to_text(const Problem& problem);

/// The same problem, said to be in `place`: put in front of what `where` already holds, with ": "
/// between.
Problem within(const std::string& place, Problem problem);

/// The excerpt for byte `offset` of `line`: the line itself and a caret below the place.
std::string point_at(const std::string& line, std::size_t offset);

/// A value, or the Problem that kept it from being made.
template <class T>
using Result = tl::expected<T, Problem>;

/// A step that gives nothing back but may fail: empty when all is well.
using Outcome = tl::expected<void, Problem>;

inline tl::unexpected<Problem> fail(Problem problem) {
    return tl::unexpected<Problem>(std::move(problem));
}

}  // namespace wallwright
