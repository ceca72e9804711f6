#include "desk/view.h"

#include <algorithm>

namespace wallwright::desk {

void View::fit(const Rect<Wall>& extent, const Rect<Screen>& area) {
    const double scale = std::clamp(std::min(area.width() / std::max(extent.width(), 1.0),
                                             area.height() / std::max(extent.height(), 1.0)),
                                    kLeast, kMost);
    const Point<Wall> from = extent.centre();
    const Point<Screen> to = area.centre();
    to_screen_ = {{to.x - scale * from.x, to.y + scale * from.y}, scale};
}

void View::zoom(Point<Screen> at, double factor) {
    const Point<Wall> under = to_wall(at);
    const double scale = std::clamp(to_screen_.scale * factor, kLeast, kMost);
    to_screen_ = {{at.x - scale * under.x, at.y + scale * under.y}, scale};
}

void View::pan(Vec<Screen> by) {
    to_screen_.origin = to_screen_.origin + by;
}

}  // namespace wallwright::desk
