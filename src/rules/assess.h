// Project in, everything that follows from it out.
#pragma once

#include "hanging/marks.h"
#include "rules/rule.h"

#include <vector>

namespace wallwright::rules {

struct Assessment {
    std::vector<spacing::Group> groups;
    std::vector<hanging::Hanging> hangings;
    std::vector<hanging::Zone> zones;
    hanging::MarksTable marks;
    std::vector<wall::Finding>
        findings;  ///< Stops first, then minds, then notes; within each in the order of the rules.
};

/// Pure, and fast enough to run at every mouse move. The project must be sound (wall/validity.h);
/// its own materials and fixings count before those of `catalogue`.
Assessment assess(const wall::Project& project, const wall::Catalogue& catalogue);

}  // namespace wallwright::rules
