#include "draw/framed.h"

#include "draw/mounted.h"
#include "draw/paths.h"
#include "draw/tint.h"
#include "draw/wished.h"

#include <algorithm>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;
using wall::Colour;

constexpr Colour kBacking{0xCF, 0xC2, 0xAB};

/// Four sides with mitred ends, lit from the upper left.
void add_moulding(Shapes& shapes, const Rect<Wall>& outer, const Rect<Wall>& inner, Colour colour) {
    const Point<Wall> outer_corners[] = {
        outer.min, {outer.max.x, outer.min.y}, outer.max, {outer.min.x, outer.max.y}};
    const Point<Wall> inner_corners[] = {
        inner.min, {inner.max.x, inner.min.y}, inner.max, {inner.min.x, inner.max.y}};
    const Colour lower = darker(colour, 0.22);
    const Colour right = darker(colour, 0.10);
    const Colour upper = lighter(colour, 0.16);
    const Colour left = lighter(colour, 0.06);
    const Colour faces[] = {lower, right, upper, left};
    for (std::size_t i = 0; i < 4; ++i) {
        const std::size_t next = (i + 1) % 4;
        shapes.emplace_back(polygon<Wall>(
            {outer_corners[i], outer_corners[next], inner_corners[next], inner_corners[i]},
            {own(faces[i]), Stroke{own(faces[i]), 0.05}}));
    }
    const Stroke edge{own(darker(colour, 0.5)), 0.18};
    for (std::size_t i = 0; i < 4; ++i)
        shapes.emplace_back(
            line(outer_corners[i], inner_corners[i], Stroke{own(darker(colour, 0.35), 0.8), 0.1}));
    const double step = 0.62 * (inner.min.x - outer.min.x);
    shapes.emplace_back(
        box(outer.grown(-step), {std::nullopt, Stroke{own(lighter(colour, 0.35), 0.55), 0.1}}));
    shapes.emplace_back(box(outer, {std::nullopt, edge}));
    shapes.emplace_back(box(inner, {std::nullopt, edge}));
}

/// The shadow that the lip throws on what lies behind it.
void add_lip_shadow(Shapes& shapes, const Rect<Wall>& sight) {
    const double depth = std::min(5.0, 0.03 * std::min(sight.width(), sight.height()));
    const Look look{Paint{Ink::shade, {}, 0.16}, std::nullopt};
    shapes.emplace_back(polygon<Wall>({{sight.min.x, sight.min.y},
                                       {sight.min.x, sight.max.y},
                                       {sight.max.x, sight.max.y},
                                       {sight.max.x, sight.max.y - depth},
                                       {sight.min.x + depth, sight.max.y - depth},
                                       {sight.min.x + depth, sight.min.y}},
                                      look));
}

Rect<Wall> in_the_middle(const Rect<Wall>& place, geometry::Size size) {
    const Point<Wall> c = place.centre();
    return {{c.x - size.width / 2, c.y - size.height / 2},
            {c.x + size.width / 2, c.y + size.height / 2}};
}

/// A print without a mount covers the sight size, or lies in its middle where it is smaller.
Rect<Wall> middle_of(const Rect<Wall>& sight, geometry::Size print) {
    return in_the_middle(
        sight, {std::min(print.width, sight.width()), std::min(print.height, sight.height())});
}

}  // namespace

Rect<Wall> sight_of(const Rect<Wall>& place, const wall::Frame& frame) {
    const double most = 0.45 * std::min(place.width(), place.height());
    return place.grown(-std::min(frame.moulding_width, most));
}

void add_framed_mount(Shapes& shapes, const wall::Project& project, const wall::Piece& piece,
                      const Rect<Wall>& place, const mounts::MountDesign& design,
                      const Pictures& pictures) {
    const wall::Frame& frame = wall::frame_of(project, piece);
    const Rect<Wall> sight = sight_of(place, frame);
    shapes.emplace_back(Shadow<Wall>{place, frame.depth});
    add_mounted(shapes, project, design, in_the_middle(place, design.blank), sight, pictures);
    add_lip_shadow(shapes, sight);
    add_moulding(shapes, place, sight, frame.colour);
}

void add_framed(Shapes& shapes, const wall::Project& project, const wall::Piece& piece,
                const Rect<Wall>& place, const Pictures& pictures) {
    if (piece.wished)
        return add_wished(shapes, place);
    if (const auto design = mounts::design_of(project, piece))
        return add_framed_mount(shapes, project, piece, place, *design, pictures);
    const wall::Frame& frame = wall::frame_of(project, piece);
    const wall::Mount* mount = piece.mount ? wall::find(project, *piece.mount) : nullptr;
    const wall::Print* print = piece.print ? wall::find(project, *piece.print) : nullptr;
    const Rect<Wall> sight = sight_of(place, frame);

    shapes.emplace_back(Shadow<Wall>{place, frame.depth});
    shapes.emplace_back(
        box(sight, {own(mount == nullptr ? kBacking : mount->colour), std::nullopt}));
    if (mount == nullptr && print != nullptr)
        add_picture(shapes, middle_of(sight, print->size), *print, pictures);
    add_lip_shadow(shapes, sight);
    add_moulding(shapes, place, sight, frame.colour);
}

}  // namespace wallwright::draw
