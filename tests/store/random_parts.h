// What random projects are made of, each value as a file keeps it.
#pragma once

#include "wall/project.h"

#include <rapidcheck.h>

#include <algorithm>
#include <string>
#include <vector>

namespace wallwright::store {

/// low to high in steps of 1 / steps, both in whole units.
inline double number(int low, int high, int steps = 100) {
    return *rc::gen::inRange(low * steps, high * steps + 1) / static_cast<double>(steps);
}

inline bool coin() {
    return *rc::gen::arbitrary<bool>();
}

inline std::string text() {
    return *rc::gen::element<std::string>("", "Kelp", "Küste bei Ebbe", "引き潮",
                                          "a \"quoted\" one", "back\\slash",
                                          "two\nlines\tand a tab", "🌊");
}

inline wall::Colour colour() {
    const auto byte = [] { return *rc::gen::arbitrary<std::uint8_t>(); };
    return {byte(), byte(), byte()};
}

template <class Enum>
Enum any_of() {
    return static_cast<Enum>(
        *rc::gen::inRange<std::size_t>(0, std::size(wall::Names<Enum>::values)));
}

template <class T, class Make>
std::optional<T> maybe(Make make) {
    return coin() ? std::optional<T>(make()) : std::nullopt;
}

inline wall::UnknownKeys unknown() {
    if (!coin())
        return {};
    return {{text() + "later", *rc::gen::element<std::string>("1", "2.5", "\"words\"",
                                                              "[1,[2],{\"deep\":null}]", "{}")},
            {"note", "true"}};
}

/// 0 to `most` of what `make(i)` gives.
template <class Make>
auto some(int most, Make make) {
    std::vector<decltype(make(0))> all;
    const int count = *rc::gen::inRange(0, most + 1);
    for (int i = 0; i < count; ++i)
        all.push_back(make(i));
    return all;
}

/// A number that is usual as often as not, so that leaving it out is tried.
inline double usual_or(double usual, int low, int high) {
    return coin() ? usual : number(low, high);
}

wall::Rect<wall::Wall> random_place();
wall::Room random_room();
wall::Catalogue random_catalogue();
wall::Stock random_stock(int i);
/// About one of the pieces, if there are any.
wall::Datum random_datum(const std::vector<wall::Piece>& pieces);
wall::Date random_date();

}  // namespace wallwright::store
