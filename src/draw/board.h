// The drawing board: what the parts of an elevation share while it is drawn.
#pragma once

#include "draw/elevation.h"
#include "draw/furnishings.h"
#include "draw/labels.h"

#include <span>
#include <string>

namespace wallwright::draw {

struct Board {
    const wall::Project& project;
    const rules::Assessment& assessment;
    const ElevationOptions& options;
    geometry::Rect<geometry::Wall> wall;  ///< Around the wall's outline.
    Paint plate;                          ///< The wash on the wall, to stand labels on.
    Shapes shapes{};
    LabelRoom room{};

    /// mm of wall that so many mm of paper cover.
    [[nodiscard]] double on_wall(double paper_mm) const { return paper_mm / options.scale; }
    /// A length as the person reads it, without its unit.
    [[nodiscard]] std::string figure(double mm) const;

    /// Adds the shape.
    template <class OneShape>
    void add(OneShape shape) {
        shapes.emplace_back(std::move(shape));
    }
    /// Adds the text and takes its room.
    void add_label(const Text<geometry::Wall>& text);
    /// Adds the first text whose room is free and inside the wall's outline; false when there is
    /// none.
    bool add_first_free(std::span<const Text<geometry::Wall>> choices);
};

/// A label in a dimension's ink on the wall's own colour.
Text<geometry::Wall> label_on(const Board& board, geometry::Point<geometry::Wall> at,
                              std::string text, Align align);

/// Around all shapes, texts as estimated at `scale`.
geometry::Rect<geometry::Wall> extent_of(const Shapes& shapes, double scale);

}  // namespace wallwright::draw
