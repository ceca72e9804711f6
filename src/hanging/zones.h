// Where cables should run behind the wall, by the practice of the country.
#pragma once

#include "wall/project.h"

#include <string>
#include <vector>

namespace wallwright::hanging {

struct Zone {
    geometry::Rect<geometry::Wall> place;  ///< Within the bounds of the wall.
    std::string
        why;  ///< "straight above or below the switch", "within 150 mm of the top of the wall".
    std::string source;  ///< "BS 7671 522.6.202(i)", "DIN 18015-3:2016-09".
};

/// Zones say where cables should be, never where they are. Under a sloping ceiling a zone is a row
/// of steps, each a little larger than what it stands for. With CablePractice::none_known: in line
/// with each socket and switch all the same, since cables usually run straight to them (common
/// practice, no source).
std::vector<Zone> cable_zones(const wall::Room& room);

}  // namespace wallwright::hanging
