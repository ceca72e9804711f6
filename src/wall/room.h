// The wall: its outline and surface, the furniture before it, the fixtures in it.
#pragma once

#include "geometry/polygon.h"
#include "wall/colour.h"
#include "wall/ids.h"
#include "wall/names.h"
#include "wall/unknown.h"

#include <optional>
#include <string>
#include <vector>

namespace wallwright::wall {

using geometry::Point;
using geometry::Polygon;
using geometry::Rect;
using geometry::Size;
using geometry::Wall;

/// What a strip or a nail meets first.
enum class Surface { painted, fresh_paint, wallpaper, textured, brick, concrete, tile, wood };
template <>
struct Names<Surface> {
    static constexpr std::string_view values[] = {"painted", "fresh_paint", "wallpaper", "textured",
                                                  "brick",   "concrete",    "tile",      "wood"};
};

/// What the room is used for: steam and cable practice follow from it.
enum class RoomUse { living, bedroom, kitchen, bathroom, hall, other };
template <>
struct Names<RoomUse> {
    static constexpr std::string_view values[] = {"living",   "bedroom", "kitchen",
                                                  "bathroom", "hall",    "other"};
};

/// Whose practice says where cables should run behind the wall.
enum class CablePractice { none_known, bs_7671, din_18015_3 };
template <>
struct Names<CablePractice> {
    static constexpr std::string_view values[] = {"none_known", "bs_7671", "din_18015_3"};
};

enum class FurnitureType { sofa, bed, cot, sideboard, table, lamp, plant, bookcase, other };
template <>
struct Names<FurnitureType> {
    static constexpr std::string_view values[] = {"sofa", "bed",   "cot",      "sideboard", "table",
                                                  "lamp", "plant", "bookcase", "other"};
};

enum class FixtureType { door, window, radiator, socket, light_switch, other };
template <>
struct Names<FixtureType> {
    static constexpr std::string_view values[] = {"door",   "window", "radiator",
                                                  "socket", "switch", "other"};
};
/// Whether a cable must lead to it.
constexpr bool is_accessory(FixtureType type) {
    return type == FixtureType::socket || type == FixtureType::light_switch;
}

/// Something that stands before the wall.
struct Furniture {
    FurnitureId id;
    FurnitureType type = FurnitureType::other;
    std::string title;
    Rect<Wall> place;  ///< As seen from the front.
    std::optional<Colour> colour;
    UnknownKeys unknown;
    bool operator==(const Furniture&) const = default;
};

/// Something that is part of the wall.
struct Fixture {
    FixtureId id;
    FixtureType type = FixtureType::other;
    std::string title;
    Rect<Wall> place;
    UnknownKeys unknown;
    bool operator==(const Fixture&) const = default;
};

struct Room {
    Polygon outline;  ///< A simple polygon; the floor is at y = 0 where it is level.
    Surface surface = Surface::painted;
    RoomUse use = RoomUse::living;
    CablePractice cable_practice = CablePractice::none_known;
    Colour colour{0xE3, 0xE6, 0xDF};
    double skirting_height = 0;  ///< mm; 0 for none.
    std::vector<Furniture> furniture;
    std::vector<Fixture> fixtures;
    UnknownKeys unknown;
    bool operator==(const Room&) const = default;
};

}  // namespace wallwright::wall
