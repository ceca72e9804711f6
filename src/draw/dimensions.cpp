#include "draw/dimensions.h"

#include "draw/paths.h"

#include <algorithm>
#include <cmath>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;
using spacing::Axis;

const Stroke kThin{{Ink::dimension}, 0.18};
const Stroke kTick{{Ink::dimension}, 0.35};

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
    Figures(Board& board, const Chain& chain) : board_(board), chain_(chain) {}

    /// For the distance from stop `index` to the next.
    void add(std::size_t index) {
        const double from = chain_.stops[index].at;
        const double to = chain_.stops[index + 1].at;
        const std::string figure = board_.figure(to - from);
        for (const double size : {kFigureSize, kSmallFigureSize})
            if (try_between(figure, size, from, to))
                return;
        const double beyond = board_.on_wall(kOverrun) + needed(figure, kFigureSize) / 2;
        if (index == 0 && try_at(figure, kFigureSize, from - beyond))
            return;
        if (index + 2 == chain_.stops.size() && try_at(figure, kFigureSize, to + beyond))
            return;
        lift(figure, (from + to) / 2);
    }

  private:
    [[nodiscard]] double needed(const std::string& figure, double size) const {
        return board_.on_wall(estimated_width(figure, size) + kFigureAir);
    }

    [[nodiscard]] Point<Wall> above(double along, double paper_mm) const {
        const double sign = chain_.axis == Axis::horizontal ? 1 : -1;
        return point(chain_.axis, along, chain_.line + sign * board_.on_wall(paper_mm));
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

    /// Above its place, with a line that leads to it.
    void lift(const std::string& figure, double middle) {
        if (try_at(figure, kSmallFigureSize, middle, kLift))
            board_.add(line(point(chain_.axis, middle, chain_.line), above(middle, kLift), kThin));
    }

    bool try_at(const std::string& figure, double size, double along, double lift = 0) {
        Text<Wall> text{above(along, kFigureGap + lift), figure};
        text.size = size;
        text.paint.ink = Ink::dimension;
        text.align = Align::centre;
        text.upward = chain_.axis == Axis::vertical;
        if (!board_.room.is_free(estimated_box(text, board_.options.scale)))
            return false;
        board_.add_label(text);
        return true;
    }

    Board& board_;
    const Chain& chain_;
};

void add_lines(Board& board, const Chain& chain) {
    for (const Stop& stop : chain.stops)
        add_extension(board, point(chain.axis, stop.at, stop.feature),
                      point(chain.axis, stop.at, chain.line));
    for (std::size_t i = 0; i + 1 < chain.stops.size(); ++i) {
        const double from = chain.stops[i].at;
        const double to = chain.stops[i + 1].at;
        add_dimension_line(board, chain.axis, chain.line, from, to);
        board.room.take(
            Rect<Wall>{point(chain.axis, from, chain.line), point(chain.axis, to, chain.line)}
                .grown(kThinness));
    }
}

}  // namespace

void add_extension(Board& board, Point<Wall> from, Point<Wall> to) {
    const double reach = geometry::distance(from, to);
    const double gap = board.on_wall(kExtensionGap);
    if (reach <= gap)
        return;
    const geometry::Vec<Wall> unit = (1 / reach) * (to - from);
    board.add(line(from + gap * unit, to + board.on_wall(kOverrun) * unit, kThin));
    board.room.take(hull(Rect<Wall>{from, from}, Rect<Wall>{to, to}).grown(kThinness));
}

void add_dimension_line(Board& board, Axis axis, double across, double from, double to) {
    const double overrun = board.on_wall(kOverrun);
    board.add(line(point(axis, from - overrun, across), point(axis, to + overrun, across), kThin));
    const double reach = board.on_wall(kTickReach);
    for (const double along : {from, to}) {
        const Point<Wall> end = point(axis, along, across);
        board.add(
            line<Wall>({end.x - reach, end.y - reach}, {end.x + reach, end.y + reach}, kTick));
    }
}

void add_chains(Board& board, std::vector<Chain> chains) {
    for (Chain& chain : chains) {
        tidy(chain.stops);
        add_lines(board, chain);
    }
    for (const Chain& chain : chains)
        for (std::size_t i = 0; i + 1 < chain.stops.size(); ++i)
            Figures(board, chain).add(i);
}

}  // namespace wallwright::draw
