#include "mounts/design/back_marks.h"

#include "mounts/design/rule_step.h"

#include <algorithm>
#include <cmath>

namespace wallwright::mounts {

namespace {

using geometry::Size;

// Of the sheet's width, from its corner to the middle of a hinge; common practice, no source.
constexpr double kHingeShare = 1.0 / 6;

double diagonal_of(Size size) {
    return std::hypot(size.width, size.height);
}

template <class To, class From>
Rect<To> over(const Rect<From>& place, double blank_width) {
    return {{blank_width - place.max.x, place.min.y}, {blank_width - place.min.x, place.max.y}};
}

template <class Space>
Borders between(const Rect<Space>& outer, const Rect<Space>& inner) {
    return {inner.min.x - outer.min.x, outer.max.x - inner.max.x, inner.min.y - outer.min.y,
            outer.max.y - inner.max.y};
}

Borders minus(const Borders& a, const Borders& b) {
    return {a.left - b.left, a.right - b.right, a.top - b.top, a.bottom - b.bottom};
}

/// One direction of the blank: the two borders that are told from its edges.
struct Direction {
    double Borders::*near;
    double Borders::*far;
    double length;  ///< Of the blank as marked.
};

/// Windows that are equally long before rounding (`exact`) get the least of their lengths. One in
/// the middle of the blank stays there; any other gives way on the side away from the nearer edge.
void even_out(std::vector<Borders>& windows, const std::vector<double>& exact,
              const Direction& along, double step) {
    const std::vector<Borders> before = windows;
    const auto length_of = [&along](const Borders& one) {
        return along.length - one.*along.near - one.*along.far;
    };
    const auto is_middle = [&along](const Borders& one) {
        return geometry::is_same_length(one.*along.near, one.*along.far);
    };
    for (std::size_t i = 0; i < windows.size(); ++i) {
        double least = length_of(before[i]);
        bool middle = false;
        for (std::size_t j = 0; j < windows.size(); ++j)
            if (geometry::is_same_length(exact[i], exact[j])) {
                least = std::min(least, length_of(before[j]));
                middle = middle || is_middle(before[j]);
            }
        // Both borders of one in the middle are whole steps, so what they leave it is even or odd
        // as the blank is.
        if (middle && std::lround((along.length - least) / step) % 2 != 0)
            least -= step;
        const double extra = length_of(before[i]) - least;
        double& near = windows[i].*along.near;
        double& far = windows[i].*along.far;
        const double at_near = is_middle(before[i]) ? 0.5 : near > far ? 1 : 0;
        near += at_near * extra;
        far += (1 - at_near) * extra;
    }
}

class Marking {
  public:
    Marking(const MountDesign& design, double step)
        : design_(design),
          step_(step),
          blank_{down_to_step(design.blank.width, step), down_to_step(design.blank.height, step)} {}

    BackMarks made() {
        marks_.blank = blank_;
        round_lowest();
        for (std::size_t i = 0; i < design_.layers.size(); ++i)
            marks_.layers.push_back(layer_of(i));
        add_reveals();
        for (std::size_t i = 0; i < design_.prints.size(); ++i)
            marks_.hinges.push_back(hinging_of(i));
        marks_.cut = cut();
        const Borders& lip = design_.lip;
        marks_.lip = {at(lip.left), at(lip.right), at(lip.top), at(lip.bottom)};
        marks_.seen = minus(marks_.cut, marks_.lip);
        return std::move(marks_);
    }

  private:
    [[nodiscard]] double at(double mm) const { return to_step(mm, step_); }
    [[nodiscard]] double bevel_of(std::size_t layer) const {
        return design_.edge == wall::WindowEdge::bevel ? design_.layers[layer].card.thickness : 0;
    }
    /// What the blank loses at its left and at its top edge.
    [[nodiscard]] Size lost() const {
        return {(design_.blank.width - blank_.width) / 2,
                (design_.blank.height - blank_.height) / 2};
    }
    [[nodiscard]] Rect<Front> whole() const { return Rect<Front>::at({0, 0}, blank_); }

    /// From the front, before rounding.
    [[nodiscard]] Borders exact(std::size_t layer, std::size_t window) const {
        const Rect<Front> board = Rect<Front>::at({0, 0}, design_.blank);
        const Size off = lost();
        return minus(between(board, design_.layers[layer].windows[window].back),
                     {off.width, off.width, off.height, off.height});
    }

    /// The windows that touch the prints.
    void round_lowest() {
        std::vector<double> widths;
        std::vector<double> heights;
        const std::size_t lowest = design_.layers.size() - 1;
        for (std::size_t i = 0; i < design_.layers[lowest].windows.size(); ++i) {
            const Borders from = exact(lowest, i);
            lowest_.push_back({at(from.left), at(from.right), at(from.top), at(from.bottom)});
            widths.push_back(design_.layers[lowest].windows[i].back.width());
            heights.push_back(design_.layers[lowest].windows[i].back.height());
        }
        if (step_ <= 0)
            return;
        even_out(lowest_, widths, {&Borders::left, &Borders::right, blank_.width}, step_);
        even_out(lowest_, heights, {&Borders::top, &Borders::bottom, blank_.height}, step_);
    }

    [[nodiscard]] Rect<Front> line_of(std::size_t layer, std::size_t window) const {
        const Borders off = minus(exact(layer, window), exact(design_.layers.size() - 1, window));
        const Borders& lowest = lowest_[window];
        return {{lowest.left + at(off.left), lowest.top + at(off.top)},
                {blank_.width - lowest.right - at(off.right),
                 blank_.height - lowest.bottom - at(off.bottom)}};
    }

    /// The bevel is rounded too, so that face and borders make up the blank as well.
    [[nodiscard]] Rect<Front> face_of(std::size_t layer, std::size_t window) const {
        return line_of(layer, window).grown(-at(-bevel_of(layer)));
    }

    [[nodiscard]] WindowMarks window_of(std::size_t layer, std::size_t window) const {
        WindowMarks marks;
        marks.print = design_.prints[window].id;
        marks.line = mirrored(line_of(layer, window), blank_.width);
        marks.face = mirrored(face_of(layer, window), blank_.width);
        marks.from_edges = between(Rect<Back>::at({0, 0}, blank_), marks.line);
        const Rect<Back>& line = marks.line;
        marks.crosses = {{{line.left(), line.top()},
                          {line.right(), line.top()},
                          {line.right(), line.bottom()},
                          {line.left(), line.bottom()}}};
        for (std::size_t i = 0; i < marks.cuts.size(); ++i)
            marks.cuts[i] = {marks.crosses[i], marks.crosses[(i + 1) % marks.crosses.size()]};
        marks.diagonal = at(diagonal_of(line.size()));
        return marks;
    }

    [[nodiscard]] LayerMarks layer_of(std::size_t layer) const {
        LayerMarks marks;
        marks.diagonal = at(diagonal_of(blank_));
        marks.bevel = bevel_of(layer);
        for (std::size_t i = 0; i < design_.layers[layer].windows.size(); ++i)
            marks.windows.push_back(window_of(layer, i));
        return marks;
    }

    /// As it comes out where the lines are cut as marked.
    void add_reveals() {
        for (std::size_t i = 1; i < marks_.layers.size(); ++i) {
            const LayerMarks& front = marks_.layers[i - 1];
            LayerMarks& own = marks_.layers[i];
            own.reveal = own.windows.front().from_edges.left -
                         front.windows.front().from_edges.left - own.bevel + front.bevel;
            own.shown = std::max(0.0, own.reveal - front.bevel);
        }
    }

    [[nodiscard]] Hinging hinging_of(std::size_t index) const {
        const LaidPrint& print = design_.prints[index];
        const Size size = print.place.size();
        const std::size_t lowest = design_.layers.size() - 1;
        const Size off = lost();
        Rect<Front> around{{print.place.min.x - off.width, print.place.min.y - off.height},
                           {print.place.max.x - off.width, print.place.max.y - off.height}};
        if (!design_.floats)
            around = line_of(lowest, index);
        Hinging hinging;
        hinging.print = print.id;
        hinging.place = Rect<Front>::at(
            {at(around.centre().x - size.width / 2), at(around.centre().y - size.height / 2)},
            {at(size.width), at(size.height)});
        if (!design_.floats)
            hinging.covered = between(hinging.place, face_of(lowest, index));
        hinging.from_side = at(size.width * kHingeShare);
        return hinging;
    }

    [[nodiscard]] Borders cut() const {
        const auto place = [this](std::size_t i) {
            return design_.floats ? marks_.hinges[i].place : face_of(0, i);
        };
        Rect<Front> all = place(0);
        for (std::size_t i = 1; i < marks_.hinges.size(); ++i)
            all = hull(all, place(i));
        return between(whole(), all);
    }

    const MountDesign& design_;
    double step_;
    Size blank_;
    std::vector<Borders> lowest_;  // From the front, rounded.
    BackMarks marks_;
};

}  // namespace

Rect<Back> mirrored(const Rect<Front>& place, double blank_width) {
    return over<Back>(place, blank_width);
}

Rect<Front> mirrored(const Rect<Back>& place, double blank_width) {
    return over<Front>(place, blank_width);
}

BackMarks back_marks(const MountDesign& design, double step) {
    return Marking(design, step).made();
}

std::string letter_of(std::size_t index) {
    constexpr std::size_t kLetters = 26;
    std::string letters(1, static_cast<char>('a' + index % kLetters));
    return index < kLetters ? letters : letter_of(index / kLetters - 1) + letters;
}

}  // namespace wallwright::mounts
