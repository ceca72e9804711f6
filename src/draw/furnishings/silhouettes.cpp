#include "draw/furnishings/silhouettes.h"

#include <cmath>

namespace wallwright::draw::silhouettes {

Stroke contour(Colour colour) {
    return {own(darker(colour, 0.42)), 0.18};
}

Look solid(Colour colour) {
    return {own(colour), contour(colour)};
}

Point<Wall> at(const Rect<Wall>& place, Share share) {
    return {place.min.x + share.x * place.width(), place.min.y + share.y * place.height()};
}

Rect<Wall> part(const Rect<Wall>& place, Share lower_left, Share upper_right) {
    return {at(place, lower_left), at(place, upper_right)};
}

std::vector<Rect<Wall>> columns(const Rect<Wall>& place, int count, double gap) {
    const double pitch = (place.width() + gap) / count;
    std::vector<Rect<Wall>> boxes;
    boxes.reserve(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i) {
        const double left = place.min.x + i * pitch;
        boxes.push_back({{left, place.min.y}, {left + pitch - gap, place.max.y}});
    }
    return boxes;
}

int parts_of(double length, double usual) {
    return std::max(1, static_cast<int>(std::lround(length / usual)));
}

void plain_box(Shapes& shapes, const Rect<Wall>& place, Colour colour) {
    shapes.emplace_back(rounded_box(place, 15, solid(colour)));
}

}  // namespace wallwright::draw::silhouettes
