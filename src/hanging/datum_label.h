// What marks are measured from, where there is room for few words.
#pragma once

#include "wall/project.h"

#include <string>

namespace wallwright::hanging {

/// "floor, left corner", "level line 1450 mm, right corner", "Kelp, right edge". In sentences
/// stands datum_words().
std::string datum_label(const wall::Project& project);

}  // namespace wallwright::hanging
