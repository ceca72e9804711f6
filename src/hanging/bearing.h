// Where a piece rests on its fixings, seen on the piece itself.
#pragma once

#include "hanging/cord.h"
#include "hanging/weight.h"

#include <optional>
#include <vector>

namespace wallwright::hanging {

/// From the piece's left edge and down from its top edge, mm.
struct BackPoint {
    double across = 0;
    double down = 0;
    bool operator==(const BackPoint&) const = default;
};

struct Bearing {
    std::vector<BackPoint> points;  ///< One a hook, left to right; for strips see strips.h.
    std::optional<Cord> cord;
};

/// The measures of the hanger, those not taken filled in: rings a quarter down (between 1/3 and
/// 1/4: Hopkinton Center for the Arts, framing guidelines) and 0.8 of the width apart, a sawtooth
/// 15 mm down (a quarter down where that is less), a cord that comes to rest 50 mm under the top
/// (Off Track Gallery, picture-hanging guidelines) or half way up to it where that is less, two
/// hooks a third of the ring spacing apart (our choices where no source is named). A hanger of
/// strips has no measures.
wall::Hanger complete(const wall::Hanger& hanger, geometry::Size outside);

/// Whether every measure that the place of its marks depends on was taken on the piece itself. The
/// spacing of two hooks on a cord is chosen, not measured.
bool is_measured(const wall::Hanger& hanger);

/// Where the hooks must be, for a hanger with all its measures. One that cannot hold the piece
/// (hanger_fit.h) is a Problem, with its lengths in mm.
Result<Bearing> bearing_of(const wall::Hanger& complete_hanger, geometry::Size outside,
                           units::Newtons weight);

}  // namespace wallwright::hanging
