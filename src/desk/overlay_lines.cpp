#include "desk/overlay_lines.h"

#include "draw/dimensions.h"
#include "draw/paths.h"
#include "draw/tint.h"

#include <algorithm>
#include <cmath>

namespace wallwright::desk {

namespace {

using draw::Ink;
using draw::LineType;
using draw::Stroke;
using geometry::Point;
using geometry::Rect;
using geometry::Segment;
using geometry::Vec;
using geometry::Wall;

// All in mm on paper.
constexpr double kTickReach = 1.0;  // from the end of a line to both sides
constexpr double kOverrun = 1.0;    // of a dimension line past its ends
constexpr double kGuideReach = 3;   // of a guide past its ends
constexpr double kAir = 1.2;        // between a line and its words

const Stroke kThin{{Ink::accent}, 0.25};
const Stroke kTick{{Ink::accent}, 0.35};
const Stroke kDashed{{Ink::accent}, 0.25, LineType::dashed};

bool is_upright(const Segment<Wall>& line) {
    return std::abs(line.to.x - line.from.x) < std::abs(line.to.y - line.from.y);
}

/// Along the line, 1 mm long; to the right for a line without length.
Vec<Wall> direction(const Segment<Wall>& line) {
    const Vec<Wall> way = line.to - line.from;
    const double length = geometry::length(way);
    return length > geometry::kLengthEps ? (1 / length) * way : Vec<Wall>{1, 0};
}

/// The base line of words whose middle is at this height.
double base_for(const Overlay& overlay, double middle) {
    return middle - overlay.on_wall(draw::kSmallFigureSize) / 2;
}

/// A short oblique stroke across the end of a dimension line.
void add_tick(Overlay& overlay, Point<Wall> end, Vec<Wall> along) {
    const double reach = overlay.on_wall(kTickReach);
    const Vec<Wall> oblique{reach * (along.x - along.y), reach * (along.x + along.y)};
    overlay.add(draw::line(end + -1 * oblique, end + oblique, kTick));
}

/// The places for a dimension's words, the best first.
std::vector<draw::Text<Wall>> label_choices(const Overlay& overlay, const Segment<Wall>& line,
                                            const std::string& words) {
    const Point<Wall> middle = line.from + 0.5 * (line.to - line.from);
    const double air = overlay.on_wall(kAir);
    const double height = overlay.on_wall(draw::kSmallFigureSize);
    if (!is_upright(line))
        return {overlay.label({middle.x, middle.y + air}, words),
                overlay.label({middle.x, middle.y - air - height}, words)};
    draw::Text<Wall> right = overlay.label({middle.x + air, base_for(overlay, middle.y)}, words);
    draw::Text<Wall> left = right;
    right.align = draw::Align::left;
    left.at.x = middle.x - air;
    left.align = draw::Align::right;
    return {right, left};
}

void add_dimension(Overlay& overlay, const Segment<Wall>& line, const std::string& words) {
    const Vec<Wall> along = direction(line);
    const Vec<Wall> overrun = overlay.on_wall(kOverrun) * along;
    overlay.add(draw::line(line.from + -1 * overrun, line.to + overrun, kThin));
    add_tick(overlay, line.from, along);
    add_tick(overlay, line.to, along);
    overlay.add_first_free(label_choices(overlay, line, words));
    overlay.keep_clear(hull(Rect<Wall>{line.from, line.from}, Rect<Wall>{line.to, line.to})
                           .grown(overlay.on_wall(kTickReach)));
}

}  // namespace

Overlay::Overlay(wall::Colour wall_colour, double scale)
    : scale_(scale), plate_(draw::own(draw::wash(wall_colour))) {}

draw::Text<Wall> Overlay::label(Point<Wall> at, std::string text) const {
    draw::Text<Wall> label{at, std::move(text)};
    label.size = draw::kSmallFigureSize;
    label.paint.ink = Ink::accent;
    label.align = draw::Align::centre;
    label.plate = plate_;
    return label;
}

bool Overlay::is_free(const draw::Text<Wall>& text) const {
    return room_.is_free(draw::estimated_box(text, scale_));
}

bool Overlay::add_if_free(const std::vector<draw::Text<Wall>>& choices) {
    const auto free = std::ranges::find_if(
        choices, [this](const draw::Text<Wall>& text) { return is_free(text); });
    if (free == choices.end())
        return false;
    keep_clear(draw::estimated_box(*free, scale_));
    add(*free);
    return true;
}

void Overlay::add_first_free(const std::vector<draw::Text<Wall>>& choices) {
    if (add_if_free(choices))
        return;
    keep_clear(draw::estimated_box(choices.front(), scale_));
    add(choices.front());
}

void add_guide(Overlay& overlay, const Guide& guide) {
    if (guide.kind == SnapKind::gap)
        return add_dimension(overlay, guide.line, guide.words);
    const Vec<Wall> past = overlay.on_wall(kGuideReach) * direction(guide.line);
    const Point<Wall> from = guide.line.from + -1 * past;
    const Point<Wall> to = guide.line.to + past;
    overlay.add(draw::line(from, to, kDashed));
    const double air = overlay.on_wall(kAir);
    if (is_upright(guide.line))
        return overlay.add_first_free(
            {overlay.label({to.x, std::max(from.y, to.y) + air}, guide.words)});
    draw::Text<Wall> label =
        overlay.label({std::max(from.x, to.x) + air, base_for(overlay, to.y)}, guide.words);
    label.align = draw::Align::left;
    overlay.add_first_free({label});
}

void add_measure(Overlay& overlay, const LiveMeasure& measure) {
    add_dimension(overlay, measure.line, measure.figure);
}

}  // namespace wallwright::desk
