// Shapes taken from one space to another: points and depths of shadows mapped, widths of lines and
// sizes of text kept, since they are paper sizes already.
#pragma once

#include "draw/drawing.h"

#include <variant>

namespace wallwright::draw {

template <class From, class To>
Path<To> placed(const Path<From>& path, const geometry::Transform<From, To>& to) {
    Path<To> there{to(path.start), {}, path.closed, path.fill, path.stroke};
    there.steps.reserve(path.steps.size());
    for (const Step<From>& step : path.steps) {
        Step<To> mapped{to(step.to), std::nullopt};
        if (step.controls)
            mapped.controls = {to(step.controls->first), to(step.controls->second)};
        there.steps.push_back(mapped);
    }
    return there;
}

template <class From, class To>
Hatch<To> placed(const Hatch<From>& hatch, const geometry::Transform<From, To>& to) {
    Hatch<To> there{{}, hatch.paint, hatch.spacing};
    for (const std::vector<Point<From>>& area : hatch.areas) {
        std::vector<Point<To>>& corners = there.areas.emplace_back();
        for (const Point<From> corner : area)
            corners.push_back(to(corner));
    }
    return there;
}

template <class From, class To>
Text<To> placed(const Text<From>& text, const geometry::Transform<From, To>& to) {
    return {to(text.at), text.text, text.size,   text.paint,
            text.align,  text.bold, text.upward, text.plate};
}

template <class From, class To>
Image<To> placed(const Image<From>& image, const geometry::Transform<From, To>& to) {
    return {to(image.place), image.file, image.instead};
}

template <class From, class To>
Shadow<To> placed(const Shadow<From>& shadow, const geometry::Transform<From, To>& to) {
    return {to(shadow.of), to.scale * shadow.depth};
}

template <class From, class To>
Drawing<To> placed(const Drawing<From>& drawing, const geometry::Transform<From, To>& to) {
    Drawing<To> there{to(drawing.extent), {}};
    there.shapes.reserve(drawing.shapes.size());
    for (const Shape<From>& shape : drawing.shapes)
        there.shapes.push_back(
            std::visit([&to](const auto& one) { return Shape<To>(placed(one, to)); }, shape));
    return there;
}

}  // namespace wallwright::draw
