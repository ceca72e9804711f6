#include "wall/titles.h"

#include <fmt/format.h>

namespace wallwright::wall {

namespace {

template <class Thing>
std::string title_or_type(const Thing& thing, std::string_view other) {
    if (!thing.title.empty())
        return thing.title;
    const bool is_other = thing.type == decltype(thing.type)::other;
    return fmt::format("the {}", is_other ? other : name_of(thing.type));
}

}  // namespace

const std::string& title_of(const Piece& piece) {
    return piece.title.empty() ? piece.id.text : piece.title;
}

std::string title_of(const Project& project, const PieceId& id) {
    const Piece* piece = find(project, id);
    return piece == nullptr ? id.text : title_of(*piece);
}

std::string title_of(const Furniture& furniture) {
    return title_or_type(furniture, "furniture");
}

std::string title_of(const Fixture& fixture) {
    return title_or_type(fixture, "fixture");
}

}  // namespace wallwright::wall
