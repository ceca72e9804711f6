#include "mounts/match/shop_name.h"

#include <fmt/format.h>

#include <cctype>
#include <optional>

namespace wallwright::mounts {

namespace {

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

/// "4x6in" as "4 × 6 in"; nothing for a name of another kind.
std::optional<std::string> measures_in(const std::string& name) {
    const std::size_t cross = name.find('x');
    const bool is_pair = cross != std::string::npos && cross > 0 && cross + 1 < name.size() &&
                         is_digit(name.front()) && is_digit(name[cross + 1]);
    if (!is_pair)
        return std::nullopt;
    std::size_t unit = cross + 1;
    while (unit < name.size() && (is_digit(name[unit]) || name[unit] == '.'))
        ++unit;
    return fmt::format("{} × {}{}{}", name.substr(0, cross),
                       name.substr(cross + 1, unit - cross - 1), unit < name.size() ? " " : "",
                       name.substr(unit));
}

/// A letter and a figure, as ISO 216 calls its sizes.
bool is_iso(const std::string& name) {
    return name.size() == 2 && std::isalpha(static_cast<unsigned char>(name[0])) != 0 &&
           is_digit(name[1]);
}

}  // namespace

std::string shop_name(const std::string& size_name) {
    if (const auto measures = measures_in(size_name))
        return *measures;
    std::string name = size_name;
    if (is_iso(name))
        name[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(name[0])));
    return name;
}

}  // namespace wallwright::mounts
