#include "desk/overlay_lines.h"
#include "desk/plans_overlay.h"
#include "draw/dimensions.h"
#include "draw/labels.h"
#include "draw/paths.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::desk {

namespace {

using arrange::Suggestion;
using draw::Ink;
using draw::LineType;
using draw::Paint;
using draw::Stroke;
using geometry::Point;
using geometry::Rect;
using geometry::Wall;

// All in mm on paper.
constexpr double kLineStep = 3.0;  // from one base line to the next
constexpr double kInside = 1.4;    // between a frame's edge and words beside it
constexpr double kBelow = 0.6;     // the same, and words below or above it
constexpr double kFilled = 0.9;    // how much of the wall the one pointed out covers

const Stroke kUsual{{Ink::accent}, 0.35, LineType::dashed};
const Stroke kPointedOut{{Ink::accent}, 0.7, LineType::dashed};

std::string number(std::size_t index) {
    return std::to_string(index + 1);
}

/// On the paper that fills the one pointed out.
draw::Text<Wall> on_paper(draw::Text<Wall> text, bool is_pointed_out) {
    if (is_pointed_out)
        text.plate = Paint{Ink::paper};
    return text;
}

draw::Text<Wall> number_at(const Overlay& overlay, Point<Wall> at, std::size_t index) {
    draw::Text<Wall> text = overlay.label(at, number(index));
    text.bold = true;
    return text;
}

/// Only the number, in the middle or else in a corner.
void add_number(Overlay& overlay, const Rect<Wall>& place, std::size_t index) {
    const double half = overlay.on_wall(draw::kSmallFigureSize) / 2;
    const Rect<Wall> inner = place.grown(-overlay.on_wall(kInside) - half);
    std::vector<draw::Text<Wall>> choices;
    for (const Point<Wall> at : {inner.centre(), Point<Wall>{inner.left(), inner.top()}, inner.max,
                                 inner.min, Point<Wall>{inner.right(), inner.bottom()}})
        choices.push_back(number_at(overlay, {at.x, at.y - half}, index));
    overlay.add_first_free(choices);
}

/// Width and height in the person's unit, in one line or two; none where there is no room.
std::vector<std::string> size_lines(const Overlay& overlay, const Rect<Wall>& place,
                                    units::LengthUnit unit) {
    const double width = place.width() - overlay.on_wall(kInside);
    const double height = place.height() - overlay.on_wall(kBelow);
    const std::string across = units::format_number(place.width(), unit) + " ×";
    const std::string up = units::format_number(place.height(), unit);
    const auto fits = [&](const std::vector<std::string>& lines) {
        return overlay.on_wall(kLineStep) * static_cast<double>(lines.size() + 1) <= height &&
               std::ranges::all_of(lines, [&](const std::string& line) {
                   return overlay.on_wall(draw::estimated_width(line, draw::kSmallFigureSize)) <=
                          width;
               });
    };
    for (const std::vector<std::string>& lines :
         {std::vector{fmt::format("{} {}", across, up)}, std::vector{across, up}})
        if (fits(lines))
            return lines;
    return {};
}

/// Number and size in the middle, where the frame is large enough for the words.
bool add_words(Overlay& overlay, const Rect<Wall>& place, std::size_t index, units::LengthUnit unit,
               bool is_pointed_out) {
    const std::vector<std::string> lines = size_lines(overlay, place, unit);
    if (lines.empty())
        return false;
    const double step = overlay.on_wall(kLineStep);
    const double half = overlay.on_wall(draw::kSmallFigureSize) / 2;
    Point<Wall> at = place.centre();
    at.y += step * static_cast<double>(lines.size()) / 2 - half;
    overlay.add_first_free({on_paper(number_at(overlay, at, index), is_pointed_out)});
    for (const std::string& line : lines) {
        at.y -= step;
        overlay.add_first_free({on_paper(overlay.label(at, line), is_pointed_out)});
    }
    return true;
}

void add_suggestion(Overlay& overlay, const Suggestions& suggestions, std::size_t index,
                    units::LengthUnit unit) {
    const auto& list = suggestions.list();
    const bool is_pointed_out = suggestions.pointed_out() == index;
    const Rect<Wall>& place = list[index].place;
    const auto covers = [&place](const Suggestion& better) {
        return geometry::overlaps(better.place, place);
    };
    const bool is_covered =
        std::any_of(list.begin(), list.begin() + static_cast<std::ptrdiff_t>(index), covers);
    if (is_pointed_out)
        overlay.add(draw::box(place, {Paint{Ink::paper, {}, kFilled}, kPointedOut}));
    else
        overlay.add(draw::box(place, {std::nullopt, kUsual}));
    if ((is_covered && !is_pointed_out) || !add_words(overlay, place, index, unit, is_pointed_out))
        add_number(overlay, place, index);
}

}  // namespace

WallShapes suggestions_overlay(const Session& session, const Suggestions& suggestions,
                               double scale) {
    Overlay overlay(session.project().room.colour, scale);
    const auto pointed_out = suggestions.pointed_out();
    for (std::size_t i = 0; i < suggestions.list().size(); ++i)
        if (pointed_out != i)
            add_suggestion(overlay, suggestions, i, session.project().unit);
    if (pointed_out)
        add_suggestion(overlay, suggestions, *pointed_out, session.project().unit);
    return overlay.take();
}

}  // namespace wallwright::desk
