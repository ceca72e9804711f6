// The lines between prints and frames: what is so today, and what the match would change.
#pragma once

#include "desk/bench/match_layout.h"
#include "draw/drawing.h"

#include <vector>

namespace wallwright::desk {

/// today: so today, and the match has something else or is not known; best: so today and in the
/// match; wanted: in the match and not so today.
enum class LinkKind { today, best, wanted };

struct Link {
    wall::PrintId print;
    wall::PieceId piece;
    LinkKind kind = LinkKind::today;
    bool kept = false;  ///< The piece keeps its print.
    draw::Path<geometry::Wall> path;
    std::vector<geometry::Point<geometry::Wall>> points;  ///< Along it, for the pointer.
    geometry::Point<geometry::Wall> lock_at;              ///< Where its lock is shown.
    bool operator==(const Link&) const = default;
};

/// Those that are wanted last, since they matter most. From the print's inner edge to the frame's;
/// from a column farther out through the lane above its row. `paths` have no stroke yet.
std::vector<Link> links_of(const wall::Project& project, const Matched* found,
                           const MatchLayout& layout);

/// mm from the point to the line.
double distance_to(const Link& link, geometry::Point<geometry::Wall> at);

}  // namespace wallwright::desk
