#include "draw/framed.h"

#include "draw/paths.h"
#include "draw/tint.h"
#include "draw/wished.h"
#include "mounts/window.h"

#include <algorithm>
#include <filesystem>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;
using wall::Colour;

constexpr double kBevel = 1.5;  // mm of the board's core that shows around the window
constexpr Colour kCore{0xFF, 0xFF, 0xFF};
constexpr Colour kBacking{0xCF, 0xC2, 0xAB};

/// What the moulding leaves to be seen.
Rect<Wall> sight_of(const Rect<Wall>& place, const wall::Frame& frame) {
    const double most = 0.45 * std::min(place.width(), place.height());
    return place.grown(-std::min(frame.moulding_width, most));
}

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

void add_picture(Shapes& shapes, const Rect<Wall>& place, const wall::Print& print,
                 const Pictures& pictures) {
    if (pictures.shown && !print.picture.empty())
        shapes.emplace_back(
            Image<Wall>{place, (std::filesystem::path(pictures.folder) / print.picture).string(),
                        own(print.colour)});
    else
        shapes.emplace_back(box(place, {own(print.colour), std::nullopt}));
}

/// The part of the print that its mount shows, kept inside the sight size.
Rect<Wall> window_of(const Rect<Wall>& sight, const wall::Frame& frame, const wall::Mount& mount,
                     const wall::Print& print) {
    const mounts::Borders seen = mounts::plan_mount(frame, mount, print).seen;
    const double half_width = sight.width() / 2 - kBevel;
    const double half_height = sight.height() / 2 - kBevel;
    const auto border = [](double wanted, double most) {
        return std::clamp(wanted, 0.0, std::max(0.0, most));
    };
    return {{sight.min.x + border(seen.left, half_width),
             sight.min.y + border(seen.bottom, half_height)},
            {sight.max.x - border(seen.right, half_width),
             sight.max.y - border(seen.top, half_height)}};
}

/// A print without a mount covers the sight size, or lies in its middle where it is smaller.
Rect<Wall> middle_of(const Rect<Wall>& sight, geometry::Size print) {
    const double width = std::min(print.width, sight.width());
    const double height = std::min(print.height, sight.height());
    const Point<Wall> c = sight.centre();
    return {{c.x - width / 2, c.y - height / 2}, {c.x + width / 2, c.y + height / 2}};
}

void add_mounted(Shapes& shapes, const Rect<Wall>& sight, const wall::Mount& mount,
                 const Rect<Wall>& window) {
    shapes.emplace_back(box(sight, {own(mount.colour), std::nullopt}));
    const Rect<Wall> all_round = window.grown(kBevel);
    const Rect<Wall> bevel{
        {std::max(all_round.min.x, sight.min.x), std::max(all_round.min.y, sight.min.y)},
        {std::min(all_round.max.x, sight.max.x), std::min(all_round.max.y, sight.max.y)}};
    shapes.emplace_back(box(bevel, {own(kCore), Stroke{own(darker(mount.colour, 0.25)), 0.13}}));
}

}  // namespace

void add_framed(Shapes& shapes, const wall::Project& project, const wall::Piece& piece,
                const Rect<Wall>& place, const Pictures& pictures) {
    if (piece.wished)
        return add_wished(shapes, place);
    wall::Frame frame = mounts::as_hung(wall::frame_of(project, piece), piece.turned);
    frame.outside = place.size();
    const wall::Mount* mount = piece.mount ? wall::find(project, *piece.mount) : nullptr;
    const wall::Print* print = piece.print ? wall::find(project, *piece.print) : nullptr;
    const Rect<Wall> sight = sight_of(place, frame);

    shapes.emplace_back(Shadow<Wall>{place, frame.depth});
    if (mount == nullptr)
        shapes.emplace_back(box(sight, {own(kBacking), std::nullopt}));
    else if (print == nullptr)
        shapes.emplace_back(box(sight, {own(mount->colour), std::nullopt}));
    if (mount != nullptr && print != nullptr)
        add_mounted(shapes, sight, *mount, window_of(sight, frame, *mount, *print));
    if (print != nullptr)
        add_picture(shapes,
                    mount != nullptr ? window_of(sight, frame, *mount, *print)
                                     : middle_of(sight, print->size),
                    *print, pictures);
    add_lip_shadow(shapes, sight);
    add_moulding(shapes, place, sight, frame.colour);
}

}  // namespace wallwright::draw
