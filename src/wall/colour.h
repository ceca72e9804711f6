// Colours of walls, frames, card and pictures.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace wallwright::wall {

struct Colour {
    std::uint8_t red = 0;
    std::uint8_t green = 0;
    std::uint8_t blue = 0;
    bool operator==(const Colour&) const = default;
};

/// "#rrggbb", either case; nothing for any other text.
std::optional<Colour> parse_colour(std::string_view text);
std::string to_text(Colour colour);  ///< "#rrggbb" in lower case.

}  // namespace wallwright::wall
