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
    /// The hook's bearing point, or the middle of the strip; of a rail hook the place on the rail.
    geometry::Point<geometry::Wall> at;
    geometry::Size footprint;  ///< mm
    Kilograms rated;           ///< What it may carry in this wall, before any margin.
    /// What it bears of the high weight: a hook or a screw all of its pull, down, sideways and off
    /// the wall together; a strip what it bears along the wall, a top strip its pull off the wall
    /// where that is more.
    Kilograms load;
    double cord = 0;        ///< mm from a rail hook down to what the piece hangs by; else 0.
    bool on_stud = false;   ///< It goes into a stud, or into a wall of wood.
    Newtons down = {};      ///< With what the piece pulls it down,
    Newtons sideways = {};  ///< to the right, or to the left where less than 0,
    Newtons off_wall = {};  ///< and off the wall.
    std::optional<Newtons> nails_hold = {};  ///< What its nails bear straight out of the wood.
};

/// What a fixing covers on the wall: a strip, the head of a screw and a rail hook lie about their
/// point, the plate of a nailed hook stands on its bearing point with the nails in it.
geometry::Rect<geometry::Wall> covered_by(const Fixing& fixing);

/// Where it goes into the wall: a screw at its point, the nails of a hook somewhere between its
/// bearing point and the upper end of its plate. For what pierces; strips do not.
geometry::Rect<geometry::Wall> pierced_by(const Fixing& fixing);

/// How one piece is hung. With no fixings, `findings` says why.
struct Hanging {
    wall::PieceId piece;
    PieceMass mass;
    std::string fixing_title;
    int pack = 1;      ///< How many of the fixing are sold together, as the person's shop says or
                       ///< the catalogue,
    double price = 0;  ///< and what a pack costs; 0 where it is not known.
    std::vector<Fixing> fixings;
    double use = 0;     ///< Largest load / rated, margin not counted.
    double margin = 1;  ///< rated must be at least margin x load.
    /// Pull off the wall on all top pairs, or all hooks and screws, together, from the piece's
    /// depth; none for what hangs from a rail.
    std::optional<Newtons> top_pull;
    std::optional<Cord> cord;
    /// Breaking strength to ask of the cord: the style's cord margin over the weight, or over the
    /// tension where that is more.
    std::optional<Kilograms> cord_breaking_needed;
    /// How many of the fixings are in the drawer; 0 for a piece that hangs already.
    int from_stock = 0;
    bool best_known = true;  ///< False where the search for the best choice was cut short.
    std::vector<wall::Finding> findings;  ///< Under the names below.
};

/// The names under which hang_all reports.
inline constexpr const char* kWeightWithinRating = "weight-within-rating";
inline constexpr const char* kStripsFitTheBack = "strips-fit-the-back";
inline constexpr const char* kHangerFits = "hanger-fits";
inline constexpr const char* kFixingsInStock = "fixings-in-stock";
inline constexpr const char* kFixingSuitsWall = "fixing-suits-wall";
inline constexpr const char* kIrreplaceableOnStrips = "irreplaceable-on-strips";

/// Every piece on the wall, in the project's order. A piece keeps the fixing that the person chose.
/// The others get, of what goes with their hanger in this wall (choice.h), what makes all of them
/// safe where anything does, shows no plate above a frame where something else carries it unseen,
/// costs least for packs beyond the stock, is seldom awkward (more strips than the four corners
/// take, a plate or a cord that shows above the frame) and is rated least, in that order over the
/// whole wall (fixing_plan.h). Frames that are not bought yet get what the others leave. What
/// nothing carries gets the strongest, with a finding. A piece that hangs is checked on what it was
/// said to hang on, or on what would be chosen for it, and takes nothing.
std::vector<Hanging> hang_all(const wall::Project& project, const wall::Catalogue& catalogue);

}  // namespace wallwright::hanging
