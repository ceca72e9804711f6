// The names by which enumerations are written in files and shown to people, in one table each.
#pragma once

#include <optional>
#include <string_view>

namespace wallwright::wall {

/// Specialised beside each enumeration: `values` holds the names in the enumeration's order.
template <class Enum>
struct Names;

template <class Enum>
constexpr std::string_view name_of(Enum value) {
    return Names<Enum>::values[static_cast<std::size_t>(value)];
}

template <class Enum>
constexpr std::optional<Enum> with_name(std::string_view name) {
    for (std::size_t i = 0; i < std::size(Names<Enum>::values); ++i)
        if (Names<Enum>::values[i] == name)
            return static_cast<Enum>(i);
    return std::nullopt;
}

}  // namespace wallwright::wall
