#include "draw/force_arrows.h"

#include "draw/dimensions.h"
#include "draw/paths.h"

#include <algorithm>
#include <cmath>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;
using hanging::ForceKind;
using Vec = geometry::Vec<Wall>;

// mm on paper.
constexpr double kLeast = 1.6;      // of an arrow, however weak its force
constexpr double kHead = 2.2;       // of a head, along the arrow
constexpr double kHeadShare = 0.6;  // of a short arrow that its head takes
constexpr double kHeadWide = 0.36;  // half a head's width over its length
constexpr double kShaft = 0.5;
constexpr double kThin = 0.25;
constexpr double kAir = 0.9;   // between an arrow and its figure
constexpr double kStep = 2.6;  // by which a figure moves on to find room
constexpr int kSteps = 24;
constexpr int kFirstWithLeader = 2;

Ink ink_of(ForceKind kind) {
    switch (kind) {
        case ForceKind::weight:
            return Ink::outline;
        case ForceKind::carried:
            return Ink::accent;
        case ForceKind::held:
        case ForceKind::wall_push:
            return Ink::mark;
    }
    return Ink::outline;
}

/// An arrow with its ends on the drawing.
struct Laid {
    const Arrow& arrow;
    Point<Wall> tip;
    Vec along;          ///< Of length 1.
    double length = 0;  ///< mm on paper.
};

Laid laid(const Easel& easel, const Arrow& arrow, double paper_mm) {
    const double strength = std::hypot(arrow.newton.x, arrow.newton.y);
    const double length = std::max(kLeast, strength * paper_mm);
    const Vec along = (1 / strength) * arrow.newton;
    return {arrow, arrow.from + easel.on_wall(length) * along, along, length};
}

/// weight: full; carried: two strokes; held: hollow; wall_push: hollow, and a plate at its foot.
void add_head(Easel& easel, const Laid& one) {
    const Paint paint{ink_of(one.arrow.kind)};
    const double head = easel.on_wall(head_length(one.length));
    const Vec across{-one.along.y, one.along.x};
    const Point<Wall> foot = one.tip + -head * one.along;
    const Point<Wall> left = foot + kHeadWide * head * across;
    const Point<Wall> right = foot + -kHeadWide * head * across;
    switch (one.arrow.kind) {
        case ForceKind::weight:
            easel.add(polygon<Wall>({one.tip, left, right}, {paint, std::nullopt}));
            break;
        case ForceKind::carried:
            easel.add(lines<Wall>({left, one.tip, right}, Stroke{paint, kShaft}));
            break;
        case ForceKind::held:
        case ForceKind::wall_push:
            easel.add(
                polygon<Wall>({one.tip, left, right}, {Paint{Ink::paper}, Stroke{paint, kThin}}));
            break;
    }
    if (one.arrow.kind == ForceKind::wall_push) {
        const Vec half = easel.on_wall(kHeadWide * kHead) * across;
        easel.add(
            line<Wall>(one.arrow.from + half, one.arrow.from + -1.0 * half, Stroke{paint, kShaft}));
    }
}

/// Where the arrow runs no figure may stand.
void take_room(Easel& easel, const Laid& one) {
    constexpr int kParts = 8;
    const Vec part = (1.0 / kParts) * (one.tip - one.arrow.from);
    const double aside = easel.on_wall(kHeadWide * kHead);
    for (int i = 0; i <= kParts; ++i) {
        const Point<Wall> at = one.arrow.from + static_cast<double>(i) * part;
        easel.room.take(Rect<Wall>{at, at}.grown(aside));
    }
}

void add_arrow(Easel& easel, const Laid& one) {
    const bool open = one.arrow.kind == ForceKind::carried;
    const double bare = open ? one.length : one.length - head_length(one.length);
    easel.add(line<Wall>(one.arrow.from, one.arrow.from + easel.on_wall(bare) * one.along,
                         Stroke{{ink_of(one.arrow.kind)}, kShaft}));
    add_head(easel, one);
    take_room(easel, one);
}

Text<Wall> figure_at(const Laid& one, Point<Wall> at, Align align) {
    return {
        at,    one.arrow.figure,           kSmallFigureSize, {ink_of(one.arrow.kind)}, align, true,
        false, Paint{Ink::paper, {}, 0.85}};
}

/// So far off the arrow: beside its middle and its ends, toward the middle of the view first; close
/// to it past its tip too, before it is put on the outer side.
std::vector<Text<Wall>> choices(const Easel& easel, const Laid& one, double off, double inward) {
    const double aside = easel.on_wall(kAir + kHeadWide * kHead + off);
    const double half = easel.on_wall(kSmallFigureSize / 2);
    const double past = one.along.y < 0 ? -aside - 2 * half : aside;
    const Point<Wall> middle = one.arrow.from + 0.5 * (one.tip - one.arrow.from);
    std::vector<Text<Wall>> found;
    for (const double side : {inward, -inward}) {
        const Align align = side > 0 ? Align::left : Align::right;
        for (const Point<Wall> by : {middle, one.tip, one.arrow.from})
            found.push_back(figure_at(one, {by.x + side * aside, by.y - half}, align));
        if (off >= kFirstWithLeader * kStep)
            continue;
        found.push_back(figure_at(one, {one.tip.x, one.tip.y + past}, Align::centre));
        found.push_back(
            figure_at(one, {one.tip.x - side * easel.on_wall(kAir), one.tip.y + past}, align));
    }
    return found;
}

/// From the arrow's middle to the nearest point of the figure's box.
void add_leader(Easel& easel, const Laid& one, const Text<Wall>& text) {
    const Rect<Wall> box = estimated_box(text, easel.scale);
    const Point<Wall> middle = one.arrow.from + 0.5 * (one.tip - one.arrow.from);
    const Point<Wall> near{std::clamp(middle.x, box.min.x, box.max.x),
                           std::clamp(middle.y, box.min.y, box.max.y)};
    easel.add(line<Wall>(middle, near, Stroke{{ink_of(one.arrow.kind)}, 0.18}));
}

void add_figure(Easel& easel, const Laid& one, double inward) {
    for (int step = 0; step < kSteps; ++step)
        for (const Text<Wall>& text : choices(easel, one, step * kStep, inward)) {
            if (!easel.room.is_free(estimated_box(text, easel.scale)))
                continue;
            if (step >= kFirstWithLeader)
                add_leader(easel, one, text);
            easel.add_label(text);
            return;
        }
}

}  // namespace

double head_length(double length) {
    return std::min(kHead, kHeadShare * std::max(length, kLeast));
}

void add_arrows(Easel& easel, const std::vector<Arrow>& arrows, double paper_mm, double middle) {
    std::vector<Laid> all;
    for (const Arrow& arrow : arrows)
        if (std::hypot(arrow.newton.x, arrow.newton.y) > 0)
            all.push_back(laid(easel, arrow, paper_mm));
    for (const Laid& one : all)
        add_arrow(easel, one);
    for (const Laid& one : all)
        if (!one.arrow.figure.empty())
            add_figure(easel, one, one.arrow.from.x > middle + geometry::kLengthEps ? -1 : 1);
}

}  // namespace wallwright::draw
