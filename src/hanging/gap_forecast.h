// How far the gaps will be from what is planned, and what would make them truer.
#pragma once

#include "hanging/marks.h"

#include <optional>
#include <string>

namespace wallwright::hanging {

/// +- mm between two pieces with these marks, none for one that hangs: of each piece the error of
/// its worst mark, in quadrature.
double gap_spread(const wall::Project& project, std::span<const Mark> first,
                  std::span<const Mark> second, bool across);

/// What would bring the spread within the style's tolerance, the first that does of a tape of a
/// better class, the other corner for a gap across and a level line near the marks for one upright;
/// else the best of these: "a tape of class I leaves +-1.2 mm". Nothing where none is better.
std::optional<std::string> truer_way(const wall::Project& project, std::span<const Mark> marks,
                                     const GapForecast& gap);

}  // namespace wallwright::hanging
