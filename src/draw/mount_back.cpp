#include "draw/mount_back.h"

#include "draw/cut_marks.h"
#include "draw/dimensions.h"
#include "draw/paths.h"
#include "mounts/design/rule_step.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;
using spacing::Axis;

// All in mm on paper.
constexpr double kFirstChain = 8;  // from the blank's edge
constexpr double kBetweenChains = 7;
constexpr double kBetweenFractions = 11;  // "1 15/16" reads across between two chains
constexpr double kNoteBelow = 4.5;        // from the last chain to the first note
constexpr double kNoteLine = 3.8;         // from note to note
constexpr double kAboveBlank = 2.6;
constexpr double kCornerMark = 8;  // of the marks for a floating print's corners
constexpr double kWordAir = 1;

/// A window, or a print that floats, as it lies before the person, and what it is called.
struct Lying {
    Rect<Wall> place;
    std::string title;
    std::string letter;  ///< Of several.
    double diagonal = 0;

    [[nodiscard]] std::string name() const {
        return letter.empty() ? title : fmt::format("{}, {}", letter, title);
    }
};

Rect<Wall> face_up(const Rect<mounts::Front>& place, double height) {
    return {{place.min.x, height - place.max.y}, {place.max.x, height - place.min.y}};
}

std::vector<Lying> lying(const mounts::MountDesign& design, const mounts::BackMarks& marks,
                         const mounts::LayerMarks& layer) {
    const double height = marks.blank.height;
    std::vector<Lying> all;
    for (std::size_t i = 0; i < design.prints.size(); ++i) {
        Lying& one = all.emplace_back();
        one.title = design.prints[i].title;
        one.letter = design.prints.size() > 1 ? mounts::letter_of(i) : "";
        if (design.floats) {
            one.place = face_up(marks.hinges[i].place, height);
        } else {
            one.place = on_table(layer.windows[i].line, height);
            one.diagonal = layer.windows[i].diagonal;
        }
    }
    return all;
}

/// Corners to mark under where the paper will lie, and its outline as a hidden line.
void add_float_marks(Easel& easel, const std::vector<Lying>& prints) {
    const Stroke pencil{{Ink::mark}, 0.5};
    for (const Lying& one : prints) {
        const Rect<Wall>& place = one.place;
        easel.add(box(place, {std::nullopt, Stroke{{Ink::hidden}, 0.25, LineType::dashed}}));
        const double reach =
            std::min(easel.on_wall(kCornerMark), 0.3 * std::min(place.width(), place.height()));
        for (const auto& [corner, inward] :
             {std::pair(Point<Wall>{place.min.x, place.max.y}, reach),
              std::pair(place.max, -reach)})
            easel.add(lines<Wall>(
                {{corner.x + inward, corner.y}, corner, {corner.x, corner.y - reach}}, pencil));
    }
}

/// What a chain along one direction measures of one window.
struct Lines {
    double first = 0;
    double second = 0;
    double feature = 0;  ///< Where the extension lines come from.
};

/// One for each pair of lines that differs from the others, the nearest to the edge first.
std::vector<Lines> lines_along(const std::vector<Lying>& windows, Axis axis, double past) {
    std::vector<Lines> all;
    for (const Lying& one : windows) {
        const Rect<Wall>& place = one.place;
        const Lines next = axis == Axis::horizontal
                               ? Lines{place.min.x, place.max.x, place.min.y - past}
                               : Lines{place.min.y, place.max.y, place.min.x - past};
        const auto same = std::find_if(all.begin(), all.end(), [&next](const Lines& had) {
            return geometry::is_same_length(had.first, next.first) &&
                   geometry::is_same_length(had.second, next.second);
        });
        if (same == all.end())
            all.push_back(next);
        else
            same->feature = std::min(same->feature, next.feature);
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Lines& a, const Lines& b) { return a.first < b.first; });
    return all;
}

/// Below or to the left: from edge to line, from line to line, from line to edge, a row for each
/// window; outermost the blank. Gives how far out the last row is, mm on paper.
double add_rows(std::vector<Chain>& chains, const Easel& easel, const std::vector<Lying>& windows,
                Axis axis, double length, double past) {
    const double between =
        easel.unit == units::LengthUnit::inch ? kBetweenFractions : kBetweenChains;
    double out = kFirstChain;
    for (const Lines& one : lines_along(windows, axis, past)) {
        chains.push_back(
            {axis,
             -easel.on_wall(out),
             {{0, 0}, {one.first, one.feature}, {one.second, one.feature}, {length, 0}},
             true});
        out += between;
    }
    chains.push_back({axis, -easel.on_wall(out), {{0, 0}, {length, 0}}});
    return out;
}

std::string check_words(const Easel& easel, double diagonal) {
    return fmt::format("both diagonals {}", easel.figure(diagonal));
}

void add_middle(Easel& easel, Point<Wall> middle, double up, const std::string& words, bool bold) {
    Text<Wall> text{{middle.x, middle.y + up}, words};
    text.size = bold ? kFigureSize : kSmallFigureSize;
    text.bold = bold;
    text.align = Align::centre;
    text.paint.ink = bold ? Ink::text : Ink::dimension;
    easel.add_label(text);
}

/// The window's name and its diagonals in its middle; false where there is no room.
bool add_words(Easel& easel, const Lying& window) {
    constexpr double kBoldWider = 1.07;
    constexpr std::size_t kTitleLines = 2;
    const Rect<Wall> inside = window.place.grown(-easel.on_wall(kArrowRoom + kWordAir));
    const double width = inside.width() * easel.scale;
    std::vector<std::string> lines =
        wrapped(window.name(), kFigureSize, width / kBoldWider, kTitleLines);
    const std::size_t bold = lines.size();
    if (window.diagonal > 0)
        lines.push_back(check_words(easel, window.diagonal));
    const double line = easel.on_wall(kNoteLine);
    const auto count = static_cast<double>(lines.size());
    if (lines.empty() || inside.height() < count * line ||
        (window.diagonal > 0 && width < estimated_width(lines.back(), kSmallFigureSize)))
        return false;
    const Point<Wall> c = window.place.centre();
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const double size = i < bold ? kFigureSize : kSmallFigureSize;
        const double up = ((count - 1) / 2 - static_cast<double>(i)) * line;
        add_middle(easel, c, up - easel.on_wall(size / 2), lines[i], i < bold);
    }
    return true;
}

/// The letter of a window that is too small for its words.
void add_letter(Easel& easel, const Lying& window) {
    constexpr double kLeastSide = 5;
    if (std::min(window.place.width(), window.place.height()) >= easel.on_wall(kLeastSide))
        add_middle(easel, window.place.centre(), -easel.on_wall(kFigureSize / 2), window.letter,
                   true);
}

void add_note(Easel& easel, double below, const std::string& words) {
    Text<Wall> text{{0, -easel.on_wall(below)}, words};
    text.size = kSmallFigureSize;
    text.paint.ink = Ink::dimension;
    easel.add_label(text);
}

/// What one reads to know how the board lies, above its upper edge.
void add_upper_edge(Easel& easel, geometry::Size blank, bool floats) {
    constexpr int kLiftsMost = 4;
    Text<Wall> text{{}, floats ? "upper edge, face up" : "upper edge, face down"};
    text.size = kFigureSize;
    const double width = estimated_width(text.text, kFigureSize);
    const double left = blank.width / 2 - easel.on_wall(width / 2);
    text.at = {left + easel.on_wall(2.5), blank.height + easel.on_wall(kAboveBlank)};
    for (int i = 0; i < kLiftsMost && !easel.room.is_free(estimated_box(text, easel.scale)); ++i)
        text.at.y += easel.on_wall(kNoteLine);
    easel.add_label(text);
    easel.add(line<Wall>({left, text.at.y - easel.on_wall(0.8)},
                         {left, text.at.y + easel.on_wall(1)}, Stroke{{Ink::outline}, 0.35}));
    add_arrow_head(easel, {left, text.at.y + easel.on_wall(3.2)}, {0, 1});
}

void add_measures(Easel& easel, bool floats, geometry::Size blank,
                  const std::vector<Lying>& windows, const mounts::LayerMarks& marks) {
    const auto board = Rect<Wall>::at({0, 0}, blank);
    const double past = pencil_past(easel, marks);
    std::vector<Chain> chains;
    const double out = add_rows(chains, easel, windows, Axis::horizontal, blank.width, past);
    add_rows(chains, easel, windows, Axis::vertical, blank.height, past);
    std::vector<std::string> notes{fmt::format("blank: {}", check_words(easel, marks.diagonal))};
    for (const Lying& window : windows) {
        const bool inside = board.contains(window.place.min) && board.contains(window.place.max);
        if (inside && add_words(easel, window))
            continue;
        if (inside && !window.letter.empty())
            add_letter(easel, window);
        notes.push_back(window.diagonal > 0 ? fmt::format("{}: {}", window.name(),
                                                          check_words(easel, window.diagonal))
                                            : window.name());
    }
    add_chains(easel, std::move(chains));
    double below = out + kNoteBelow;
    for (const std::string& note : notes) {
        add_note(easel, below, note);
        below += kNoteLine;
    }
    add_upper_edge(easel, blank, floats);
}

}  // namespace

WallDrawing mount_back(const mounts::MountDesign& design, std::size_t layer, units::LengthUnit unit,
                       const BenchOptions& options) {
    const mounts::BackMarks marks = mounts::back_marks(design, mounts::rule_step(unit));
    const mounts::LayerMarks& own_marks = marks.layers.at(layer);
    Easel easel{options.scale, unit};
    easel.add(
        box(Rect<Wall>::at({0, 0}, marks.blank), {Paint{Ink::paper}, Stroke{{Ink::outline}, 0.5}}));
    const std::vector<Lying> windows = lying(design, marks, own_marks);
    if (design.floats)
        add_float_marks(easel, windows);
    else
        add_cut_marks(easel, own_marks, marks.blank);
    if (options.measures)
        add_measures(easel, design.floats, marks.blank, windows, own_marks);
    const Rect<Wall> extent = extent_of(easel.shapes, options.scale);
    return {extent, std::move(easel.shapes)};
}

}  // namespace wallwright::draw
