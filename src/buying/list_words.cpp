#include "buying/list_words.h"

#include <fmt/format.h>

#include <cmath>

namespace wallwright::buying {

std::string_view heading_of(Kind kind) {
    switch (kind) {
        case Kind::fixings:
            return "Fixings";
        case Kind::cord:
            return "Cord";
        case Kind::frames:
            return "Frames";
        case Kind::card:
            return "Card for the mounts";
        case Kind::tape:
            return "Tape for the mounts";
        case Kind::cutting:
            return "Mounts to have cut";
        case Kind::other:
            return "And besides";
    }
    return "";
}

std::string money(double amount) {
    const double cents = std::round(100 * amount);
    if (std::fmod(cents, 100) == 0)
        return fmt::format("{:.0f}", cents / 100);
    return fmt::format("{:.2f}", cents / 100);
}

std::string total_words(const List& list) {
    const bool any_price = static_cast<std::size_t>(list.without_price) < list.items.size();
    if (!any_price)
        return "No price is known. Prices are typed in the app, or in the project file.";
    const std::string total = fmt::format("Together {}", money(list.known_total));
    if (list.without_price == 0)
        return fmt::format("{}.", total);
    return fmt::format("{}, plus {} without a price.", total, list.without_price);
}

}  // namespace wallwright::buying
