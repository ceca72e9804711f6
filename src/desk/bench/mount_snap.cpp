#include "desk/bench/mount_snap.h"

#include <algorithm>
#include <cmath>

namespace wallwright::desk {

namespace {

using geometry::Point;
using geometry::Rect;
using mounts::Front;

/// A rectangle along one axis.
struct Span {
    double start = 0;
    double end = 0;
    [[nodiscard]] double length() const { return end - start; }
    [[nodiscard]] double middle() const { return (start + end) / 2; }
};

Span across(const Rect<Front>& place) {
    return {place.min.x, place.max.x};
}
Span down(const Rect<Front>& place) {
    return {place.min.y, place.max.y};
}

/// Where the window would start, and where the guide for it is.
struct Rest {
    double start = 0;
    double line = 0;
    const char* words = "";
};

/// Keeps the nearest rest along one axis.
class Search {
  public:
    Search(Span place, double reach) : place_(place), reach_(reach) {}

    void offer(double start, double line, const char* words) {
        const double way = std::abs(start - place_.start);
        if (way > reach_ || (best_ && way > best_way_ - geometry::kLengthEps))
            return;
        best_ = Rest{start, line, words};
        best_way_ = way;
    }
    void offer_middle(double blank) {
        offer((blank - place_.length()) / 2, blank / 2, "in the middle");
    }
    void offer_other(Span other, double bar, bool beside) {
        if (beside) {
            offer(other.end + bar, other.end, "one bar apart");
            offer(other.start - bar - place_.length(), other.start, "one bar apart");
        }
        offer(other.start, other.start, "in line");
        offer(other.middle() - place_.length() / 2, other.middle(), "in line");
        offer(other.end - place_.length(), other.end, "in line");
    }
    [[nodiscard]] const std::optional<Rest>& best() const { return best_; }

    /// With the snap, or without one with a whole border past the lip; inside the blank.
    [[nodiscard]] double start(double lip, double step, double blank) const {
        const double free =
            reach_ < 0 ? place_.start : lip + std::round((place_.start - lip) / step) * step;
        return std::clamp(best_ ? best_->start : free, 0.0, std::max(0.0, blank - place_.length()));
    }

  private:
    Span place_;
    double reach_;
    std::optional<Rest> best_;
    double best_way_ = 0;
};

Rect<Front> moved_to(const Rect<Front>& place, Point<Front> corner) {
    return Rect<Front>::at(corner, place.size());
}

/// Its border above or below as wide as that at its left or right, past the lip.
void offer_same_border(Search& search, const WindowWish& wish, const Rect<Front>& level) {
    const double left = level.min.x - wish.lip.left;
    const double right = wish.blank.width - level.max.x - wish.lip.right;
    const double height = level.height();
    for (const double border : {left, right}) {
        search.offer(wish.lip.top + border, wish.lip.top + border, "as wide as at the side");
        search.offer(wish.blank.height - wish.lip.bottom - border - height,
                     wish.blank.height - wish.lip.bottom - border, "as wide as at the side");
    }
}

}  // namespace

WindowRest rest_of(const WindowWish& wish) {
    const Rect<Front>& place = wish.place;
    Search x(across(place), wish.reach);
    x.offer_middle(wish.blank.width);
    for (const Rect<Front>& other : wish.others)
        x.offer_other(across(other), wish.bar, overlap_y(place, other) > 0);
    WindowRest rest;
    rest.place =
        moved_to(place, {x.start(wish.lip.left, wish.step, wish.blank.width), place.min.y});
    Search y(down(place), wish.reach);
    y.offer_middle(wish.blank.height);
    if (wish.others.empty())
        offer_same_border(y, wish, rest.place);
    for (const Rect<Front>& other : wish.others)
        y.offer_other(down(other), wish.bar, overlap_x(rest.place, other) > 0);
    rest.place =
        moved_to(place, {rest.place.min.x, y.start(wish.lip.top, wish.step, wish.blank.height)});
    if (const auto& best = x.best())
        rest.guides.push_back({{best->line, 0}, {best->line, wish.blank.height}, best->words});
    if (const auto& best = y.best())
        rest.guides.push_back({{0, best->line}, {wish.blank.width, best->line}, best->words});
    return rest;
}

}  // namespace wallwright::desk
