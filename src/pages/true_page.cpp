#include "pages/true_page.h"

#include "draw/paths.h"
#include "pages/clipped.h"
#include "pages/render.h"
#include "pages/stop_notes.h"

#include <algorithm>
#include <iterator>
#include <optional>

namespace wallwright::pages {

namespace {

using draw::Align;
using draw::Ink;
using geometry::Page;
using geometry::Rect;
using geometry::Wall;
using ToPage = geometry::Transform<Wall, Page>;

constexpr double kBleed = 0.3;  // mm around a part, for the width of lines
constexpr Type kNumber{3.5, true};
constexpr Type kLine{2, false};
constexpr Type kAlong{2, false};

/// A tag's words as one block, its upper left corner at the origin.
struct Block {
    geometry::Size size;
    double lines_left = 0;
};

Block block_of(const Tag& tag, bool with_lines) {
    Block block;
    const bool numbered = !tag.number.empty();
    const double number = numbered ? text_width(tag.number, kNumber.size, true) : 0;
    block.size = {number, numbered ? kNumber.size : 0};
    if (!with_lines || tag.lines.empty())
        return block;
    block.lines_left = numbered ? number + 1.5 : 0;
    double widest = 0;
    for (const std::string& one : tag.lines)
        widest = std::max(widest, text_width(one, kLine.size, false));
    block.size.width = block.lines_left + widest;
    block.size.height =
        std::max(block.size.height,
                 kLine.size + static_cast<double>(tag.lines.size() - 1) * line_height(kLine.size));
    return block;
}

/// Beside the point, below and above it, then farther out.
std::vector<Area> places_for(const Block& block, Spot at, double clear) {
    std::vector<Area> places;
    const double w = block.size.width;
    const double h = block.size.height;
    if (clear == 0)
        places.push_back(Area::at({at.x - w / 2, at.y - h / 2}, block.size));
    for (const double out : {1.5, 6.0, 12.0, 20.0})
        for (const Spot corner :
             {Spot{at.x + out, at.y + clear}, Spot{at.x + clear, at.y + out},
              Spot{at.x - out - w, at.y + clear}, Spot{at.x + out, at.y - clear - h},
              Spot{at.x - out - w, at.y - clear - h}, Spot{at.x + clear, at.y - out - h},
              Spot{at.x - clear - w, at.y + out}, Spot{at.x - w / 2, at.y + clear + out},
              Spot{at.x - w / 2, at.y - clear - out - h}})
            places.push_back(Area::at(corner, block.size));
    return places;
}

std::optional<Spot> free_place(const WordRoom& room, const Tag& tag, Spot at, bool with_lines) {
    for (const Area& place : places_for(block_of(tag, with_lines), at, tag.clear))
        if (room.is_free(place.grown(0.5)))
            return place.min;
    return std::nullopt;
}

/// Beside the point over what is there, on its plate: a number is never left out.
Spot crowded_place(const WordRoom& room, const Tag& tag, Spot at) {
    const std::vector<Area> places = places_for(block_of(tag, false), at, tag.clear);
    const auto inside = std::ranges::find_if(places, [&room](const Area& place) {
        return room.area().contains(place.min) && room.area().contains(place.max);
    });
    return (inside == places.end() ? places.front() : *inside).min;
}

void write(Shapes& shapes, WordRoom& room, const Tag& tag, Spot at, bool with_lines) {
    const Block block = block_of(tag, with_lines);
    const Area place = Area::at(at, block.size);
    room.take(place.grown(0.5));
    shapes.emplace_back(draw::box(place.grown(0.4), {draw::Paint{Ink::paper, {}, 0.85}, {}}));
    if (!tag.number.empty())
        shapes.emplace_back(text_at({at.x, at.y + kNumber.size}, tag.number, kNumber, Ink::mark));
    if (!with_lines)
        return;
    double y = at.y + kLine.size;
    for (const std::string& one : tag.lines) {
        shapes.emplace_back(text_at({at.x + block.lines_left, y}, one, kLine));
        y += line_height(kLine.size);
    }
}

/// On the line, from the left, where there is room.
void add_along(Shapes& shapes, WordRoom& room, const std::string& words, Spot from, double length,
               bool below) {
    const double width = text_width(words, kAlong.size, false);
    constexpr double kAir = 1.4;
    constexpr double kStep = 12;
    const double base = below ? from.y + kAir + kAlong.size : from.y - kAir;
    for (double x = from.x + 3; x + width + 3 <= from.x + length; x += kStep) {
        const Area place{{x, base - kAlong.size}, {x + width, base + 0.5}};
        if (!room.is_free(place.grown(0.4)))
            continue;
        room.take(place.grown(0.4));
        shapes.emplace_back(text_at({x, base}, words, kAlong, Ink::quiet_text));
        return;
    }
}

void add_words_along(Shapes& shapes, WordRoom& room, const TrueDrawing& drawing,
                     const Rect<Wall>& shown, const ToPage& to_page) {
    const auto add = [&](const std::string& words, double height, double from, double to,
                         bool below) {
        const double left = std::max(from, shown.left());
        const double length = std::min(to, shown.right()) - left;
        if (height >= shown.bottom() && height <= shown.top() && length > 0)
            add_along(shapes, room, words, to_page(geometry::Point<Wall>{left, height}), length,
                      below);
    };
    for (const LevelLine& level : drawing.levels)
        add(level.words, level.height, level.from, level.to, false);
    for (const Rect<Wall>& place : drawing.places) {
        add("top edge of the frame", place.top(), place.left(), place.right(), true);
        add("bottom edge of the frame", place.bottom(), place.left(), place.right(), false);
    }
}

/// Lines that words are not to cross.
void keep_clear(WordRoom& room, const TrueDrawing& drawing, const ToPage& to_page) {
    constexpr double kHalf = 0.3;  // mm
    const auto take = [&](geometry::Point<Wall> from, geometry::Point<Wall> to) {
        room.take(to_page(Rect<Wall>{from, to}).grown(kHalf));
    };
    for (const auto* places : {&drawing.places, &drawing.hung})
        for (const Rect<Wall>& place : *places) {
            take(place.min, {place.max.x, place.min.y});
            take(place.min, {place.min.x, place.max.y});
            take({place.max.x, place.min.y}, place.max);
            take({place.min.x, place.max.y}, place.max);
        }
    for (const LevelLine& level : drawing.levels)
        take({level.from, level.height}, {level.to, level.height});
}

void add_up_arrow(Shapes& shapes, Spot at) {
    constexpr double kHalf = 2.6;
    const draw::Look look{draw::Paint{Ink::outline}, std::nullopt};
    const Spot tip{at.x + kHalf, at.y};
    shapes.emplace_back(draw::polygon<Page>({tip,
                                             {tip.x + kHalf, tip.y + 5},
                                             {tip.x + 0.7, tip.y + 5},
                                             {tip.x + 0.7, tip.y + 12},
                                             {tip.x - 0.7, tip.y + 12},
                                             {tip.x - 0.7, tip.y + 5},
                                             {tip.x - kHalf, tip.y + 5}},
                                            look));
    shapes.emplace_back(aligned(text_at({tip.x, tip.y + 15.2}, "up", {2.2, true}), Align::centre));
}

}  // namespace

bool WordRoom::is_free(const Area& place) const {
    return area_.contains(place.min) && area_.contains(place.max) &&
           std::ranges::none_of(taken_,
                                [&](const Area& one) { return geometry::overlaps(one, place); });
}

void add_tag(Shapes& shapes, WordRoom& room, const Tag& tag, Spot at) {
    for (const bool with_lines : {true, false})
        if (const auto place = free_place(room, tag, at, with_lines)) {
            write(shapes, room, tag, *place, with_lines);
            return;
        }
    if (!tag.number.empty())
        write(shapes, room, tag, crowded_place(room, tag, at), false);
}

void add_part(Shapes& shapes, WordRoom& room, const TrueDrawing& drawing, const Rect<Wall>& shown,
              const ToPage& to_page) {
    Shapes kept =
        clipped(draw::placed_on_page(drawing.lines, to_page).shapes, to_page(shown).grown(kBleed));
    std::move(kept.begin(), kept.end(), std::back_inserter(shapes));
    keep_clear(room, drawing, to_page);
    for (const Rect<Wall>& point : drawing.points)
        if (touch(point, shown))
            room.take(to_page(point));
    for (const Tag& tag : drawing.tags)
        if (shown.contains(tag.at))
            add_tag(shapes, room, tag, to_page(tag.at));
    add_words_along(shapes, room, drawing, shown, to_page);
}

void add_join_mark(Shapes& shapes, Spot at) {
    shapes.emplace_back(draw::circle(at, 0.5 * kJoinReach, {std::nullopt, kJoinStroke}));
    shapes.emplace_back(
        draw::line<Page>({at.x - kJoinReach, at.y}, {at.x + kJoinReach, at.y}, kJoinStroke));
    shapes.emplace_back(
        draw::line<Page>({at.x, at.y - kJoinReach}, {at.x, at.y + kJoinReach}, kJoinStroke));
}

void add_head(Shapes& shapes, Spot at, double width, const PageHead& head) {
    constexpr Type kHeading{3.5, true};
    constexpr Type kWhich{2.2, false};
    constexpr Type kHow{2, false};
    add_up_arrow(shapes, {at.x, at.y + 0.5});
    const double left = at.x + 9;
    const double room = width - 9;
    shapes.emplace_back(
        text_at({left, at.y + 4}, shortened(head.heading, kHeading, room), kHeading));
    if (head.stop.empty())
        shapes.emplace_back(
            text_at({left, at.y + 8.6}, shortened(head.which, kWhich, room), kWhich));
    else
        add_stop_line(shapes, {left, at.y + 8.6}, head.stop, {kWhich.size, true}, room);
    const std::string how = head.stop.empty() ? head.how : head.which + " " + head.how;
    double y = at.y + 8.8;
    for (const std::string& one : few_lines(how, kHow, room, 4)) {
        y += line_height(kHow.size);
        shapes.emplace_back(text_at({left, y}, one, kHow, Ink::quiet_text));
    }
}

}  // namespace wallwright::pages
