#include "draw/mounted.h"

#include "draw/paths.h"
#include "draw/tint.h"

#include <algorithm>
#include <filesystem>
#include <optional>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;
using wall::Colour;

constexpr Colour kCore{0xFF, 0xFF, 0xFF};
// mm by which paper on its hinges stands off the card, for its shadow; by eye.
constexpr double kOffCard = 3;

/// What of `rect` lies within; empty where nothing does.
Rect<Wall> inside(const Rect<Wall>& rect, const Rect<Wall>& within) {
    const Point<Wall> min{std::clamp(rect.min.x, within.min.x, within.max.x),
                          std::clamp(rect.min.y, within.min.y, within.max.y)};
    return {
        min,
        {std::clamp(rect.max.x, min.x, within.max.x), std::clamp(rect.max.y, min.y, within.max.y)}};
}

/// What is seen through one window of each layer in turn; gives what the last leaves open.
Rect<Wall> add_layers(Shapes& shapes, const mounts::MountDesign& design, std::size_t window,
                      const Rect<Wall>& blank, const Rect<Wall>& sight) {
    Rect<Wall> opening = sight;
    for (const mounts::CutLayer& layer : design.layers) {
        if (&layer != design.layers.data())
            shapes.emplace_back(box(opening, {own(layer.colour), std::nullopt}));
        const mounts::Window& cut = layer.windows[window];
        std::optional<Paint> core;
        if (design.edge == wall::WindowEdge::bevel)
            core = own(kCore);
        shapes.emplace_back(box(inside(on_blank(blank, cut.face), opening),
                                {core, Stroke{own(darker(layer.colour, 0.25)), 0.13}}));
        opening = inside(on_blank(blank, cut.back), opening);
    }
    return opening;
}

void add_floating(Shapes& shapes, const Rect<Wall>& place, const wall::Print& print,
                  const Pictures& pictures) {
    shapes.emplace_back(Shadow<Wall>{place, kOffCard});
    add_picture(shapes, place, print, pictures);
    shapes.emplace_back(
        box(place, {std::nullopt, Stroke{own(darker(print.colour, 0.4), 0.6), 0.13}}));
}

}  // namespace

Rect<Wall> on_blank(const Rect<Wall>& blank, const Rect<mounts::Front>& place) {
    return {{blank.min.x + place.min.x, blank.max.y - place.max.y},
            {blank.min.x + place.max.x, blank.max.y - place.min.y}};
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

void add_mounted(Shapes& shapes, const wall::Project& project, const mounts::MountDesign& design,
                 const Rect<Wall>& blank, const Rect<Wall>& sight, const Pictures& pictures) {
    shapes.emplace_back(box(sight, {own(design.layers.front().colour), std::nullopt}));
    for (std::size_t i = 0; i < design.prints.size(); ++i) {
        const wall::Print* print = wall::find(project, design.prints[i].id);
        if (print == nullptr)
            continue;
        if (design.floats)
            add_floating(shapes, inside(on_blank(blank, design.prints[i].place), sight), *print,
                         pictures);
        else
            add_picture(shapes, add_layers(shapes, design, i, blank, sight), *print, pictures);
    }
}

}  // namespace wallwright::draw
