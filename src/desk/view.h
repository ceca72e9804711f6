// The window onto the wall: where each millimetre lands on the screen.
#pragma once

#include "geometry/transform.h"

namespace wallwright::desk {

using geometry::Point;
using geometry::Rect;
using geometry::Screen;
using geometry::Vec;
using geometry::Wall;

/// Pixels a mm, and where the wall's origin lies. Zoom stays within kLeast and kMost.
class View {
  public:
    static constexpr double kLeast = 0.01;  ///< px a mm: a 100 m wall in 1000 px.
    static constexpr double kMost = 20;

    [[nodiscard]] double scale() const { return to_screen_.scale; }
    [[nodiscard]] const geometry::Transform<Wall, Screen>& to_screen() const { return to_screen_; }
    [[nodiscard]] Point<Wall> to_wall(Point<Screen> at) const { return to_screen_.inverse()(at); }
    /// mm that so many pixels cover.
    [[nodiscard]] double mm(double pixels) const { return pixels / to_screen_.scale; }

    /// All of `extent` in the middle of `area`, which is not empty.
    void fit(const Rect<Wall>& extent, const Rect<Screen>& area);
    /// Larger or smaller by a factor; the wall's point under `at` stays under it.
    void zoom(Point<Screen> at, double factor);
    void pan(Vec<Screen> by);

  private:
    geometry::Transform<Wall, Screen> to_screen_{{0, 0}, 0.2};
};

}  // namespace wallwright::desk
