#include "wall/wishes.h"

#include "wall/find_in.h"

#include <utility>

namespace wallwright::wall {

namespace {

template <class Thing, class Id>
std::optional<Rect<Wall>> place_in(const std::vector<Thing>& things, const Id& id) {
    const Thing* thing = find_in(things, id);
    return thing == nullptr ? std::nullopt : std::optional(thing->place);
}

}  // namespace

std::optional<Rect<Wall>> place_of(const Room& room, const FurnitureId& id) {
    return place_in(room.furniture, id);
}
std::optional<Rect<Wall>> place_of(const Room& room, const FixtureId& id) {
    return place_in(room.fixtures, id);
}
std::optional<Rect<Wall>> place_of(const Room& room, const ThingId& thing) {
    return std::visit([&room](const auto& id) { return place_of(room, id); }, thing);
}

bool is_same_wish(const Wish& one, const Wish& other) {
    if (one.kind != other.kind || one.thing != other.thing)
        return false;
    const bool as_named = one.first == other.first && one.second == other.second;
    return as_named || (one.second == other.first && other.second == one.first);
}

}  // namespace wallwright::wall
