// The lines with words that show where something rests and how far it is from what.
#pragma once

#include "desk/measures.h"
#include "desk/snap.h"
#include "draw/labels.h"

#include <string>
#include <utility>
#include <vector>

namespace wallwright::desk {

/// Shapes over a wall of this colour; `scale` is mm on paper for a mm of wall.
class Overlay {
  public:
    Overlay(wall::Colour wall_colour, double scale);

    /// mm of wall that so many mm of paper cover.
    [[nodiscard]] double on_wall(double paper_mm) const { return paper_mm / scale_; }
    /// Small and centred, on a plate of the wall's own tone.
    [[nodiscard]] draw::Text<geometry::Wall> label(geometry::Point<geometry::Wall> at,
                                                   std::string text) const;

    template <class OneShape>
    void add(OneShape shape) {
        shapes_.emplace_back(std::move(shape));
    }
    /// Labels keep out of it from now on.
    void keep_clear(const geometry::Rect<geometry::Wall>& place) { room_.take(place); }
    /// Clear of all labels and lines so far.
    [[nodiscard]] bool is_free(const draw::Text<geometry::Wall>& text) const;
    /// Adds the first that is; false when none is.
    bool add_if_free(const std::vector<draw::Text<geometry::Wall>>& choices);
    /// Adds the first of one or more that is clear of all labels and lines so far, or the very
    /// first when none is: a figure in the way is better than none.
    void add_first_free(const std::vector<draw::Text<geometry::Wall>>& choices);
    [[nodiscard]] std::vector<draw::Shape<geometry::Wall>> take() { return std::move(shapes_); }

  private:
    double scale_;
    draw::Paint plate_;
    draw::LabelRoom room_;
    std::vector<draw::Shape<geometry::Wall>> shapes_;
};

/// A gap as a dimension with its words; other guides as a dashed line past both ends with its words
/// at the upper or right one.
void add_guide(Overlay& overlay, const Guide& guide);

/// A dimension line as on paper (draw/dimensions.h), in the accent, its figure on a plate: above a
/// level line, right of an upright one, or on the other side where that is taken.
void add_measure(Overlay& overlay, const LiveMeasure& measure);

}  // namespace wallwright::desk
