#include "desk/hit.h"

#include <algorithm>
#include <ranges>

namespace wallwright::desk {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Wall;
using wall::Project;

/// Share of a thing's sides that a handle may reach into it, so that its middle stays for moving.
constexpr double kInnerShare = 0.25;

/// The thing that is resized by handles.
std::optional<Thing> resizable(const Selection& selection) {
    if (const auto furniture = selection.furniture())
        return Thing{*furniture};
    if (const auto fixture = selection.fixture())
        return Thing{*fixture};
    return std::nullopt;
}

/// True well inside the place, where it is moved and not resized.
bool is_core(const Rect<Wall>& place, Point<Wall> at, double reach) {
    const double x = std::min(reach, kInnerShare * place.width());
    const double y = std::min(reach, kInnerShare * place.height());
    return Rect<Wall>{{place.min.x + x, place.min.y + y}, {place.max.x - x, place.max.y - y}}
        .contains(at);
}

std::optional<Hit> handle_at(const Project& project, const Selection& selection, Point<Wall> at,
                             double reach) {
    const std::vector<Handle> handles = handles_of(selection);
    if (handles.empty())
        return std::nullopt;
    const std::optional<Rect<Wall>> place = place_of(project, handles.front().thing);
    if (!place || is_core(*place, at, reach))
        return std::nullopt;
    const auto off = [&](const Handle& handle) {
        return geometry::distance(point_of(handle, *place), at);
    };
    const auto nearest = std::ranges::min_element(handles, {}, off);
    return off(*nearest) <= reach ? std::optional<Hit>(*nearest) : std::nullopt;
}

std::optional<Hit> corner_at(const Project& project, Point<Wall> at, double reach) {
    const std::vector<Point<Wall>>& corners = project.room.outline.corners;
    const auto off = [at](Point<Wall> corner) { return geometry::distance(corner, at); };
    const auto nearest = std::ranges::min_element(corners, {}, off);
    if (nearest == corners.end() || off(*nearest) > reach)
        return std::nullopt;
    return Hit{Corner{static_cast<std::size_t>(nearest - corners.begin())}};
}

/// The picture with its waiting pieces may be older than the project.
bool still_waits(const Project& project, const Waiting& one) {
    const wall::Piece* piece = wall::find(project, one.piece);
    return piece != nullptr && piece->state == wall::PieceState::waiting;
}

std::optional<Hit> piece_at(const Project& project, const std::vector<Waiting>& waiting,
                            Point<Wall> at) {
    for (const Waiting& one : std::views::reverse(waiting))
        if (one.place.contains(at) && still_waits(project, one))
            return Hit{Thing{one.piece}};
    for (const wall::Piece& piece : std::views::reverse(project.pieces))
        if (const auto place = wall::place_of(project, piece); place && place->contains(at))
            return Hit{Thing{piece.id}};
    return std::nullopt;
}

/// The smallest of the things that hold the point.
template <class All>
std::optional<Hit> smallest_at(const All& all, Point<Wall> at) {
    std::optional<Hit> hit;
    double least = 0;
    for (const auto& one : all) {
        const double area = one.place.size().area();
        if (!one.place.contains(at) || (hit && area >= least))
            continue;
        hit = Thing{one.id};
        least = area;
    }
    return hit;
}

}  // namespace

std::optional<Rect<Wall>> seen_at(const Project& project, const std::vector<Waiting>& waiting,
                                  const Thing& thing) {
    if (const auto place = place_of(project, thing))
        return place;
    for (const Waiting& one : waiting)
        if (Thing{one.piece} == thing)
            return one.place;
    return std::nullopt;
}

std::vector<Handle> handles_of(const Selection& selection) {
    std::vector<Handle> handles;
    const std::optional<Thing> thing = resizable(selection);
    if (!thing)
        return handles;
    for (const int x : {-1, 0, 1})
        for (const int y : {-1, 0, 1})
            if (x != 0 || y != 0)
                handles.push_back({*thing, x, y});
    return handles;
}

Point<Wall> point_of(const Handle& handle, const Rect<Wall>& place) {
    const Point<Wall> centre = place.centre();
    return {centre.x + handle.x * place.width() / 2, centre.y + handle.y * place.height() / 2};
}

std::optional<Hit> hit_test(const Project& project, const std::vector<Waiting>& waiting,
                            const Selection& selection, Step step, Point<Wall> at, double reach) {
    if (step == Step::room) {
        if (auto handle = handle_at(project, selection, at, reach))
            return handle;
        if (auto corner = corner_at(project, at, reach))
            return corner;
    }
    if (auto piece = piece_at(project, waiting, at))
        return piece;
    if (step != Step::room)
        return std::nullopt;
    if (auto fixture = smallest_at(project.room.fixtures, at))
        return fixture;
    return smallest_at(project.room.furniture, at);
}

std::vector<wall::PieceId> pieces_in(const Project& project, const std::vector<Waiting>& waiting,
                                     const Rect<Wall>& area) {
    std::vector<wall::PieceId> found;
    for (const wall::Placed& piece : wall::placed_pieces(project))
        if (touch(piece.place, area))
            found.push_back(piece.id);
    for (const Waiting& one : waiting)
        if (touch(one.place, area) && still_waits(project, one))
            found.push_back(one.piece);
    return found;
}

}  // namespace wallwright::desk
