// What of a mount's front the hand can take: a window, or one of its edges.
#pragma once

#include "mounts/design/mount_design.h"

#include <optional>

namespace wallwright::desk {

/// x and y: -1 for the left or upper edge, 1 for the right or lower one; both 0 for the window as a
/// whole.
struct MountPart {
    std::size_t window = 0;
    int x = 0;
    int y = 0;
    [[nodiscard]] bool is_edge() const { return x != 0 || y != 0; }
    bool operator==(const MountPart&) const = default;
};

/// The window of the top layer at its face, or the print that floats.
geometry::Rect<mounts::Front> window_at(const mounts::MountDesign& design, std::size_t window);
std::size_t window_count(const mounts::MountDesign& design);

/// The edge within `reach` mm, else the window; of several the nearest, and of those the last. A
/// print that floats has no edges. A window's middle half is its own however small it is.
std::optional<MountPart> part_at(const mounts::MountDesign& design,
                                 geometry::Point<mounts::Front> at, double reach);

}  // namespace wallwright::desk
