#include "desk/bench/hand_words.h"

#include "draw/labels.h"
#include "draw/paths.h"

#include <algorithm>

namespace wallwright::desk {

namespace {

using draw::Ink;
using draw::Paint;
using draw::Stroke;
using geometry::Point;
using geometry::Rect;
using geometry::Wall;

// All in mm on paper.
constexpr double kSize = 1.8;
constexpr double kLine = 3.1;
constexpr double kAir = 1.4;
constexpr double kUnder = 2;
constexpr double kWidest = 62;
constexpr std::size_t kMostLines = 6;

Rect<Wall> inside(Rect<Wall> place, const Rect<Wall>& sight) {
    const double left = std::min(0.0, sight.max.x - place.max.x);
    place = place.moved({left, 0});
    place = place.moved({std::max(0.0, sight.min.x - place.min.x), 0});
    return place.moved({0, std::max(0.0, sight.min.y - place.min.y)});
}

}  // namespace

std::vector<draw::Shape<Wall>> hand_words(const std::string& words, const Rect<Wall>& place,
                                          const Rect<Wall>& sight, Ink edge, double unit) {
    std::vector<draw::Shape<Wall>> shapes;
    const std::vector<std::string> lines = draw::wrapped(words, kSize, kWidest, kMostLines);
    if (lines.empty())
        return shapes;
    double widest = 0;
    for (const std::string& line : lines)
        widest = std::max(widest, draw::estimated_width(line, kSize));
    const double high = 2 * kAir + kSize + kLine * static_cast<double>(lines.size() - 1);
    const Point<Wall> top{place.centre().x, place.min.y - kUnder * unit};
    const double half = (widest / 2 + kAir) * unit;
    const Rect<Wall> plate =
        inside({{top.x - half, top.y - high * unit}, {top.x + half, top.y}}, sight);
    shapes.emplace_back(draw::rounded_box(plate, unit, {Paint{Ink::paper}, Stroke{{edge}, 0.25}}));
    double y = plate.max.y - (kAir + kSize) * unit;
    for (const std::string& line : lines) {
        draw::Text<Wall> text{{plate.min.x + kAir * unit, y}, line};
        text.size = kSize;
        shapes.emplace_back(std::move(text));
        y -= kLine * unit;
    }
    return shapes;
}

}  // namespace wallwright::desk
