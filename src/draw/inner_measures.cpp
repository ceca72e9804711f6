#include "draw/inner_measures.h"

#include "draw/dimensions.h"
#include "draw/gap_figures.h"
#include "draw/paths.h"
#include "geometry/floor_line.h"
#include "rules/above_furniture.h"
#include "rules/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;
using spacing::Axis;

constexpr double kOverhang = 2;  // mm on paper by which lines of height leave the wall
constexpr double kAir = 0.9;     // mm on paper between a line and its label

/// What the rules saw, but for the catalogue: no measure here asks for it.
rules::Scene scene_of(const Board& board) {
    const rules::Assessment& seen = board.assessment;
    return {board.project, board.project.own, seen.groups,
            seen.zones,    seen.marks.marks,  rules::pieces_on_wall(board.project, seen.hangings)};
}

void add_clearance(Board& board, const rules::Above& above) {
    const Rect<Wall>& piece = above.lowest->place;
    const Rect<Wall>& under = above.furniture->place;
    const double left = std::max(piece.min.x, under.min.x);
    const double right = std::min(piece.max.x, under.max.x);
    const double middle = (under.max.y + piece.min.y) / 2;
    const double half = board.on_wall(kSmallFigureSize) / 2;
    for (const double share : {0.5, 0.25, 0.75}) {
        const double x = left + share * (right - left);
        const double air = board.on_wall(kAir);
        const Text<Wall> choices[] = {
            label_on(board, {x + air, middle - half}, board.figure(above.clearance), Align::left),
            label_on(board, {x - air, middle - half}, board.figure(above.clearance), Align::right)};
        if (!board.add_first_free(choices))
            continue;
        add_dimension_line(board, Axis::vertical, x, under.max.y, piece.min.y);
        board.room.take({{x - air / 2, under.max.y}, {x + air / 2, piece.min.y}});
        return;
    }
}

/// Above the group, below it, and then where its ends are.
std::vector<Text<Wall>> note_choices(const Board& board, const Rect<Wall>& around,
                                     const std::string& note) {
    const double above = around.max.y + board.on_wall(1.6);
    const double below = around.min.y - board.on_wall(1.6 + kSmallFigureSize);
    std::vector<Text<Wall>> choices;
    for (const double y : {above, below}) {
        choices.push_back(label_on(board, {around.centre().x, y}, note, Align::centre));
        choices.push_back(label_on(board, {around.min.x, y}, note, Align::left));
        choices.push_back(label_on(board, {around.max.x, y}, note, Align::right));
    }
    return choices;
}

void add_group_note(Board& board, const spacing::Group& group, const wall::Furniture* furniture) {
    for (const std::string& note : group_notes(board, group, furniture))
        if (board.add_first_free(note_choices(board, group.bounds, note)))
            return;
}

/// A label above the line, from its right end leftward until there is room; then below it.
/// The line is `up` mm above the floor.
void add_line_label(Board& board, const geometry::FloorLine& floor, double up,
                    const std::string& words, Ink ink) {
    constexpr double kStep = 8;  // mm on paper
    for (const double lift : {kAir, -kAir - kSmallFigureSize})
        for (double x = board.wall.max.x - board.on_wall(1.5); x > board.wall.min.x;
             x -= board.on_wall(kStep)) {
            Text<Wall> label =
                label_on(board, {x, floor.at(x) + up + board.on_wall(lift)}, words, Align::right);
            label.paint.ink = ink;
            if (board.add_first_free({&label, 1}))
                return;
        }
}

bool reaches(const Board& board, double height) {
    return height > board.wall.min.y && height < board.wall.max.y;
}

bool shows_centre_line(const Board& board) {
    return board.options.dimensions && reaches(board, board.project.style.centre_height);
}

bool shows_level_line(const Board& board) {
    return board.project.datum.height == wall::DatumHeight::level_line &&
           reaches(board, board.project.datum.level_line);
}

/// As high over the floor everywhere, so that it climbs with a stair.
std::vector<geometry::Point<Wall>> centre_line(const Board& board, double left, double right) {
    const geometry::FloorLine floor(board.project.room.outline);
    const double up = board.project.style.centre_height;
    std::vector<geometry::Point<Wall>> points{{left, floor.at(left) + up}};
    if (!floor.is_level())
        for (const geometry::Point<Wall>& corner : floor.corners())
            points.push_back({corner.x, corner.y + up});
    points.push_back({right, floor.at(right) + up});
    return points;
}

void take_what_stands(Board& board) {
    for (const wall::Placed& placed : wall::placed_pieces(board.project))
        board.room.take(placed.place);
    for (const wall::Furniture& furniture : board.project.room.furniture)
        board.room.take(furniture.place);
    for (const wall::Fixture& fixture : board.project.room.fixtures)
        board.room.take(fixture.place);
}

const wall::Furniture* main_furniture(const std::vector<rules::Above>& all,
                                      const spacing::Group& group) {
    const auto found = std::find_if(all.begin(), all.end(), [&group](const rules::Above& one) {
        return one.group == &group && one.main;
    });
    return found == all.end() ? nullptr : found->furniture;
}

}  // namespace

void add_height_lines(Board& board) {
    const double left = board.wall.min.x - board.on_wall(kOverhang);
    const double right = board.wall.max.x + board.on_wall(kOverhang);
    if (shows_centre_line(board))
        board.add(lines(centre_line(board, left, right),
                        Stroke{{Ink::accent}, 0.25, LineType::long_dash_dotted}));
    if (shows_level_line(board)) {
        const double y = board.project.datum.level_line;
        board.add(
            line<Wall>({left, y}, {right, y}, Stroke{{Ink::mark}, 0.25, LineType::continuous}));
    }
}

std::vector<std::string> group_notes(const Board& board, const spacing::Group& group,
                                     const wall::Furniture* furniture) {
    const std::string gaps = gap_note(board, group);
    std::vector<std::string> notes;
    if (furniture != nullptr) {
        const std::string share = fmt::format(
            "group {} = {:.2f} of {}", board.figure(group.bounds.width()),
            group.bounds.width() / furniture->place.width(), wall::title_of(*furniture));
        notes.push_back(gaps.empty() ? share : share + ", " + gaps);
        notes.push_back(gaps.empty() ? fmt::format("{:.2f} of {}",
                                                   group.bounds.width() / furniture->place.width(),
                                                   wall::title_of(*furniture))
                                     : gaps);
    } else if (!gaps.empty()) {
        notes.push_back(gaps);
    }
    return notes;
}

void add_inner_measures(Board& board) {
    take_what_stands(board);
    const rules::Scene scene = scene_of(board);
    const std::vector<rules::Above> above = rules::groups_above_furniture(scene);
    for (const rules::Above& one : above)
        add_clearance(board, one);
    if (shows_level_line(board))
        add_line_label(board, {}, board.project.datum.level_line,
                       "level line " + board.figure(board.project.datum.level_line), Ink::mark);
    if (shows_centre_line(board))
        add_line_label(board, geometry::FloorLine(board.project.room.outline),
                       board.project.style.centre_height,
                       "centre line " + board.figure(board.project.style.centre_height),
                       Ink::accent);
    for (const spacing::Group& group : board.assessment.groups)
        add_group_note(board, group, main_furniture(above, group));
    for (const spacing::Group& group : board.assessment.groups)
        add_gap_figures(board, group);
}

}  // namespace wallwright::draw
