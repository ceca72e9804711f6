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
/// practice, no source). What is in the room behind counts as shows_cables() says.
std::vector<Zone> cable_zones(const wall::Room& room);

/// The most that a wall may measure for the zones of the room behind to reach through it, mm: BS
/// 7671 522.6.202(i) and IET On-Site Guide 7.3.2.
inline constexpr double kThinWall = 100;

/// True for a socket or a switch that has its cable in this wall: one on it, or one in the room
/// behind where this wall is thin or nobody knows how thick it is. (The British practice; elsewhere
/// by caution.)
bool shows_cables(const wall::Room& room, const wall::Fixture& fixture);

}  // namespace wallwright::hanging
