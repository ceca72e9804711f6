// The wall: its outline and surface, the furniture before it, the fixtures in it.
#pragma once

#include "geometry/polygon.h"
#include "wall/colour.h"
#include "wall/date.h"
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

/// What is behind the surface, in which a nail or a screw has to hold. unknown: nobody has said.
enum class Core { unknown, masonry, concrete, plasterboard, lath, wood };
template <>
struct Names<Core> {
    static constexpr std::string_view values[] = {"unknown",      "masonry", "concrete",
                                                  "plasterboard", "lath",    "wood"};
};

/// The timbers behind a hollow wall, all upright and alike.
struct Studs {
    double first = 0;      ///< mm from the wall's left end to the middle of one of them.
    double spacing = 400;  ///< mm from middle to middle; 400 or 600 mm in the UK, 16 or 24 in in
                           ///< North America (IRC Table R602.3(5)).
    double width = 45;     ///< mm of wood that a screw may meet.
    UnknownKeys unknown = {};
    bool operator==(const Studs&) const = default;
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

enum class FixtureType { door, window, radiator, socket, light_switch, basin, other };
template <>
struct Names<FixtureType> {
    static constexpr std::string_view values[] = {"door",   "window", "radiator", "socket",
                                                  "switch", "basin",  "other"};
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
    UnknownKeys unknown = {};
    bool operator==(const Furniture&) const = default;
};

/// Something that is part of the wall.
struct Fixture {
    FixtureId id;
    FixtureType type = FixtureType::other;
    std::string title;
    Rect<Wall> place;
    bool other_side = false;  ///< In the room behind this wall, as seen through it.
    UnknownKeys unknown = {};
    bool operator==(const Fixture&) const = default;
};

struct Room {
    Polygon outline;  ///< A simple polygon; the floor is at y = 0 where it is level.
    Surface surface = Surface::painted;
    std::optional<Date> painted_on;  ///< Of fresh paint.
    Core core = Core::unknown;
    std::optional<Studs> studs;
    std::optional<double> thickness;  ///< mm through to the room behind.
    std::optional<int> built;         ///< The year of its coatings: the house's, if never stripped.
    RoomUse use = RoomUse::living;
    CablePractice cable_practice = CablePractice::none_known;
    Colour colour{0xE3, 0xE6, 0xDF};
    double skirting_height = 0;  ///< mm; 0 for none.
    std::optional<double> rail;  ///< mm above the floor at which the hooks of a picture rail sit.
    bool no_holes = false;       ///< Rented, or not to be pierced for another reason.
    bool in_sun = false;         ///< The sun shines on it.
    bool shakes = false;         ///< In a region of earthquakes.
    std::vector<Furniture> furniture;
    std::vector<Fixture> fixtures;
    UnknownKeys unknown = {};
    bool operator==(const Room&) const = default;
};

/// What nails and screws meet: the core as said, or else what a surface of brick, concrete or wood
/// is itself.
Core core_of(const Room& room);
/// Plasterboard or lath: hollow between its studs.
bool is_hollow(Core core);

}  // namespace wallwright::wall
