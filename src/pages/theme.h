// Which colour each ink has on paper.
#pragma once

#include "draw/drawing.h"

namespace wallwright::pages {

/// Every ink for text keeps a contrast of at least 4.5 (WCAG 2.1, 1.4.3) on paper, on the floor and
/// on a wall's wash.
wall::Colour colour_of(const draw::Paint& paint);

}  // namespace wallwright::pages
