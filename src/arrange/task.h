// What there is to arrange: the wall and its pieces as the search sees them, rectangles and where
// they may go.
#pragma once

#include "arrange/keep_out.h"
#include "geometry/floor_line.h"
#include "wall/wishes.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace wallwright::arrange {

using spacing::WallRect;
using WallPoint = geometry::Point<geometry::Wall>;
using WallVec = geometry::Vec<geometry::Wall>;

/// A piece of the task.
struct Item {
    wall::PieceId id;
    std::string title;               ///< For people: the id stands in for an empty one.
    geometry::Size size;             ///< mm over the moulding, as it hangs.
    std::optional<WallPoint> fixed;  ///< Lower left corner of one that stays where it is.
    wall::Colour frame;
    wall::Colour picture;
    /// What its fixings drive into the wall, seen from its lower left corner; empty for strips.
    std::vector<WallRect> pierces;
    std::vector<geometry::Span> not_over;  ///< Stretches of the wall, in x, that it is to stay off.
};

/// A wish about pieces, as indices into the items. `not_over` wishes are in the items instead.
struct ItemWish {
    wall::WishKind kind = wall::WishKind::side_by_side;
    std::uint32_t first = 0;
    std::uint32_t second = 0;  ///< The same as `first` for wishes about one piece.
};

/// Furniture that a group above it reads as one with.
struct Beneath {
    std::string title;  ///< For people.
    WallRect place;
    double clearance_least = 0;  ///< mm between its top and the lowest edge above it.
    double clearance_most = 0;
    double share_least = 0;  ///< Width of the group over that of the furniture.
    double share_most = 0;
};

struct Task {
    std::vector<Item> items;  ///< In the project's order.
    /// Furniture, fixtures and all beyond the outline, a gap larger on every side: a frame that
    /// touches the ceiling or a door looks squeezed in. Lamps and plants too, by half a gap: what
    /// hangs behind them is allowed, but nobody would hang something new there (common practice,
    /// no source). And what is above a radiator as far as its heat reaches, or above a lamp.
    std::vector<WallRect> keep_out;
    std::vector<WallRect> zones;  ///< Where cables should run, a little larger.
    WallRect wall;                ///< The outline's bounds.
    double gap = 60;              ///< mm
    double reach = 120;           ///< mm; neighbours farther apart are not of one group.
    geometry::FloorLine floor;    ///< What heights of groups are taken from.
    double centre_height = 1500;  ///< mm
    double centre_tolerance = 50;
    /// All that a group may hang above.
    std::vector<Beneath> furniture;
    std::optional<Beneath> beneath;  ///< What new groups are to hang above.
    std::vector<ItemWish> wishes;
    std::vector<double> weights;  ///< One a measure, in the order of all_measures().
    std::vector<bool> applies;    ///< Likewise, applying(task); empty where all do.
};

/// Which pieces may be given a place.
enum class Free {
    all_unfixed,   ///< Planned ones that are not pinned, and those that wait.
    waiting_alone  ///< Those that wait; everything on the wall stays.
};

/// The task of a sound project. Fixings are those that hanging chooses. `beneath` is the furniture
/// that shares most of its width with what stays, or else the widest that a group reads with.
Task task_of(const wall::Project& project, const wall::Catalogue& catalogue, Free free);

/// A piece at a place.
struct Spot {
    std::uint32_t item = 0;
    WallRect place;
    bool operator==(const Spot&) const = default;
};

/// Pieces with their places, each item at most once, fixed ones among them.
using Layout = std::vector<Spot>;

/// The least rectangle that holds all of them; there must be one.
WallRect bounds_of(std::span<const Spot> spots);
/// mm from the floor under them to the middle of what bounds them, as geometry::middle_above().
double middle_above_floor(const Task& task, std::span<const Spot> spots);

/// What a group within these bounds hangs above: of the furniture no higher than their lower edge
/// that with which they share most of their width. Null when there is none.
const Beneath* beneath_group(const Task& task, const WallRect& bounds);

/// Every piece that the project has a place for, as a layout of its task.
Layout layout_of(const wall::Project& project);
/// What stays.
Layout fixed_part(const Task& task);
/// The items that do not stay, in order.
std::vector<std::uint32_t> free_items(const Task& task);
/// Those of them that are not in the layout, in order.
std::vector<std::uint32_t> left_out(const Task& task, const Layout& layout);
/// The same, by id.
std::vector<wall::PieceId> ids_left_out(const Task& task, const Layout& layout);

/// True when the piece may be there as far as the wall is concerned: inside and clear of furniture
/// and fixtures by the gap, no fixing where cables should run, not over what it is to stay off.
/// Says nothing about other pieces.
bool wall_allows(const Task& task, std::uint32_t item, const WallRect& place);
/// True when the two are at least the gap apart along one axis.
bool clear_of_each_other(const Task& task, const WallRect& a, const WallRect& b);
/// True when both holds for all free pieces of the layout.
bool is_allowed(const Task& task, const Layout& layout);

}  // namespace wallwright::arrange
