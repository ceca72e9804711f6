#include "desk/overlay_wishes.h"

#include "draw/paths.h"

#include <algorithm>

namespace wallwright::desk {

namespace {

using draw::Ink;
using draw::LineType;
using draw::Paint;
using draw::Stroke;
using geometry::Point;
using geometry::Rect;
using geometry::Segment;
using geometry::Vec;
using geometry::Wall;
using wall::Wish;
using wall::WishKind;

// All in mm on paper.
constexpr double kRadius = 1.9;  // of a sign
constexpr double kAir = 0.5;     // between a sign and the edge of its piece
constexpr double kArm = 1.05;    // of what is drawn in a sign, from its middle
constexpr double kReach = 1.6;   // of a link into both pieces
constexpr double kAside = 0.22;  // share of what two share at which their link runs, clear of
                                 // the figure in the middle of their gap

const Stroke kLine{{Ink::accent}, 0.35};
const Stroke kDotted{{Ink::accent}, 0.35, LineType::dotted};

/// Draws a sign about a point in mm on paper from there.
class Sign {
  public:
    Sign(Overlay& overlay, Point<Wall> middle) : overlay_(overlay), middle_(middle) {
        overlay.add(draw::circle(middle, overlay.on_wall(kRadius), {Paint{Ink::paper}, kLine}));
    }
    void line(Vec<Wall> from, Vec<Wall> to) { overlay_.add(draw::line(at(from), at(to), kLine)); }
    void ring(double radius) {
        overlay_.add(draw::circle(middle_, overlay_.on_wall(radius), {std::nullopt, kLine}));
    }
    void box(Vec<Wall> low, Vec<Wall> high) {
        overlay_.add(draw::box(Rect<Wall>{at(low), at(high)}, {Paint{Ink::accent}, std::nullopt}));
    }
    /// From tail to tip.
    void arrow(Vec<Wall> tail, Vec<Wall> tip) {
        const double length = geometry::length(tip + -1 * tail);
        const Vec<Wall> along = (1 / length) * (tip + -1 * tail);
        const Vec<Wall> across{-along.y, along.x};
        const Vec<Wall> back = tip + -0.75 * along;
        line(tail, tip);
        line(back + 0.65 * across, tip);
        line(back + -0.65 * across, tip);
    }

  private:
    [[nodiscard]] Point<Wall> at(Vec<Wall> paper) const {
        return middle_ + overlay_.on_wall(1) * paper;
    }

    Overlay& overlay_;
    Point<Wall> middle_;
};

/// Of one axis: where both spans lie, a little aside from its middle, or the ends that look at each
/// other.
std::pair<double, double> ends(double a_low, double a_high, double b_low, double b_high) {
    const double low = std::max(a_low, b_low);
    const double high = std::min(a_high, b_high);
    if (low < high)
        return std::pair(high - kAside * (high - low), high - kAside * (high - low));
    return a_high <= b_low ? std::pair(a_high, b_low) : std::pair(a_low, b_high);
}

/// The shortest way between the two, where it can be seen.
Segment<Wall> between(const Rect<Wall>& a, const Rect<Wall>& b) {
    const auto [ax, bx] = ends(a.min.x, a.max.x, b.min.x, b.max.x);
    const auto [ay, by] = ends(a.min.y, a.max.y, b.min.y, b.max.y);
    return {{ax, ay}, {bx, by}};
}

void add_link(Overlay& overlay, WishKind kind, const Rect<Wall>& a, const Rect<Wall>& b) {
    const Segment<Wall> way = between(a, b);
    const Vec<Wall> along = way.to - way.from;
    const double length = geometry::length(along);
    const Vec<Wall> reach = length > geometry::kLengthEps
                                ? (overlay.on_wall(kReach) / length) * along
                                : Vec<Wall>{overlay.on_wall(kReach), 0};
    overlay.add(draw::line(way.from + -1 * reach, way.to + reach, kLine));
    Sign sign(overlay, way.from + 0.5 * along);
    if (kind == WishKind::apart) {
        sign.arrow({-0.25, 0}, {-kArm - 0.2, 0});
        sign.arrow({0.25, 0}, {kArm + 0.2, 0});
        return;
    }
    sign.box({-kArm, -0.8}, {-0.15, 0.8});
    sign.box({0.15, -0.8}, {kArm, 0.8});
}

/// In from an edge.
double inset(const Overlay& overlay) {
    return overlay.on_wall(kRadius + kAir);
}

void add_not_over(Overlay& overlay, const Rect<Wall>& piece, const Rect<Wall>& thing) {
    const Point<Wall> corner{piece.left() + inset(overlay), piece.bottom() + inset(overlay)};
    overlay.add(draw::line(corner, Point<Wall>{thing.centre().x, thing.top()}, kDotted));
    Sign sign(overlay, corner);
    sign.ring(kArm);
    sign.line({-kArm, -kArm}, {kArm, kArm});
}

void add_for_one(Overlay& overlay, WishKind kind, const Rect<Wall>& piece) {
    const Point<Wall> middle = piece.centre();
    if (kind == WishKind::middle)
        return Sign(overlay, middle).ring(0.7);
    if (kind == WishKind::low)
        return Sign(overlay, {middle.x, piece.bottom() + inset(overlay)})
            .arrow({0, kArm}, {0, -kArm});
    Sign(overlay, {middle.x, piece.top() - inset(overlay)}).arrow({0, -kArm}, {0, kArm});
}

}  // namespace

void add_wishes(Overlay& overlay, const wall::Project& project,
                const std::vector<Waiting>& waiting) {
    for (const Wish& wish : project.wishes) {
        const auto first = seen_at(project, waiting, Thing(wish.first));
        if (!first)
            continue;
        if (wish.second) {
            if (const auto second = seen_at(project, waiting, Thing(*wish.second)))
                add_link(overlay, wish.kind, *first, *second);
        } else if (wish.thing) {
            if (const auto thing = place_of(project.room, *wish.thing))
                add_not_over(overlay, *first, *thing);
        } else {
            add_for_one(overlay, wish.kind, *first);
        }
    }
}

}  // namespace wallwright::desk
