#include "desk/bench/lock_sign.h"

#include "draw/paths.h"

namespace wallwright::desk {

namespace {

using draw::Ink;
using draw::Paint;
using draw::Stroke;
using geometry::Point;
using geometry::Rect;
using geometry::Wall;

// All in mm on paper.
constexpr double kDisc = 2.1;
constexpr double kBodyWide = 2.0;
constexpr double kBodyHigh = 1.4;
constexpr double kShackle = 0.62;  // half of its width
constexpr double kLift = 0.5;      // of the open one

/// Upside down U from the left foot to the right one.
draw::Path<Wall> shackle(Point<Wall> middle, double half, double leg, const Stroke& stroke) {
    const Point<Wall> left{middle.x - half, middle.y};
    const Point<Wall> right{middle.x + half, middle.y};
    const double top = middle.y + leg;
    return draw::Pen<Wall>(left)
        .line({left.x, top})
        .round({left.x, top + half}, {middle.x, top + half})
        .round({right.x, top + half}, {right.x, top})
        .line(right)
        .drawn(stroke);
}

}  // namespace

std::vector<draw::Shape<Wall>> lock_sign(Point<Wall> at, double unit, bool shut) {
    const Ink ink = shut ? Ink::accent : Ink::dimension;
    const Paint paint{ink, {}, shut ? 1 : 0.75};
    const Point<Wall> body{at.x, at.y - 0.45 * unit};
    const double half_wide = kBodyWide / 2 * unit;
    const double half_high = kBodyHigh / 2 * unit;
    const double lift = shut ? 0 : kLift * unit;
    std::vector<draw::Shape<Wall>> shapes;
    shapes.emplace_back(
        draw::circle(at, kDisc * unit, {Paint{Ink::paper}, Stroke{paint, shut ? 0.35 : 0.25}}));
    shapes.emplace_back(shackle({at.x + 0.9 * lift, body.y + half_high + lift}, kShackle * unit,
                                0.35 * unit, {paint, 0.35}));
    shapes.emplace_back(draw::rounded_box(Rect<Wall>{{body.x - half_wide, body.y - half_high},
                                                     {body.x + half_wide, body.y + half_high}},
                                          0.25 * unit, {paint, std::nullopt}));
    return shapes;
}

}  // namespace wallwright::desk
