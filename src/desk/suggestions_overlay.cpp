#include "desk/overlay_lines.h"
#include "desk/plans_overlay.h"
#include "draw/dashes.h"
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

/// Number and size in the middle, where the frame is large enough for the words and no label is.
bool add_words(Overlay& overlay, const Rect<Wall>& place, std::size_t index, units::LengthUnit unit,
               bool is_pointed_out) {
    const std::vector<std::string> lines = size_lines(overlay, place, unit);
    if (lines.empty())
        return false;
    const double step = overlay.on_wall(kLineStep);
    const double half = overlay.on_wall(draw::kSmallFigureSize) / 2;
    Point<Wall> at = place.centre();
    at.y += step * static_cast<double>(lines.size()) / 2 - half;
    std::vector<draw::Text<Wall>> texts{on_paper(number_at(overlay, at, index), is_pointed_out)};
    for (const std::string& line : lines) {
        at.y -= step;
        texts.push_back(on_paper(overlay.label(at, line), is_pointed_out));
    }
    if (!is_pointed_out && !std::ranges::all_of(texts, [&overlay](const draw::Text<Wall>& text) {
            return overlay.is_free(text);
        }))
        return false;
    for (const draw::Text<Wall>& text : texts)
        overlay.add_first_free({text});
    return true;
}

/// The labels of the wall's drawing that stand on the wall's own colour, and where frames meet
/// them.
class Labels {
  public:
    Labels(const WallShapes& under, double scale) : scale_(scale) {
        for (const draw::Shape<Wall>& shape : under)
            if (const auto* const text = std::get_if<draw::Text<Wall>>(&shape);
                text != nullptr && text->plate)
                texts_.push_back(*text);
    }

    /// Over the frame that meets them, and kept clear of from then on.
    void add_again(Overlay& overlay, const Rect<Wall>& frame) const {
        for (const draw::Text<Wall>& text : texts_)
            if (geometry::overlaps(frame, box_of(text))) {
                overlay.keep_clear(box_of(text));
                overlay.add(text);
            }
    }

  private:
    [[nodiscard]] Rect<Wall> box_of(const draw::Text<Wall>& text) const {
        return draw::estimated_box(text, scale_).grown(draw::kPlateAir / scale_);
    }

    double scale_;
    std::vector<draw::Text<Wall>> texts_;
};

bool covers_a_better_one(const std::vector<Suggestion>& list, std::size_t index) {
    return std::any_of(list.begin(), list.begin() + static_cast<std::ptrdiff_t>(index),
                       [&](const Suggestion& better) {
                           return geometry::overlaps(better.place, list[index].place);
                       });
}

void add_usual(Overlay& overlay, const Suggestions& suggestions, const Labels& labels,
               units::LengthUnit unit) {
    const auto& list = suggestions.list();
    const auto is_usual = [&](std::size_t i) { return suggestions.pointed_out() != i; };
    for (std::size_t i = 0; i < list.size(); ++i)
        if (is_usual(i))
            overlay.add(draw::box(list[i].place, {std::nullopt, kUsual}));
    for (const Suggestion& one : list)
        labels.add_again(overlay, one.place);
    for (std::size_t i = 0; i < list.size(); ++i)
        if (is_usual(i) &&
            (covers_a_better_one(list, i) || !add_words(overlay, list[i].place, i, unit, false)))
            add_number(overlay, list[i].place, i);
}

void add_pointed_out(Overlay& overlay, const Rect<Wall>& place, std::size_t index,
                     const Labels& labels, units::LengthUnit unit) {
    overlay.add(draw::box(place, {Paint{Ink::paper, {}, kFilled}, kPointedOut}));
    labels.add_again(overlay, place);
    if (!add_words(overlay, place, index, unit, true))
        add_number(overlay, place, index);
}

}  // namespace

WallShapes suggestions_overlay(const Session& session, const Suggestions& suggestions,
                               const WallShapes& under, double scale) {
    const wall::Project& project = session.project();
    Overlay overlay(project.room.colour, scale);
    const Labels labels(under, scale);
    add_usual(overlay, suggestions, labels, project.unit);
    if (const auto pointed_out = suggestions.pointed_out())
        add_pointed_out(overlay, suggestions.list()[*pointed_out].place, *pointed_out, labels,
                        project.unit);
    return overlay.take();
}

}  // namespace wallwright::desk
