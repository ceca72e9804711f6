#include "desk/bench/match_links.h"

#include "draw/paths.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace wallwright::desk {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Wall;

constexpr double kLockShare = 0.14;  // of the way between the drawers where the lock is
constexpr double kLaneStep = 1.7;    // mm on paper between the lanes of two columns
constexpr double kAside = 0.8;       // mm on paper by which lines of two kinds run side by side

Point<Wall> on_curve(Point<Wall> a, Point<Wall> b, Point<Wall> c, Point<Wall> d, double t) {
    const double s = 1 - t;
    const double wa = s * s * s;
    const double wb = 3 * s * s * t;
    const double wc = 3 * s * t * t;
    const double wd = t * t * t;
    return {wa * a.x + wb * b.x + wc * c.x + wd * d.x, wa * a.y + wb * b.y + wc * c.y + wd * d.y};
}

/// Lines and level curves, kept as a path and as points.
class Wire {
  public:
    explicit Wire(Point<Wall> start) : pen_(start), points_{start} {}

    void straight(Point<Wall> to) {
        pen_.line(to);
        points_.push_back(to);
    }
    /// Level at both ends.
    void bend(Point<Wall> to) {
        constexpr int kParts = 16;
        const Point<Wall> from = points_.back();
        const double reach = (to.x - from.x) / 2;
        const Point<Wall> first{from.x + reach, from.y};
        const Point<Wall> second{to.x - reach, to.y};
        pen_.curve(first, second, to);
        for (int i = 1; i <= kParts; ++i)
            points_.push_back(on_curve(from, first, second, to, static_cast<double>(i) / kParts));
    }
    [[nodiscard]] draw::Path<Wall> path() const { return pen_.drawn({}); }
    [[nodiscard]] const std::vector<Point<Wall>>& points() const { return points_; }

  private:
    draw::Pen<Wall> pen_;
    std::vector<Point<Wall>> points_;
};

/// How a line leaves a drawer: from the thing's inner edge, where it stands in the column next to
/// the middle, straight on; else through the lane above its row.
struct Exit {
    Point<Wall> at;                                      ///< On the thing's edge.
    std::optional<std::pair<double, Point<Wall>>> lane;  ///< x where its column ends; in the lane.
    Point<Wall> out;                                     ///< On the drawer's inner edge.
};

Exit exit_of(const BoardItem& item, const Drawer& drawer, bool to_right, double scale,
             double aside) {
    const double edge = to_right ? drawer.area.max.x : drawer.area.min.x;
    Exit exit;
    exit.at = {to_right ? item.place.max.x : item.place.min.x, item.place.centre().y + aside};
    exit.out = {edge, exit.at.y};
    if (item.column == 0)
        return exit;
    const double inward = to_right ? 1 : -1;
    const double lane =
        item.lane + aside - kLaneStep / scale * (static_cast<double>(item.column) - 1);
    const double from = to_right ? item.cell.max.x : item.cell.min.x;
    exit.lane = {from, {from + inward * board::kColumnGap / scale, lane}};
    exit.out.y = lane;
    return exit;
}

/// What is so and what is better beside each other where they run the same way, mm on paper.
double aside_of(LinkKind kind) {
    return kind == LinkKind::today ? -kAside / 2 : kind == LinkKind::wanted ? kAside / 2 : 0;
}

void draw_link(Link& link, const Exit& from, const Exit& to) {
    Wire wire(from.at);
    if (from.lane) {
        wire.straight({from.lane->first, from.at.y});
        wire.bend(from.lane->second);
    }
    wire.straight(from.out);
    wire.bend(to.out);
    if (to.lane) {
        wire.straight(to.lane->second);
        wire.bend({to.lane->first, to.at.y});
    }
    wire.straight(to.at);
    link.path = wire.path();
    link.points = wire.points();
    const double reach = (to.out.x - from.out.x) / 2;
    link.lock_at = on_curve(from.out, {from.out.x + reach, from.out.y},
                            {to.out.x - reach, to.out.y}, to.out, kLockShare);
}

void add_link(std::vector<Link>& links, const MatchLayout& layout, Link link) {
    const BoardItem* print = layout.find(link.print);
    const BoardItem* frame = layout.find(link.piece);
    if (print == nullptr || frame == nullptr)
        return;
    const double aside = aside_of(link.kind) / layout.scale;
    draw_link(link, exit_of(*print, layout.prints, true, layout.scale, aside),
              exit_of(*frame, layout.frames, false, layout.scale, aside));
    links.push_back(std::move(link));
}

double distance_to_part(Point<Wall> a, Point<Wall> b, Point<Wall> at) {
    const auto along = b - a;
    const double square = along.x * along.x + along.y * along.y;
    const auto to = at - a;
    const double share =
        square > 0 ? std::clamp((to.x * along.x + to.y * along.y) / square, 0.0, 1.0) : 0;
    return geometry::distance(a + share * along, at);
}

}  // namespace

std::vector<Link> links_of(const wall::Project& project, const Matched* found,
                           const MatchLayout& layout) {
    const auto is_in_match = [found](const wall::PieceId& piece, const wall::PrintId& print) {
        return found != nullptr &&
               std::ranges::any_of(found->match.pairs, [&](const mounts::Pair& pair) {
                   return pair.piece == piece && pair.print == print;
               });
    };
    std::vector<Link> links;
    for (const wall::Piece& piece : project.pieces)
        if (piece.print)
            add_link(links, layout,
                     {*piece.print,
                      piece.id,
                      is_in_match(piece.id, *piece.print) ? LinkKind::best : LinkKind::today,
                      piece.keeps_print,
                      {},
                      {},
                      {}});
    if (found == nullptr)
        return links;
    for (const mounts::Pair& pair : found->match.pairs) {
        const wall::Piece* piece = wall::find(project, pair.piece);
        if (piece != nullptr && piece->print != pair.print)
            add_link(links, layout, {pair.print, pair.piece, LinkKind::wanted, false, {}, {}, {}});
    }
    return links;
}

double distance_to(const Link& link, Point<Wall> at) {
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 1; i < link.points.size(); ++i)
        least = std::min(least, distance_to_part(link.points[i - 1], link.points[i], at));
    return least;
}

}  // namespace wallwright::desk
