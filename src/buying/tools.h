// The tools of the planned work, by what it is.
#pragma once

#include "buying/parts.h"

#include <vector>

namespace wallwright::buying {

/// What is to be put up, all of it: each of the hangings has fixings.
struct Work {
    const wall::Project& project;
    const rules::Assessment& assessment;
    std::vector<hanging::Hanging> hangings;
};

using Tools = std::vector<Tool>;

/// For nails and screws, by what the wall is made of, each with its caution.
void add_piercing(Tools& tools, const Work& work);

}  // namespace wallwright::buying
