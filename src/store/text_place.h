// Where in a text something is wrong: the line's number and an excerpt with a caret, for JSON and
// CSV alike.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace wallwright::store {

struct TextPlace {
    std::size_t line = 1;  ///< Counted from 1.
    std::string
        excerpt;  ///< The line, or the part of a long one around the place, with a caret below.
};

/// The place of byte `offset`; the end of the text when it lies beyond.
TextPlace place_in(std::string_view text, std::size_t offset);

/// The byte where the text stops being UTF-8 (RFC 3629: no overlong forms, no surrogates); nothing
/// when it never does.
std::optional<std::size_t> first_bad_utf8(std::string_view text);

/// The text after the byte order mark that some editors and spreadsheets put first.
std::string_view without_byte_order_mark(std::string_view text);

/// At most `most` bytes of `text`, cut between characters, with "..." where something is left out.
std::string shortened(std::string_view text, std::size_t most);

}  // namespace wallwright::store
