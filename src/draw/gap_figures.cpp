#include "draw/gap_figures.h"

#include "draw/dimensions.h"

#include <algorithm>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;
using spacing::Axis;
using spacing::Gap;

constexpr std::size_t kFewGaps = 8;
constexpr double kLeastGap = 1.8;   // mm on paper: in less, two strokes run into each other
constexpr double kUpwardGap = 2.8;  // mm on paper: a figure that reads upward has air in it
constexpr double kOutside = 2;      // mm on paper from the pieces to a dimension beside them
constexpr double kAir = 0.5;        // mm on paper between a figure and what is next to it

/// One way to draw a gap: where its dimension line runs, and its figure.
struct Choice {
    double line = 0;
    Text<Wall> figure;
    bool extended = false;  ///< Outside the facing span, so that it needs extension lines.
};

Text<Wall> small_figure(const Board& board, const Gap& gap, Point<Wall> at, Align align) {
    return label_on(board, at, board.figure(gap.size), align);
}

/// Upright dimension line; the figure stands beside it.
std::vector<Choice> choices_up(const Board& board, const Gap& gap) {
    const Rect<Wall>& place = gap.place;
    const double base = place.centre().y - board.on_wall(kSmallFigureSize) / 2;
    const double air = board.on_wall(kAir + 0.4);
    const double outside = board.on_wall(kOutside);
    std::vector<Choice> choices;
    for (const double share : {0.5, 0.3, 0.7}) {
        const double x = place.min.x + share * place.width();
        choices.push_back({x, small_figure(board, gap, {x + air, base}, Align::left), false});
    }
    choices.push_back({place.max.x + outside,
                       small_figure(board, gap, {place.max.x + outside + air, base}, Align::left),
                       true});
    choices.push_back({place.min.x - outside,
                       small_figure(board, gap, {place.min.x - outside - air, base}, Align::right),
                       true});
    return choices;
}

/// Level dimension line; the figure stands above it, or reads upward in a gap too narrow for it.
std::vector<Choice> choices_across(const Board& board, const Gap& gap) {
    const Rect<Wall>& place = gap.place;
    const double middle = place.centre().x;
    const double lift = board.on_wall(kFigureGap);
    const double outside = board.on_wall(kOutside);
    const double over = place.max.y + outside;
    const double under = place.min.y - outside;
    std::vector<Choice> choices;
    choices.push_back(
        {over, small_figure(board, gap, {middle, over + board.on_wall(1.3)}, Align::centre), true});
    choices.push_back(
        {under,
         small_figure(board, gap, {middle, under - board.on_wall(1.5 + kSmallFigureSize)},
                      Align::centre),
         true});
    for (const double share : {0.5, 0.25, 0.75}) {
        const double y = place.min.y + share * place.height();
        choices.push_back({y, small_figure(board, gap, {middle, y + lift}, Align::centre), false});
        Text<Wall> upward = small_figure(
            board, gap, {middle + board.on_wall(0.36 * kSmallFigureSize), y + lift}, Align::left);
        upward.upward = true;
        if (gap.size * board.options.scale >= kUpwardGap)
            choices.push_back({y, upward, false});
    }
    return choices;
}

/// What the dimension line with its strokes covers.
Rect<Wall> line_box(const Board& board, const Gap& gap, double line) {
    const double reach = board.on_wall(1);
    if (gap.axis == Axis::horizontal)
        return {{gap.place.min.x, line - reach}, {gap.place.max.x, line + reach}};
    return {{line - reach, gap.place.min.y}, {line + reach, gap.place.max.y}};
}

void add_extensions(Board& board, const Gap& gap, double line) {
    const Rect<Wall>& place = gap.place;
    if (gap.axis == Axis::horizontal) {
        const double from = line > place.centre().y ? place.max.y : place.min.y;
        add_extension(board, {place.min.x, from}, {place.min.x, line});
        add_extension(board, {place.max.x, from}, {place.max.x, line});
    } else {
        const double from = line > place.centre().x ? place.max.x : place.min.x;
        add_extension(board, {from, place.min.y}, {line, place.min.y});
        add_extension(board, {from, place.max.y}, {line, place.max.y});
    }
}

bool add_gap(Board& board, const Gap& gap) {
    for (const Choice& choice :
         gap.axis == Axis::horizontal ? choices_across(board, gap) : choices_up(board, gap)) {
        const Rect<Wall> line = line_box(board, gap, choice.line);
        if (!board.room.is_free(line.grown(-0.01)) || !board.add_first_free({&choice.figure, 1}))
            continue;
        board.room.take(line);
        if (choice.extended)
            add_extensions(board, gap, choice.line);
        const bool across = gap.axis == Axis::horizontal;
        add_dimension_line(board, gap.axis, choice.line, across ? gap.place.min.x : gap.place.min.y,
                           across ? gap.place.max.x : gap.place.max.y);
        return true;
    }
    return false;
}

bool all_read_alike(const Board& board, const spacing::Group& group) {
    return board.figure(group.gap_min()) == board.figure(group.gap_max());
}

}  // namespace

std::string gap_note(const Board& board, const spacing::Group& group) {
    if (group.gaps.empty())
        return "";
    const std::string least = board.figure(group.gap_min());
    if (all_read_alike(board, group))
        return group.gaps.size() == 1 ? "gap " + least : "all gaps " + least;
    return "gaps " + least + " to " + board.figure(group.gap_max());
}

void add_gap_figures(Board& board, const spacing::Group& group) {
    const bool one_each_way = group.gaps.size() > kFewGaps && all_read_alike(board, group);
    bool shown_across = false;
    bool shown_up = false;
    for (const Gap& gap : group.gaps) {
        bool& shown = gap.axis == Axis::horizontal ? shown_across : shown_up;
        if (!(one_each_way && shown) && gap.size * board.options.scale >= kLeastGap)
            shown = add_gap(board, gap) || shown;
    }
}

}  // namespace wallwright::draw
