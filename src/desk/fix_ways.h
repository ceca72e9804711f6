// The ways out of a finding that the app can try, before anybody knows whether they lead anywhere.
#pragma once

#include "desk/fix.h"

#include <vector>

namespace wallwright::desk {

/// None for a rule that only the person can satisfy. The likeliest first; some hold a Problem.
std::vector<Fix> ways_out(const wall::Project& project, const wall::Finding& finding);

}  // namespace wallwright::desk
