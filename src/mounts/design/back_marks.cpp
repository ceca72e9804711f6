#include "mounts/design/back_marks.h"

#include <cmath>

namespace wallwright::mounts {

namespace {

using geometry::Size;

// Of the sheet's width, from its corner to the middle of a hinge; common practice, no source.
constexpr double kHingeShare = 1.0 / 6;

double diagonal_of(Size size) {
    return std::hypot(size.width, size.height);
}

WindowMarks marks_of(const Window& window, const wall::PrintId& print, Size blank) {
    WindowMarks marks;
    marks.print = print;
    marks.line = mirrored(window.back, blank.width);
    const Rect<Back>& line = marks.line;
    marks.from_edges = {line.left(), blank.width - line.right(), line.top(),
                        blank.height - line.bottom()};
    marks.crosses = {{{line.left(), line.top()},
                      {line.right(), line.top()},
                      {line.right(), line.bottom()},
                      {line.left(), line.bottom()}}};
    for (std::size_t i = 0; i < marks.cuts.size(); ++i)
        marks.cuts[i] = {marks.crosses[i], marks.crosses[(i + 1) % marks.crosses.size()]};
    marks.diagonal = diagonal_of(line.size());
    return marks;
}

template <class To, class From>
Rect<To> over(const Rect<From>& place, double blank_width) {
    return {{blank_width - place.max.x, place.min.y}, {blank_width - place.min.x, place.max.y}};
}

}  // namespace

Rect<Back> mirrored(const Rect<Front>& place, double blank_width) {
    return over<Back>(place, blank_width);
}

Rect<Front> mirrored(const Rect<Back>& place, double blank_width) {
    return over<Front>(place, blank_width);
}

BackMarks back_marks(const MountDesign& design) {
    BackMarks marks;
    marks.blank = design.blank;
    for (const CutLayer& layer : design.layers) {
        LayerMarks& out = marks.layers.emplace_back();
        out.diagonal = diagonal_of(design.blank);
        out.bevel = design.edge == wall::WindowEdge::bevel ? layer.card.thickness : 0;
        for (std::size_t i = 0; i < layer.windows.size(); ++i)
            out.windows.push_back(marks_of(layer.windows[i], design.prints[i].id, design.blank));
    }
    for (const LaidPrint& print : design.prints)
        marks.hinges.push_back({print.id, print.place, print.place.width() * kHingeShare});
    return marks;
}

}  // namespace wallwright::mounts
