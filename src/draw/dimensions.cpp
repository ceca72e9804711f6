#include "draw/dimensions.h"

#include "draw/paths.h"

#include <algorithm>
#include <cmath>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;
using spacing::Axis;

constexpr double kThinWidth = 0.18;
constexpr double kTickWidth = 0.35;
const Stroke kThin{{Ink::dimension}, kThinWidth};

constexpr double kTickReach = 1.0;  // mm on paper from the end of the line along both axes
constexpr double kOverrun = 1.0;    // mm on paper of dimension and extension lines past each other
constexpr double kExtensionGap = 0.8;  // mm on paper between a feature and its extension line
constexpr double kLift = 2.8;          // mm on paper by which a figure without room goes up
constexpr double kFigureAir = 2.0;     // mm on paper that a figure leaves free in its span

Point<Wall> point(Axis axis, double along, double across) {
    return axis == Axis::horizontal ? Point<Wall>{along, across} : Point<Wall>{across, along};
}

/// mm of wall around a line that labels keep out of.
constexpr double kThinness = 0.01;

void tidy(std::vector<Stop>& stops) {
    std::sort(stops.begin(), stops.end(), [](const Stop& a, const Stop& b) { return a.at < b.at; });
    const auto same = [](const Stop& a, const Stop& b) { return std::abs(a.at - b.at) < 0.5; };
    stops.erase(std::unique(stops.begin(), stops.end(), same), stops.end());
}

/// The figures of one chain: above the line in reading direction, which for a standing line is to
/// its left.
class Figures {
  public:
    Figures(Easel& easel, const Chain& chain) : easel_(easel), chain_(chain) {}

    /// For the distance from stop `index` to the next.
    void add(std::size_t index) {
        const double from = chain_.stops[index].at;
        const double to = chain_.stops[index + 1].at;
        const std::string figure = easel_.figure(to - from);
        for (const double size : {kFigureSize, kSmallFigureSize})
            if (try_between(figure, size, from, to))
                return;
        const double beyond = easel_.on_wall(kOverrun) + needed(figure, kFigureSize) / 2;
        if (index == 0 && try_at(figure, kFigureSize, from - beyond))
            return;
        if (index + 2 == chain_.stops.size() && try_at(figure, kFigureSize, to + beyond))
            return;
        lift(figure, (from + to) / 2);
    }

  private:
    [[nodiscard]] double needed(const std::string& figure, double size) const {
        return easel_.on_wall(estimated_width(figure, size) + kFigureAir);
    }

    [[nodiscard]] Point<Wall> above(double along, double paper_mm) const {
        const double sign = chain_.axis == Axis::horizontal ? 1 : -1;
        return point(chain_.axis, along, chain_.line + sign * easel_.on_wall(paper_mm));
    }

    /// In the middle, else to either side of what crosses there.
    bool try_between(const std::string& figure, double size, double from, double to) {
        const double spare = to - from - needed(figure, size);
        if (spare < 0)
            return false;
        for (const double share : {0.0, -0.5, 0.5, -1.0, 1.0})
            if (try_at(figure, size, (from + to + share * spare) / 2))
                return true;
        return false;
    }

    /// Across the line where that is allowed; else above its place, with a line that leads to it.
    void lift(const std::string& figure, double middle) {
        if (chain_.crosswise && try_across(figure, middle))
            return;
        if (try_at(figure, kSmallFigureSize, middle, kLift))
            easel_.add(line(point(chain_.axis, middle, chain_.line), above(middle, kLift), kThin));
    }

    bool try_across(const std::string& figure, double middle) {
        constexpr double kHalfCapital = 0.5;
        const bool level = chain_.axis == Axis::horizontal;
        const double down = easel_.on_wall(kHalfCapital * kSmallFigureSize);
        Text<Wall> text{above(level ? middle + down : middle - down, kFigureGap), figure};
        text.size = kSmallFigureSize;
        text.paint.ink = Ink::dimension;
        text.align = level ? Align::left : Align::right;
        text.upward = level;
        if (!easel_.room.is_free(estimated_box(text, easel_.scale)))
            return false;
        easel_.add_label(text);
        return true;
    }

    bool try_at(const std::string& figure, double size, double along, double lift = 0) {
        Text<Wall> text{above(along, kFigureGap + lift), figure};
        text.size = size;
        text.paint.ink = Ink::dimension;
        text.align = Align::centre;
        text.upward = chain_.axis == Axis::vertical;
        if (!easel_.room.is_free(estimated_box(text, easel_.scale)))
            return false;
        easel_.add_label(text);
        return true;
    }

    Easel& easel_;
    const Chain& chain_;
};

void add_lines(Easel& easel, const Chain& chain) {
    for (const Stop& stop : chain.stops)
        add_extension(easel, point(chain.axis, stop.at, stop.feature),
                      point(chain.axis, stop.at, chain.line));
    for (std::size_t i = 0; i + 1 < chain.stops.size(); ++i) {
        const double from = chain.stops[i].at;
        const double to = chain.stops[i + 1].at;
        add_dimension_line(easel, chain.axis, chain.line, from, to);
        easel.room.take(
            Rect<Wall>{point(chain.axis, from, chain.line), point(chain.axis, to, chain.line)}
                .grown(kThinness));
    }
}

}  // namespace

void add_extension(Easel& easel, Point<Wall> from, Point<Wall> to) {
    const double reach = geometry::distance(from, to);
    const double gap = easel.on_wall(kExtensionGap);
    if (reach <= gap)
        return;
    const geometry::Vec<Wall> unit = (1 / reach) * (to - from);
    easel.add(line(from + gap * unit, to + easel.on_wall(kOverrun) * unit, kThin));
    easel.room.take(hull(Rect<Wall>{from, from}, Rect<Wall>{to, to}).grown(kThinness));
}

void add_dimension_line(Easel& easel, Axis axis, double across, double from, double to,
                        const Paint& paint) {
    const double overrun = easel.on_wall(kOverrun);
    easel.add(line(point(axis, from - overrun, across), point(axis, to + overrun, across),
                   Stroke{paint, kThinWidth}));
    const double reach = easel.on_wall(kTickReach);
    for (const double along : {from, to}) {
        const Point<Wall> end = point(axis, along, across);
        easel.add(line<Wall>({end.x - reach, end.y - reach}, {end.x + reach, end.y + reach},
                             Stroke{paint, kTickWidth}));
    }
}

void add_chains(Easel& easel, std::vector<Chain> chains) {
    for (Chain& chain : chains) {
        tidy(chain.stops);
        add_lines(easel, chain);
    }
    for (const Chain& chain : chains)
        for (std::size_t i = 0; i + 1 < chain.stops.size(); ++i)
            Figures(easel, chain).add(i);
}

}  // namespace wallwright::draw
