// The silhouettes, one file each. All draw from back to front inside `place`.
#pragma once

#include "draw/furnishings.h"
#include "draw/paths.h"
#include "draw/tint.h"

namespace wallwright::draw::silhouettes {

using geometry::Rect;
using geometry::Wall;
using wall::Colour;

void sofa(Shapes& shapes, const Rect<Wall>& place, Colour colour);
void bed(Shapes& shapes, const Rect<Wall>& place, Colour colour);
void cot(Shapes& shapes, const Rect<Wall>& place, Colour colour);
void sideboard(Shapes& shapes, const Rect<Wall>& place, Colour colour);
void table(Shapes& shapes, const Rect<Wall>& place, Colour colour);
void lamp(Shapes& shapes, const Rect<Wall>& place, Colour colour);
void plant(Shapes& shapes, const Rect<Wall>& place, Colour colour);
void bookcase(Shapes& shapes, const Rect<Wall>& place, Colour colour);
void door(Shapes& shapes, const Rect<Wall>& place, Colour colour);
void window(Shapes& shapes, const Rect<Wall>& place, Colour colour);
void radiator(Shapes& shapes, const Rect<Wall>& place, Colour colour);
void socket(Shapes& shapes, const Rect<Wall>& place, Colour colour);
void light_switch(Shapes& shapes, const Rect<Wall>& place, Colour colour);
void basin(Shapes& shapes, const Rect<Wall>& place, Colour colour);
void plain_box(Shapes& shapes, const Rect<Wall>& place, Colour colour);

/// A thin contour in a darker tone of the colour.
Stroke contour(Colour colour);
/// Filled with the colour, with its contour.
Look solid(Colour colour);

/// A place inside another, in shares of its width from the left and of its height from the bottom.
struct Share {
    double x = 0;
    double y = 0;
};
Point<Wall> at(const Rect<Wall>& place, Share share);
Rect<Wall> part(const Rect<Wall>& place, Share lower_left, Share upper_right);

/// `count` equal boxes side by side, `gap` mm apart.
std::vector<Rect<Wall>> columns(const Rect<Wall>& place, int count, double gap);
/// How many parts of about `usual` mm fill `length`; at least 1.
int parts_of(double length, double usual);

}  // namespace wallwright::draw::silhouettes
