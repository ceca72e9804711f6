#include "store/text_place.h"

#include "base/problem.h"

#include <algorithm>
#include <cstdint>

namespace wallwright::store {

namespace {

constexpr std::size_t kExcerptReach = 60;  ///< Bytes on either side of the caret.
constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

constexpr std::uint8_t byte_at(std::string_view text, std::size_t index) {
    return static_cast<std::uint8_t>(text[index]);
}

constexpr bool continues_a_character(std::uint8_t byte) {
    return (byte & 0xC0U) == 0x80U;
}

/// Bytes of a character that starts with `first`, 0 when none does.
std::size_t length_from(std::uint8_t first) {
    if (first < 0x80)
        return 1;
    if (first < 0xC2 || first > 0xF4)
        return 0;
    if (first < 0xE0)
        return 2;
    return first < 0xF0 ? 3 : 4;
}

/// The second byte is held to less after some first ones, which rules out overlong forms,
/// surrogates and what lies beyond Unicode (RFC 3629, section 4).
bool fits_after(std::uint8_t first, std::uint8_t second) {
    switch (first) {
        case 0xE0:
            return second >= 0xA0;
        case 0xED:
            return second < 0xA0;
        case 0xF0:
            return second >= 0x90;
        case 0xF4:
            return second < 0x90;
        default:
            return true;
    }
}

/// How many bytes the character at `start` has, 0 when it is not well formed.
std::size_t character_length(std::string_view text, std::size_t start) {
    const std::size_t length = length_from(byte_at(text, start));
    if (length < 2)
        return length;
    if (start + length > text.size() || !fits_after(byte_at(text, start), byte_at(text, start + 1)))
        return 0;
    for (std::size_t i = 1; i < length; ++i)
        if (!continues_a_character(byte_at(text, start + i)))
            return 0;
    return length;
}

/// The nearest start of a character at or before `index`.
std::size_t character_start(std::string_view text, std::size_t index) {
    while (index > 0 && index < text.size() && continues_a_character(byte_at(text, index)))
        --index;
    return index;
}

/// The same number of bytes, fit to show in a terminal: no control characters, no broken ones.
std::string showable(std::string_view line) {
    std::string shown(line);
    const bool broken = first_bad_utf8(line).has_value();
    for (char& c : shown) {
        const auto byte = static_cast<std::uint8_t>(c);
        if ((byte < 0x20 && c != '\t') || byte == 0x7F || (broken && byte >= 0x80))
            c = '?';
    }
    return shown;
}

}  // namespace

TextPlace place_in(std::string_view text, std::size_t offset) {
    offset = std::min(offset, text.size());
    const std::string_view before = text.substr(0, offset);
    const std::size_t last_break = before.rfind('\n');
    const std::size_t start = last_break == std::string_view::npos ? 0 : last_break + 1;
    std::string_view line = text.substr(start, text.find('\n', offset) - start);
    if (!line.empty() && line.back() == '\r')
        line.remove_suffix(1);
    std::size_t column = std::min(offset - start, line.size());
    if (column > kExcerptReach) {
        const std::size_t cut = character_start(line, column - kExcerptReach);
        line.remove_prefix(cut);
        column -= cut;
    }
    line = line.substr(0, character_start(line, std::min(line.size(), column + kExcerptReach)));
    return {static_cast<std::size_t>(std::count(before.begin(), before.end(), '\n')) + 1,
            point_at(showable(line), column)};
}

std::optional<std::size_t> first_bad_utf8(std::string_view text) {
    for (std::size_t i = 0; i < text.size();) {
        const std::size_t length = character_length(text, i);
        if (length == 0)
            return i;
        i += length;
    }
    return std::nullopt;
}

std::string_view without_byte_order_mark(std::string_view text) {
    return text.starts_with(kByteOrderMark) ? text.substr(kByteOrderMark.size()) : text;
}

std::string shortened(std::string_view text, std::size_t most) {
    if (text.size() <= most)
        return std::string(text);
    return std::string(text.substr(0, character_start(text, most))) + "...";
}

}  // namespace wallwright::store
