#include "desk/snap.h"

#include "desk/snap_search.h"
#include "geometry/floor_line.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::desk {

namespace {

using geometry::FloorLine;
using geometry::Rect;
using geometry::Wall;
using spacing::Axis;
using spacing::Line;
using wall::Project;

/// mm between pieces beyond which the eye no longer sees whether they line up (our choice).
constexpr double kNear = 800;

constexpr Line kLines[] = {Line::low, Line::centre, Line::high};

int rank_of(SnapKind kind) {
    return static_cast<int>(kind);
}

bool is_near(const Rect<Wall>& a, const Rect<Wall>& b) {
    return geometry::overlap_x(a, b) >= -kNear && geometry::overlap_y(a, b) >= -kNear;
}

/// On both sides of a neighbour that is faced.
void offer_gaps(SnapSearch& search, const Rect<Wall>& other, double gap, const std::string& words) {
    const Axis axis = search.axis();
    const Rect<Wall>& place = search.place();
    if (overlap(other_axis(axis), place, other) <= geometry::kLengthEps)
        return;
    constexpr SnapKind kKind = SnapKind::gap;
    search.offer({high(other, axis) + gap - low(place, axis), kKind, rank_of(kKind), Line::low,
                  other, words});
    search.offer({low(other, axis) - gap - high(place, axis), kKind, rank_of(kKind), Line::high,
                  other, words});
}

void offer_alignments(SnapSearch& search, const Rect<Wall>& other) {
    if (!is_near(search.place(), other))
        return;
    for (const Line line : kLines) {
        const SnapKind kind = line == Line::centre ? SnapKind::centres : SnapKind::edges;
        search.offer({spacing::line_at(other, search.axis(), line) -
                          spacing::line_at(search.place(), search.axis(), line),
                      kind, rank_of(kind), line, other, words_for(search.axis(), line)});
    }
}

void offer_pieces(SnapSearch& search, const Project& project, const SnapWish& wish) {
    const double gap = project.style.gap;
    const std::string words = fmt::format("gap {}", units::format_number(gap, project.unit));
    for (const wall::Placed& piece : wall::placed_pieces(project)) {
        if (std::ranges::count(wish.moving, piece.id) > 0)
            continue;
        offer_gaps(search, piece.place, gap, words);
        offer_alignments(search, piece.place);
    }
}

/// How high the centre line is where the rectangle's middle comes to rest, `x`.
void offer_centre_line(SnapSearch& search, const Project& project, const FloorLine& floor,
                       double x) {
    const double height = project.style.centre_height + floor.at(x);
    Rect<Wall> shown = geometry::bounds(project.room.outline);
    if (!floor.is_level())
        shown = search.place();
    search.offer({height - search.place().centre().y,
                  SnapKind::room,
                  rank_of(SnapKind::room),
                  Line::centre,
                  {{shown.min.x, height}, {shown.max.x, height}},
                  "centre line"});
}

/// Where the floor climbs, the height at which the middle is as far above it as a neighbour's.
void offer_climbing(SnapSearch& search, const Project& project, const SnapWish& wish,
                    const FloorLine& floor, double x) {
    constexpr SnapKind kKind = SnapKind::centres;
    for (const wall::Placed& piece : wall::placed_pieces(project)) {
        if (std::ranges::count(wish.moving, piece.id) > 0 || !is_near(search.place(), piece.place))
            continue;
        const double climbed = floor.at(x) - floor.at(piece.place.centre().x);
        if (geometry::is_same_length(climbed, 0))
            continue;
        const double height = piece.place.centre().y + climbed;
        search.offer({height - search.place().centre().y, kKind, rank_of(kKind), Line::centre,
                      piece.place, "climbs with the stair"});
    }
}

/// Where the left edge comes to rest.
double resting_left(const SnapWish& wish, const SnapSearch& x) {
    const double left = wish.place.left();
    if (x.best())
        return left + x.best()->by;
    return wish.free_x && wish.step > 0 ? std::round(left / wish.step) * wish.step : left;
}

void offer_middles_below(SnapSearch& search, const Project& project) {
    const Rect<Wall>& place = search.place();
    for (const wall::Furniture& one : project.room.furniture) {
        if (geometry::overlap_x(place, one.place) <= 0 || one.place.top() > place.bottom())
            continue;
        search.offer({one.place.centre().x - place.centre().x, SnapKind::room,
                      rank_of(SnapKind::room), Line::centre, one.place,
                      fmt::format("middle of {}", wall::title_of(one))});
    }
}

}  // namespace

Snapped snap(const Project& project, const SnapWish& wish) {
    SnapSearch x(wish.place, Axis::horizontal, wish.reach);
    SnapSearch y(wish.place, Axis::vertical, wish.reach);
    if (wish.free_x) {
        offer_pieces(x, project, wish);
        offer_middles_below(x, project);
    }
    if (wish.free_y) {
        const FloorLine floor(project.room.outline);
        const double middle = resting_left(wish, x) + wish.place.width() / 2;
        offer_pieces(y, project, wish);
        offer_centre_line(y, project, floor, middle);
        if (!floor.is_level())
            offer_climbing(y, project, wish, floor, middle);
    }
    return found_by(x, y);
}

}  // namespace wallwright::desk
