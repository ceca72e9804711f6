// What every drawing with figures shares while it is made: its scale, its unit, its shapes, and
// which places labels have taken.
#pragma once

#include "draw/furnishings.h"
#include "draw/labels.h"
#include "units/length.h"

#include <span>
#include <string>
#include <utility>

namespace wallwright::draw {

struct Easel {
    double scale = 1;  ///< mm on paper for one mm of what is drawn.
    units::LengthUnit unit = units::LengthUnit::mm;
    Shapes shapes{};
    LabelRoom room{};

    /// mm of wall, or of what lies on the table, that so many mm of paper cover.
    [[nodiscard]] double on_wall(double paper_mm) const { return paper_mm / scale; }
    /// A length as the person reads it, without its unit.
    [[nodiscard]] std::string figure(double mm) const { return units::format_number(mm, unit); }

    /// Adds the shape.
    template <class OneShape>
    void add(OneShape shape) {
        shapes.emplace_back(std::move(shape));
    }
    /// Adds the text and takes its room.
    void add_label(const Text<geometry::Wall>& text);
    /// Adds the first text whose room is free and inside; false when there is none.
    bool add_first_inside(std::span<const Text<geometry::Wall>> choices,
                          const geometry::Rect<geometry::Wall>& inside);
};

/// Around all shapes, texts as estimated at `scale`.
geometry::Rect<geometry::Wall> extent_of(const Shapes& shapes, double scale);

}  // namespace wallwright::draw
