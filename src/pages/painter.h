// A drawing on a page to Cairo's calls. It translates and decides nothing.
#pragma once

#include "draw/drawing.h"
#include "pages/handles.h"

namespace wallwright::pages {

/// Paints all shapes; one user unit of `cairo` is 1 mm and its origin is that of the page.
void paint(cairo_t* cairo, const draw::PageDrawing& page);

}  // namespace wallwright::pages
