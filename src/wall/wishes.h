// What the person wishes of the arrangement: who hangs by whom, and where the group is to grow.
#pragma once

#include "wall/ids.h"
#include "wall/names.h"
#include "wall/room.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace wallwright::wall {

/// side_by_side, apart: of two pieces, neighbours or not; middle, low, high: where in the group one
/// piece goes; not_over: one piece and a thing (furniture or fixture) that it is not to hang over.
enum class WishKind { side_by_side, apart, middle, low, high, not_over };
template <>
struct Names<WishKind> {
    static constexpr std::string_view values[] = {"side_by_side", "apart", "middle",
                                                  "low",          "high",  "not_over"};
};
constexpr bool is_about_two(WishKind kind) {
    return kind == WishKind::side_by_side || kind == WishKind::apart;
}

/// A piece of furniture or a fixture.
using ThingId = std::variant<FurnitureId, FixtureId>;

/// Where the thing is; nothing when it is not in the room.
std::optional<Rect<Wall>> place_of(const Room& room, const FurnitureId& id);
std::optional<Rect<Wall>> place_of(const Room& room, const FixtureId& id);
std::optional<Rect<Wall>> place_of(const Room& room, const ThingId& thing);

struct Wish {
    WishKind kind = WishKind::side_by_side;
    PieceId first;
    std::optional<PieceId> second;  ///< For wishes about two, another than the first.
    std::optional<ThingId> thing;   ///< For not_over.
    UnknownKeys unknown = {};
    bool operator==(const Wish&) const = default;
};

/// Whether both wish the same; it does not matter which of two pieces is named first.
bool is_same_wish(const Wish& one, const Wish& other);

/// A corner of the wall's bounds.
enum class WallCorner { top_left, top_right, bottom_left, bottom_right };
template <>
struct Names<WallCorner> {
    static constexpr std::string_view values[] = {"top_left", "top_right", "bottom_left",
                                                  "bottom_right"};
};

/// Toward what the group grows: a thing, a point, a corner or a region of the wall.
using Target = std::variant<FurnitureId, FixtureId, Point<Wall>, WallCorner, Rect<Wall>>;

/// How much one measure of a layout counts; the measure's name as in arrange/measure.h. 0 to 10.
struct MeasureWeight {
    std::string measure;
    double weight = 1;
    UnknownKeys unknown = {};
    bool operator==(const MeasureWeight&) const = default;
};

}  // namespace wallwright::wall
