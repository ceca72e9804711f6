#include "hanging/mark_checks.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace wallwright::hanging {

namespace {

using geometry::Point;
using geometry::Wall;
using Places = std::span<const Point<Wall>>;

constexpr double kFlattest = 0.0670;  ///< The sine of 15 degrees, squared,
constexpr double kGood = 0.25;        ///< and of 30.

double squared(geometry::Vec<Wall> way) {
    return way.x * way.x + way.y * way.y;
}

/// The square of the sine of the angle at `at` between the directions to two others.
double squareness(Point<Wall> at, Point<Wall> a, Point<Wall> b) {
    const geometry::Vec<Wall> to_a = a - at;
    const geometry::Vec<Wall> to_b = b - at;
    const double lengths = squared(to_a) * squared(to_b);
    const double cross = to_a.x * to_b.y - to_a.y * to_b.x;
    return lengths > 0 ? cross * cross / lengths : 0;
}

/// The last mark before this one that may be measured from it: of its stage, and along the rail
/// where it is on it.
std::optional<std::size_t> before(std::span<const Mark> marks, std::size_t i) {
    for (std::size_t k = i; k-- > 0;)
        if (marks[k].stage == marks[i].stage &&
            (marks[k].kind == MarkKind::rail) == (marks[i].kind == MarkKind::rail))
            return k;
    return std::nullopt;
}

/// The nearest of those that fix the place well, or else the one that fixes it best.
std::optional<std::size_t> other_one(std::span<const Mark> marks, Places places, std::size_t i,
                                     std::size_t first) {
    std::optional<std::size_t> best;
    double best_square = kFlattest;
    double best_away = 0;
    for (std::size_t k = first; k-- > 0;) {
        if (marks[k].stage != marks[i].stage || marks[k].kind == MarkKind::rail)
            continue;
        const double square = std::min(kGood, squareness(places[i], places[first], places[k]));
        const double away = squared(places[k] - places[i]);
        if (square > best_square || (best && square >= best_square && away < best_away)) {
            best = k;
            best_square = square;
            best_away = away;
        }
    }
    return best;
}

}  // namespace

std::vector<CheckMeasure> checks_between(std::span<const Mark> marks, Places places, double step) {
    std::vector<CheckMeasure> checks;
    const auto add = [&](std::size_t from, std::size_t to) {
        const double exact = distance(places[from], places[to]);
        checks.push_back({marks[from].number, marks[to].number, step * std::round(exact / step)});
    };
    for (std::size_t i = 0; i < marks.size(); ++i) {
        const auto first = before(marks, i);
        if (!first)
            continue;
        add(*first, i);
        if (marks[i].kind == MarkKind::rail)
            continue;
        if (const auto other = other_one(marks, places, i, *first))
            add(*other, i);
    }
    return checks;
}

}  // namespace wallwright::hanging
