// Words beside what a hand carries, on a plate of their own.
#pragma once

#include "draw/drawing.h"

#include <string>
#include <vector>

namespace wallwright::desk {

/// Under `place`, moved inside `sight`. `unit` mm of the board are one mm on paper. Nothing for no
/// words.
std::vector<draw::Shape<geometry::Wall>> hand_words(const std::string& words,
                                                    const geometry::Rect<geometry::Wall>& place,
                                                    const geometry::Rect<geometry::Wall>& sight,
                                                    draw::Ink edge, double unit);

}  // namespace wallwright::desk
