#include "desk/bench/moved_shapes.h"

namespace wallwright::desk {

namespace {

using geometry::Vec;
using geometry::Wall;

void move(draw::Path<Wall>& path, Vec<Wall> by) {
    path.start = path.start + by;
    for (draw::Step<Wall>& step : path.steps) {
        step.to = step.to + by;
        if (step.controls)
            step.controls = {step.controls->first + by, step.controls->second + by};
    }
}

void move(draw::Hatch<Wall>& hatch, Vec<Wall> by) {
    for (auto& area : hatch.areas)
        for (auto& corner : area)
            corner = corner + by;
}

void move(draw::Text<Wall>& text, Vec<Wall> by) {
    text.at = text.at + by;
}

void move(draw::Image<Wall>& image, Vec<Wall> by) {
    image.place = image.place.moved(by);
}

void move(draw::Shadow<Wall>& shadow, Vec<Wall> by) {
    shadow.of = shadow.of.moved(by);
}

}  // namespace

draw::WallDrawing moved(draw::WallDrawing drawing, Vec<Wall> by) {
    drawing.extent = drawing.extent.moved(by);
    for (auto& shape : drawing.shapes)
        std::visit([by](auto& one) { move(one, by); }, shape);
    return drawing;
}

}  // namespace wallwright::desk
