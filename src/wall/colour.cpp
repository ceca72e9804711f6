#include "wall/colour.h"

#include <fmt/format.h>

#include <charconv>

namespace wallwright::wall {

std::optional<Colour> parse_colour(std::string_view text) {
    if (text.size() != 7 || text.front() != '#')
        return std::nullopt;
    std::uint32_t value = 0;
    const char* end = text.data() + text.size();
    const auto [stopped_at, error] = std::from_chars(text.data() + 1, end, value, 16);
    if (error != std::errc{} || stopped_at != end)
        return std::nullopt;
    const auto byte = [value](unsigned shift) {
        return static_cast<std::uint8_t>((value >> shift) & 0xFFU);
    };
    return Colour{byte(16), byte(8), byte(0)};
}

std::string to_text(Colour colour) {
    return fmt::format("#{:02x}{:02x}{:02x}", colour.red, colour.green, colour.blue);
}

}  // namespace wallwright::wall
