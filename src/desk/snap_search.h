// The search for the nearest snap along one axis, whatever it is that snaps.
#pragma once

#include "desk/axes.h"
#include "desk/snap.h"

#include <optional>
#include <string>
#include <vector>

namespace wallwright::desk {

/// One way to rest along an axis.
struct Rest {
    double by = 0;  ///< mm along the axis to get there.
    SnapKind kind = SnapKind::edges;
    int rank = 0;                          ///< Of rests equally near, the lowest comes first.
    spacing::Line line{};                  ///< The dragged rectangle's own line that rests.
    geometry::Rect<geometry::Wall> other;  ///< What it rests beside or in line with.
    std::string words;
};

/// Gathers rests for a rectangle along one axis and keeps the best.
class SnapSearch {
  public:
    SnapSearch(const geometry::Rect<geometry::Wall>& place, spacing::Axis axis, double reach)
        : place_(place), axis_(axis), reach_(reach) {}

    [[nodiscard]] const geometry::Rect<geometry::Wall>& place() const { return place_; }
    [[nodiscard]] spacing::Axis axis() const { return axis_; }

    /// Looks at a rest; one out of reach is passed over.
    void offer(Rest rest);
    [[nodiscard]] const std::optional<Rest>& best() const { return best_; }

  private:
    geometry::Rect<geometry::Wall> place_;
    spacing::Axis axis_;
    double reach_;
    std::optional<Rest> best_;
};

/// "left edges", "centres", "top edges".
std::string words_for(spacing::Axis axis, spacing::Line line);

/// What the searches along both axes found, with guides where the rectangle then is.
Snapped found_by(const SnapSearch& x, const SnapSearch& y);

}  // namespace wallwright::desk
