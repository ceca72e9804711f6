#include "draw/drawing.h"

#include "draw/placed.h"

#include <fmt/format.h>

#include <cmath>

namespace wallwright::draw {

namespace {

using geometry::Rect;

/// To 0.01, never "-0.00".
std::string number(double value) {
    const double rounded = std::round(value * 100) / 100;
    return fmt::format("{:.2f}", rounded == 0 ? 0.0 : rounded);
}

template <class Space>
std::string words(Point<Space> point) {
    return number(point.x) + " " + number(point.y);
}

template <class Space>
std::string words(const Rect<Space>& rect) {
    return words(rect.min) + " to " + words(rect.max);
}

std::string words(const Paint& paint) {
    std::string text(wall::name_of(paint.ink));
    if (paint.ink == Ink::own)
        text = wall::to_text(paint.colour);
    if (paint.alpha != 1)
        text += "@" + number(paint.alpha);
    return text;
}

std::string words(const Stroke& stroke) {
    return fmt::format("{} {} {}", words(stroke.paint), number(stroke.width),
                       wall::name_of(stroke.type));
}

template <class Space>
std::string line_of(const Path<Space>& path) {
    std::string line = "path M " + words(path.start);
    for (const Step<Space>& step : path.steps) {
        if (step.controls)
            line += " C " + words(step.controls->first) + " " + words(step.controls->second) + " " +
                    words(step.to);
        else
            line += " L " + words(step.to);
    }
    if (path.closed)
        line += " Z";
    if (path.fill)
        line += " fill " + words(*path.fill);
    if (path.stroke)
        line += " stroke " + words(*path.stroke);
    return line;
}

template <class Space>
std::string line_of(const Hatch<Space>& hatch) {
    std::string line = "hatch";
    for (const std::vector<Point<Space>>& area : hatch.areas) {
        line += " area";
        for (const Point<Space> corner : area)
            line += " " + words(corner);
    }
    return line + " every " + number(hatch.spacing) + " " + words(hatch.paint);
}

template <class Space>
std::string line_of(const Text<Space>& text) {
    std::string line = fmt::format("text {} {} {} {}", words(text.at), wall::name_of(text.align),
                                   number(text.size), words(text.paint));
    if (text.bold)
        line += " bold";
    if (text.upward)
        line += " upward";
    if (text.plate)
        line += " on " + words(*text.plate);
    return line + " \"" + text.text + "\"";
}

template <class Space>
std::string line_of(const Image<Space>& image) {
    return fmt::format("image {} \"{}\" else {}", words(image.place), image.file,
                       words(image.instead));
}

template <class Space>
std::string line_of(const Shadow<Space>& shadow) {
    return fmt::format("shadow {} deep {}", words(shadow.of), number(shadow.depth));
}

template <class Space>
std::string text_of(const Drawing<Space>& drawing) {
    std::string text = "extent " + words(drawing.extent) + "\n";
    for (const Shape<Space>& shape : drawing.shapes)
        text += std::visit([](const auto& one) { return line_of(one); }, shape) + "\n";
    return text;
}

}  // namespace

PageDrawing placed_on_page(const WallDrawing& drawing,
                           const geometry::Transform<geometry::Wall, geometry::Page>& to_page) {
    return placed(drawing, to_page);
}

std::string to_text(const WallDrawing& drawing) {
    return text_of(drawing);
}
std::string to_text(const PageDrawing& drawing) {
    return text_of(drawing);
}

}  // namespace wallwright::draw
