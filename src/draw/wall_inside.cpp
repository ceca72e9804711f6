#include "draw/wall_inside.h"

#include "draw/paths.h"
#include "draw/tint.h"
#include "hanging/outline_edges.h"
#include "wall/titles.h"

#include <algorithm>
#include <cmath>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;

constexpr double kRailHeight = 40;  // mm of moulding below the hooks; common practice, no source
// mm on paper; of a narrower one the centre line is drawn alone
constexpr double kNarrowStud = 2;
const Stroke kStudEdge{{Ink::hidden, {}, 0.4}, 0.18, LineType::dashed};
const Stroke kStudCentre{{Ink::hidden, {}, 0.5}, 0.18, LineType::long_dash_dotted};

/// The middles of all studs between the wall's ends, from the left.
std::vector<double> studs_of(const Board& board) {
    std::vector<double> middles;
    const auto& studs = board.project.room.studs;
    if (!studs || studs->spacing <= 0)
        return middles;
    const double first = board.wall.left() + studs->first;
    const double before = std::floor((first - board.wall.left()) / studs->spacing);
    for (double x = first - before * studs->spacing; x <= board.wall.right(); x += studs->spacing)
        middles.push_back(x);
    return middles;
}

/// A line up the wall, or nothing where the wall is not.
void add_upright(Board& board, double x, const Stroke& stroke) {
    if (const auto span = geometry::vertical_span(board.project.room.outline, x))
        board.add(line<Wall>({x, span->low}, {x, span->high}, stroke));
}

std::vector<Rect<Wall>> rail_parts(const Board& board) {
    std::vector<Rect<Wall>> parts;
    const auto& rail = board.project.room.rail;
    if (!rail)
        return parts;
    const double bottom = *rail - kRailHeight;
    if (const auto span = hanging::width_between(board.project.room.outline, bottom, *rail))
        parts.push_back({{span->low, bottom}, {span->high, *rail}});
    return parts;
}

/// From the ceiling downward in each field between two studs.
void name_studs(Board& board) {
    const std::vector<double> middles = studs_of(board);
    const std::string words =
        "studs, " + board.figure(middles.empty() ? 0 : board.project.room.studs->spacing) +
        " apart";
    for (double down = 3; down < 40; down += 6)
        for (std::size_t i = 0; i + 1 < middles.size(); ++i) {
            const double x = (middles[i] + middles[i + 1]) / 2;
            const Text<Wall> label = label_on(
                board, {x, board.wall.top() - board.on_wall(down + 1.8)}, words, Align::centre);
            if (board.add_first_free({&label, 1}))
                return;
        }
}

void name_rail(Board& board, const Rect<Wall>& rail) {
    const std::string words = "picture rail " + board.figure(rail.top());
    constexpr double kShares[] = {0.05, 0.3, 0.5, 0.7, 0.95};
    for (const double share : kShares)
        for (const double y : {rail.bottom() - board.on_wall(3), rail.top() + board.on_wall(1.2)}) {
            const Text<Wall> label = label_on(board, {rail.left() + share * rail.width(), y}, words,
                                              share < 0.2   ? Align::left
                                              : share > 0.8 ? Align::right
                                                            : Align::centre);
            if (board.add_first_free({&label, 1}))
                return;
        }
}

void name_other_side(Board& board, const wall::Fixture& fixture) {
    const std::string& title = fixture.title;
    std::string type(wall::name_of(fixture.type));
    const std::string words = (title.empty() ? type : title) + ", other side";
    const Rect<Wall>& place = fixture.place;
    const double air = board.on_wall(1);
    const double level = place.centre().y - board.on_wall(0.9);
    const Text<Wall> choices[] = {
        label_on(board, {place.centre().x, place.top() + air}, words, Align::centre),
        label_on(board, {place.right() + air, level}, words, Align::left),
        label_on(board, {place.left() - air, level}, words, Align::right),
        label_on(board, {place.centre().x, place.bottom() - board.on_wall(2.8)}, words,
                 Align::centre),
        label_on(board, {place.centre().x, level}, words, Align::centre)};
    board.add_first_free(choices);
}

}  // namespace

void add_studs(Board& board) {
    for (const double middle : studs_of(board)) {
        const double half = board.project.room.studs->width / 2;
        if (2 * half * board.options.scale >= kNarrowStud)
            for (const double x : {middle - half, middle + half})
                add_upright(board, x, kStudEdge);
        add_upright(board, middle, kStudCentre);
    }
}

void add_other_side(Board& board) {
    for (const wall::Fixture& fixture : board.project.room.fixtures)
        if (fixture.other_side)
            board.add(
                box(fixture.place, {std::nullopt, Stroke{{Ink::hidden}, 0.5, LineType::dotted}}));
}

void add_rail(Board& board) {
    const wall::Colour colour = lighter(board.plate.colour, 0.6);
    const Stroke edge{own(darker(colour, 0.4)), 0.18};
    for (const Rect<Wall>& part : rail_parts(board))
        board.add(box(part, {own(colour), edge}));
}

void add_names_inside(Board& board) {
    if (board.options.zones)
        for (const wall::Fixture& fixture : board.project.room.fixtures)
            if (fixture.other_side)
                name_other_side(board, fixture);
    if (board.options.studs)
        name_studs(board);
    if (board.options.dimensions)
        for (const Rect<Wall>& part : rail_parts(board))
            name_rail(board, part);
}

}  // namespace wallwright::draw
