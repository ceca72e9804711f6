// The fixing of each piece: which kind, how many, where, and how much of its rated load is in use.
#pragma once

#include "hanging/bearing.h"

#include <optional>
#include <string>
#include <vector>

namespace wallwright::hanging {

struct Fixing {
    wall::FixingTypeId type;
    wall::FixingKind kind = wall::FixingKind::strip_pair;
    geometry::Point<geometry::Wall> at;  ///< The hook's bearing point, or the middle of the strip.
    geometry::Size footprint;            ///< mm
    Kilograms rated;
    /// Its share of the high weight; a hook under a cord takes the sideways pull too, a top strip
    /// the pull off the wall where that is more.
    Kilograms load;
};

/// What a fixing covers on the wall: a strip and the head of a screw lie about their point, the
/// plate of a hook stands on its bearing point with the nails in it.
geometry::Rect<geometry::Wall> covered_by(const Fixing& fixing);

/// Where it goes into the wall: a screw at its point, the nails of a hook somewhere between its
/// bearing point and the upper end of its plate. For what pierces; strips do not.
geometry::Rect<geometry::Wall> pierced_by(const Fixing& fixing);

/// How one piece is hung. With no fixings, `findings` says why.
struct Hanging {
    wall::PieceId piece;
    PieceMass mass;
    std::string fixing_title;
    std::vector<Fixing> fixings;
    double use = 0;     ///< Largest load / rated, margin not counted.
    double margin = 1;  ///< rated must be at least margin x load.
    /// Strips: pull off the wall on all top pairs together, from the piece's depth.
    std::optional<Newtons> top_pull;
    std::optional<Cord> cord;
    /// Breaking strength to ask of the cord: the style's cord margin over the weight, or over the
    /// tension where that is more.
    std::optional<Kilograms> cord_breaking_needed;
    /// How many of the fixings are in the drawer; 0 for a piece that hangs already.
    int from_stock = 0;
    std::vector<wall::Finding> findings;  ///< Under the names below.
};

/// The names under which hang_all reports.
inline constexpr const char* kWeightWithinRating = "weight-within-rating";
inline constexpr const char* kStripsFitTheBack = "strips-fit-the-back";
inline constexpr const char* kHangerFits = "hanger-fits";
inline constexpr const char* kFixingsInStock = "fixings-in-stock";

/// Every piece on the wall, heaviest first at the stock so that the strong fixings go where they
/// are needed; the result is in the project's order. For each piece: its own choice, else the least
/// rated type from stock that carries it with its margin (one of which there is enough before one
/// of which there is not), else the least rated in the catalogue, else the strongest with a
/// finding. Strips that need no more than the four corners come before those that need more, and
/// fixings that stay behind the frame before hooks that would show above it. Only strips go with
/// the hanger `strips`, only hooks and screws with the others; brick, concrete and tile get screws
/// where there are any. A piece that hangs already is checked on what it was said to hang on, or on
/// what would be chosen for it, and takes nothing from stock.
std::vector<Hanging> hang_all(const wall::Project& project, const wall::Catalogue& catalogue);

}  // namespace wallwright::hanging
