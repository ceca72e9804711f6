#include "desk/piece_drag.h"

#include "desk/naming.h"
#include "edits/edit.h"
#include "edits/pieces.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::desk {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Vec;
using geometry::Wall;
using wall::Piece;
using wall::PieceId;
using wall::Project;

bool waits(const Piece& piece) {
    return piece.state == wall::PieceState::waiting;
}

std::optional<Notice> notice_of(const std::vector<const Piece*>& fixed, bool others_move) {
    if (fixed.empty())
        return std::nullopt;
    const std::string why = fixed.size() == 1
                                ? why_fixed(*fixed.front())
                                : fmt::format(
                                      "{} pieces hang already or are pinned; call them planned "
                                      "or unpin them to move them",
                                      fixed.size());
    return Notice{!others_move, others_move ? fmt::format("{}. The others move.", why) : why};
}

Rect<Wall> bounds_of(const std::vector<PieceDrag::Carried>& pieces) {
    Rect<Wall> bounds = pieces.front().place;
    for (const PieceDrag::Carried& one : pieces)
        bounds = hull(bounds, one.place);
    return bounds;
}

/// Whether a carried piece of this place is on the wall there.
bool is_on(const Rect<Wall>& wall, const PieceDrag& drag, const Rect<Wall>& place) {
    const Point<Wall> centre = place.centre();
    if (!drag.from_floor)
        return centre.y >= wall.min.y;
    return centre.y > wall.min.y &&
           std::abs(centre.x - wall.centre().x) <= (wall.width() + place.width()) / 2 &&
           centre.y <= wall.max.y + place.height() / 2;
}

/// Where the carried pieces are after a pull.
struct Carried {
    std::vector<edits::Move> on_wall;
    std::vector<PieceId> off_wall;
    std::vector<Rect<Wall>> ghosts;
    std::optional<Rect<Wall>> bounds;  ///< Of those on the wall.
};

Carried carried_by(const Rect<Wall>& wall, const PieceDrag& drag, Vec<Wall> by) {
    Carried carried;
    for (const PieceDrag::Carried& one : drag.pieces) {
        const Rect<Wall> place = one.place.moved(by);
        if (is_on(wall, drag, place)) {
            carried.on_wall.push_back({one.piece, place.min});
            carried.bounds = carried.bounds ? hull(*carried.bounds, place) : place;
        } else {
            carried.off_wall.push_back(one.piece);
            carried.ghosts.push_back(place);
        }
    }
    return carried;
}

Result<Project> project_with(const Project& kept, const Carried& carried) {
    auto placed = edits::place(kept, carried.on_wall);
    return placed ? edits::take_down(std::move(*placed), carried.off_wall) : placed;
}

std::vector<PieceId> ids_of(const PieceDrag& drag) {
    std::vector<PieceId> ids;
    for (const PieceDrag::Carried& one : drag.pieces)
        ids.push_back(one.piece);
    return ids;
}

std::string label_of(const Project& kept, const PieceDrag& drag, const Carried& carried) {
    if (drag.from_floor) {
        std::vector<PieceId> placed;
        for (const edits::Move& move : carried.on_wall)
            placed.push_back(move.piece);
        return fmt::format("Hang {} on the wall", name_of(kept, placed));
    }
    const std::string name = name_of(kept, ids_of(drag));
    return carried.on_wall.empty() ? fmt::format("Take {} down", name)
                                   : fmt::format("Move {}", name);
}

std::string words_of(const PieceDrag& drag, const Carried& carried) {
    if (carried.off_wall.empty())
        return {};
    const char* them = carried.off_wall.size() == 1 ? "it" : "them";
    return drag.from_floor ? fmt::format("Drag {} up onto the wall", them)
                           : fmt::format("Drop {} here to take {} off the wall", them, them);
}

/// A gap that a guide shows already needs no measure of its own.
void drop_doubles(Showing& showing) {
    constexpr double kSame = 0.1;  // mm
    std::erase_if(showing.measures, [&showing](const LiveMeasure& measure) {
        return std::ranges::any_of(showing.guides, [&measure](const Guide& guide) {
            return geometry::distance(guide.line.from, measure.line.from) < kSame &&
                   geometry::distance(guide.line.to, measure.line.to) < kSame;
        });
    });
}

}  // namespace

PieceDrag take_hold(const Project& project, const std::vector<Waiting>& waiting,
                    const std::vector<PieceId>& selected, const PieceId& held) {
    PieceDrag drag;
    const Piece* held_piece = wall::find(project, held);
    drag.from_floor = held_piece != nullptr && waits(*held_piece);
    std::vector<const Piece*> fixed;
    for (const PieceId& id : selected) {
        const Piece* piece = wall::find(project, id);
        const auto place = seen_at(project, waiting, id);
        if (piece == nullptr || !place || waits(*piece) != drag.from_floor)
            continue;
        if (wall::is_fixed(*piece))
            fixed.push_back(piece);
        else
            drag.pieces.push_back({id, *place});
    }
    if (!drag.pieces.empty())
        drag.bounds = bounds_of(drag.pieces);
    drag.notice = notice_of(fixed, !drag.pieces.empty());
    return drag;
}

Dragged follow(const Project& kept, const PieceDrag& drag, const Pull& pull) {
    const Rect<Wall> wall = geometry::bounds(kept.room.outline);
    const Course course = course_of(pull);
    const Rect<Wall> pulled = drag.bounds.moved(course.by);
    Snapped snapped;
    if (pulled.centre().y > wall.min.y)
        snapped = snap(
            kept, {pulled, ids_of(drag), pull.reach, course.free_x, course.free_y, course.step});
    const Carried carried = carried_by(wall, drag, settled(drag.bounds.min, course, snapped));

    Dragged dragged{project_with(kept, carried), label_of(kept, drag, carried), {}};
    dragged.showing.off_wall = carried.ghosts;
    dragged.showing.words = words_of(drag, carried);
    if (dragged.project && carried.bounds) {
        dragged.showing.guides = std::move(snapped.guides);
        dragged.showing.measures = measures_around(*dragged.project, ids_of(drag), *carried.bounds);
        drop_doubles(dragged.showing);
    }
    return dragged;
}

}  // namespace wallwright::desk
