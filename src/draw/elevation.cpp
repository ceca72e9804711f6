#include "draw/elevation.h"

#include "draw/dimensions.h"
#include "draw/fixing_lines.h"
#include "draw/framed.h"
#include "draw/inner_measures.h"
#include "draw/load_bars.h"
#include "draw/measures.h"
#include "draw/off_level.h"
#include "draw/paths.h"
#include "draw/stage_shown.h"
#include "draw/tint.h"
#include "draw/waiting.h"
#include "draw/wall_inside.h"
#include "draw/wished.h"

#include <algorithm>
#include <iterator>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;

void add_pieces(Board& board) {
    for (const wall::Piece& piece : board.project.pieces)
        if (const auto place = wall::place_of(board.project, piece))
            add_framed(board.shapes, board.project, piece, *place,
                       {board.options.pictures, board.options.picture_folder});
}

/// Letters and marks first, for they must be where they are; figures then find room between.
void add_notes(Board& board) {
    if (board.options.fixings)
        add_hidden_fixings(board);
    if (board.options.letters)
        add_letters(board);
    if (board.options.loads)
        add_load_bars(board);
    if (board.options.marks)
        add_marks(board);
    add_wished_notes(board);
    if (board.options.marks)
        add_datum_edges(board);
    if (board.options.dimensions) {
        add_inner_measures(board);
        add_off_level(board);
    }
    add_names_inside(board);
    add_stage_label(board);
}

WallDrawing finished(Board board) {
    constexpr double kMargin = 1;  // mm on paper
    const Rect<Wall> extent =
        extent_of(board.shapes, board.options.scale).grown(board.on_wall(kMargin));
    return {extent, std::move(board.shapes)};
}

/// The project with the group's pieces only on the wall, and nothing before it or in it.
wall::Project only(wall::Project project, const spacing::Group& group) {
    project.room.furniture.clear();
    project.room.fixtures.clear();
    project.room.studs.reset();
    project.room.rail.reset();
    project.datum.floor.reset();
    project.datum.ceiling.reset();
    for (wall::Piece& piece : project.pieces)
        if (std::find(group.pieces.begin(), group.pieces.end(), piece.id) == group.pieces.end())
            piece.state = wall::PieceState::waiting;
    return project;
}

rules::Assessment only(const rules::Assessment& assessment, const spacing::Group& group) {
    const auto in_group = [&group](const auto& one) {
        return std::find(group.pieces.begin(), group.pieces.end(), one.piece) != group.pieces.end();
    };
    rules::Assessment part;
    part.groups = {group};
    std::copy_if(assessment.hangings.begin(), assessment.hangings.end(),
                 std::back_inserter(part.hangings), in_group);
    std::copy_if(assessment.marks.marks.begin(), assessment.marks.marks.end(),
                 std::back_inserter(part.marks.marks), in_group);
    return part;
}

void add_own_measures(Board& board) {
    constexpr double kOut = 9;  // mm on paper
    const Rect<Wall>& bounds = board.wall;
    add_chains(board, {{spacing::Axis::horizontal,
                        bounds.max.y + board.on_wall(kOut),
                        {{bounds.min.x, bounds.max.y}, {bounds.max.x, bounds.max.y}}},
                       {spacing::Axis::vertical,
                        bounds.min.x - board.on_wall(kOut),
                        {{bounds.min.y, bounds.min.x}, {bounds.max.y, bounds.min.x}}}});
}

}  // namespace

WallDrawing group_detail(const wall::Project& project, const rules::Assessment& assessment,
                         const ElevationOptions& options, const spacing::Group& group) {
    constexpr double kGround = 6;  // mm on paper of wall around the group
    const wall::Project alone = only(project, group);
    const rules::Assessment part = only(assessment, group);
    Board board{{options.scale, alone.unit},   alone, part, options, group.bounds,
                own(wash(project.room.colour))};
    board.add(box(group.bounds.grown(board.on_wall(kGround)), {board.plate, std::nullopt}));
    if (options.dimensions)
        add_own_measures(board);
    add_height_lines(board);
    if (board.options.fixings)
        add_from_rail(board);
    add_pieces(board);
    add_notes(board);
    return finished(std::move(board));
}

std::vector<std::pair<wall::PieceId, Rect<Wall>>> waiting_places(
    const wall::Project& project, const rules::Assessment& assessment,
    const ElevationOptions& options) {
    const Board board{{options.scale, project.unit},          project, assessment, options,
                      geometry::bounds(project.room.outline), {}};
    std::vector<std::pair<wall::PieceId, Rect<Wall>>> places;
    for (const Standing& standing : lay_out_waiting(board))
        places.emplace_back(project.pieces[standing.index].id, standing.place);
    return places;
}

WallDrawing elevation(const wall::Project& project, const rules::Assessment& assessment,
                      const ElevationOptions& options) {
    Board board{{options.scale, project.unit},
                project,
                assessment,
                options,
                geometry::bounds(project.room.outline),
                own(wash(project.room.colour))};
    add_wall(board);
    const std::vector<Standing> waiting = lay_out_waiting(board);
    add_floor(board, floor_under(board, waiting));
    if (options.dimensions)
        add_outer_measures(board);
    add_height_lines(board);
    add_furnishings(board);
    add_stage_outlines(board);
    if (board.options.fixings)
        add_from_rail(board);
    add_pieces(board);
    add_waiting(board, waiting);
    add_notes(board);
    return finished(std::move(board));
}

}  // namespace wallwright::draw
