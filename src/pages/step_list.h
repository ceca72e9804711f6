// Sentences one after the other, to be ticked off.
#pragma once

#include "pages/flow.h"

#include <string>
#include <vector>

namespace wallwright::pages {

/// A heading and a table with a box and a number for each; nothing for no steps.
void add_steps(Flow& flow, const std::string& heading, const std::vector<std::string>& steps);

/// A heading and a line with a dash for each.
void add_points(Flow& flow, const std::string& heading, const std::vector<std::string>& points);

}  // namespace wallwright::pages
