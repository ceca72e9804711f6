// What lies under the pointer.
#pragma once

#include "desk/selection.h"
#include "desk/step.h"

#include <cstddef>
#include <optional>
#include <variant>
#include <vector>

namespace wallwright::desk {

/// A waiting piece and where it stands on the floor, as the drawing shows it.
struct Waiting {
    wall::PieceId piece;
    geometry::Rect<geometry::Wall> place;
};

/// Where a thing is seen: its place, or for a waiting piece where it stands on the floor.
std::optional<geometry::Rect<geometry::Wall>> seen_at(const wall::Project& project,
                                                      const std::vector<Waiting>& waiting,
                                                      const Thing& thing);

/// A corner of the outline, by index.
struct Corner {
    std::size_t index = 0;
    bool operator==(const Corner&) const = default;
};

/// A side or corner of the selected furniture or fixture by which it is resized: -1, 0 or 1 for
/// left, neither, right and for bottom, neither, top; never both 0.
struct Handle {
    Thing thing;
    int x = 0;
    int y = 0;
    bool operator==(const Handle&) const = default;
};

/// The eight handles of the selected furniture or fixture; none when pieces or nothing is selected.
std::vector<Handle> handles_of(const Selection& selection);
/// Where a handle is on a thing of this place.
geometry::Point<geometry::Wall> point_of(const Handle& handle,
                                         const geometry::Rect<geometry::Wall>& place);

using Hit = std::variant<Thing, Corner, Handle>;

/// What the pointer would take hold of: handles of the selection and corners first (both only in
/// the room step), then pieces, the last drawn first, then fixtures and furniture, the smallest
/// first. `reach` is how far beside a handle or corner still counts, mm; the middle of a small
/// thing is never taken for a handle.
std::optional<Hit> hit_test(const wall::Project& project, const std::vector<Waiting>& waiting,
                            const Selection& selection, Step step,
                            geometry::Point<geometry::Wall> at, double reach);

/// Pieces with a place that touch the rectangle, and waiting ones that do.
std::vector<wall::PieceId> pieces_in(const wall::Project& project,
                                     const std::vector<Waiting>& waiting,
                                     const geometry::Rect<geometry::Wall>& area);

}  // namespace wallwright::desk
