#include "draw/cut_marks.h"

#include "draw/paths.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Vec;
using geometry::Wall;

const Stroke kPencil{{Ink::mark}, 0.25};
const Stroke kCut{{Ink::outline}, 0.7};
const Stroke kArrow{{Ink::outline}, 0.25};
const Stroke kFace{{Ink::hidden}, 0.25, LineType::dashed};

// All in mm on paper.
constexpr double kPast = 6;      // of a pencil line past the corner
constexpr double kInside = 2.6;  // from a cut to its arrow
constexpr double kShort = 4.5;   // from a cross to where the arrow starts and ends
constexpr double kDot = 0.75;    // radius of the filled start
constexpr double kHeadLength = 2.4;
constexpr double kHeadHalf = 0.8;
constexpr double kNumberSize = 2.5;
constexpr double kLeastToTell = 0.5;     // between a cut and the face's opening
constexpr double kLeastWithArrows = 12;  // of a window's shorter side

double shorter(const Rect<Wall>& rect) {
    return std::min(rect.width(), rect.height());
}

void add_pencil(Easel& easel, const Rect<Wall>& line_box, double past) {
    for (const double y : {line_box.max.y, line_box.min.y})
        easel.add(line<Wall>({line_box.min.x - past, y}, {line_box.max.x + past, y}, kPencil));
    for (const double x : {line_box.min.x, line_box.max.x})
        easel.add(line<Wall>({x, line_box.min.y - past}, {x, line_box.max.y + past}, kPencil));
}

/// Beside its cut in what drops out: from a filled start to an arrow's head, with its number.
void add_way(Easel& easel, Point<Wall> from, Point<Wall> to, Point<Wall> middle, int number) {
    const Vec<Wall> along = (1 / geometry::distance(from, to)) * (to - from);
    const Vec<Wall> inward =
        std::abs(along.x) > std::abs(along.y)
            ? Vec<Wall>{0, middle.y > from.y ? easel.on_wall(kInside) : -easel.on_wall(kInside)}
            : Vec<Wall>{middle.x > from.x ? easel.on_wall(kInside) : -easel.on_wall(kInside), 0};
    const double shorten = std::min(easel.on_wall(kShort), 0.24 * geometry::distance(from, to));
    const Point<Wall> start = from + inward + shorten * along;
    const Point<Wall> end = to + inward + (-shorten) * along;
    easel.add(line(start, end + (-easel.on_wall(kHeadLength)) * along, kArrow));
    easel.add(circle(start, easel.on_wall(kDot), {Paint{Ink::outline}, std::nullopt}));
    add_arrow_head(easel, end, along);
    const Point<Wall> half{(start.x + end.x) / 2, (start.y + end.y) / 2};
    Text<Wall> text{{half.x, half.y - easel.on_wall(kNumberSize) / 2}, fmt::format("{}", number)};
    text.size = kNumberSize;
    text.bold = true;
    text.align = Align::centre;
    text.plate = Paint{Ink::paper};
    easel.add_label(text);
}

void add_window(Easel& easel, const mounts::LayerMarks& layer, const mounts::WindowMarks& window,
                geometry::Size blank) {
    const double height = blank.height;
    const Rect<Wall> cut = on_table(window.line, height);
    for (const mounts::Cut& one : window.cuts)
        easel.add(line(on_table(one.from, height), on_table(one.to, height), kCut));
    if (layer.bevel * easel.scale >= kLeastToTell)
        easel.add(box(cut.grown(layer.bevel), {std::nullopt, kFace}));
    const auto board = Rect<Wall>::at({0, 0}, blank);
    // What leaves the board cannot be cut.
    const bool inside = board.contains(cut.min) && board.contains(cut.max);
    if (!inside || shorter(cut) < easel.on_wall(kLeastWithArrows))
        return;
    for (std::size_t i = 0; i < window.cuts.size(); ++i)
        add_way(easel, on_table(window.cuts[i].from, height), on_table(window.cuts[i].to, height),
                cut.centre(), static_cast<int>(i) + 1);
}

}  // namespace

Point<Wall> on_table(Point<mounts::Back> point, double blank_height) {
    return {point.x, blank_height - point.y};
}

Rect<Wall> on_table(const Rect<mounts::Back>& place, double blank_height) {
    return {{place.min.x, blank_height - place.max.y}, {place.max.x, blank_height - place.min.y}};
}

double pencil_past(const Easel& easel, const mounts::LayerMarks& layer) {
    constexpr double kShareOfBorder = 0.6;
    constexpr double kShareOfBar = 0.4;
    double past = easel.on_wall(kPast);
    for (const mounts::WindowMarks& one : layer.windows) {
        const mounts::Borders& from = one.from_edges;
        past = std::min(past,
                        kShareOfBorder * std::min({from.left, from.right, from.top, from.bottom}));
        for (const mounts::WindowMarks& other : layer.windows)
            if (&other != &one)
                past =
                    std::min(past, kShareOfBar * geometry::distance_between(one.line, other.line));
    }
    return std::max(0.0, past);
}

void add_arrow_head(Easel& easel, Point<Wall> tip, Vec<Wall> along) {
    const Vec<Wall> side{-along.y, along.x};
    const Point<Wall> base = tip + (-easel.on_wall(kHeadLength)) * along;
    easel.add(polygon<Wall>(
        {tip, base + easel.on_wall(kHeadHalf) * side, base + (-easel.on_wall(kHeadHalf)) * side},
        {Paint{Ink::outline}, std::nullopt}));
}

void add_cut_marks(Easel& easel, const mounts::LayerMarks& layer, geometry::Size blank) {
    const double past = pencil_past(easel, layer);
    for (const mounts::WindowMarks& window : layer.windows)
        add_pencil(easel, on_table(window.line, blank.height), past);
    for (const mounts::WindowMarks& window : layer.windows)
        add_window(easel, layer, window, blank);
}

}  // namespace wallwright::draw
