// JSON text to values and back, with the care a person's own file needs: places for mistakes,
// nothing lost in silence.
#pragma once

#include "base/problem.h"

#include <nlohmann/json.hpp>

#include <string>
#include <string_view>

namespace wallwright::store {

/// Keeps the keys of an object in the order of the file.
using Json = nlohmann::ordered_json;

/// Nested deeper than any project and refused, so that no file can exhaust the stack.
inline constexpr int kDeepestJson = 64;

/// UTF-8 JSON (RFC 8259). A Problem shows the line with a caret. A key that stands twice in one
/// object is refused, since the first of its values would be lost; so are a number beyond the range
/// of a double and nesting beyond kDeepestJson.
Result<Json> parse_json(std::string_view text, const std::string& name);

/// For people to read: two spaces, one key a line, lists of plain values on one line, LF, a line
/// end last.
std::string to_json_text(const Json& value);

}  // namespace wallwright::store
