#include "arrange/arrange.h"

#include <algorithm>

namespace wallwright::arrange {

namespace {

/// About the upright through the middle of the bounds.
Layout left_for_right(Layout layout) {
    const double sum = bounds_of(layout).left() + bounds_of(layout).right();
    for (Spot& spot : layout)
        spot.place = {{sum - spot.place.max.x, spot.place.min.y},
                      {sum - spot.place.min.x, spot.place.max.y}};
    return layout;
}

Layout upside_down(Layout layout) {
    const double sum = bounds_of(layout).bottom() + bounds_of(layout).top();
    for (Spot& spot : layout)
        spot.place = {{spot.place.min.x, sum - spot.place.max.y},
                      {spot.place.max.x, sum - spot.place.min.y}};
    return layout;
}

double area_of(const Layout& layout) {
    double area = 0;
    for (const Spot& spot : layout)
        area += spot.place.size().area();
    return area;
}

double area_of_both(const Layout& a, Layout b) {
    const WallPoint middle_a = bounds_of(a).centre();
    const WallPoint middle_b = bounds_of(b).centre();
    double widest = 0;
    for (Spot& spot : b) {
        spot.place = spot.place.moved({middle_a.x - middle_b.x, middle_a.y - middle_b.y});
        widest = std::max(widest, spot.place.width());
    }
    const auto left = [](const Spot& spot) { return spot.place.left(); };
    std::ranges::sort(b, {}, left);
    double area = 0;
    for (const Spot& one : a)
        for (auto other = std::ranges::lower_bound(b, one.place.left() - widest, {}, left);
             other != b.end() && other->place.left() < one.place.right(); ++other)
            area += std::max(0.0, geometry::overlap_x(one.place, other->place)) *
                    std::max(0.0, geometry::overlap_y(one.place, other->place));
    return area;
}

}  // namespace

double difference(const Layout& a, const Layout& b) {
    if (a.empty() || b.empty())
        return a.empty() && b.empty() ? 0 : 1;
    const Layout turned = upside_down(b);
    const double both =
        std::max({area_of_both(a, b), area_of_both(a, left_for_right(b)), area_of_both(a, turned),
                  area_of_both(a, left_for_right(turned))});
    return 1 - 2 * both / (area_of(a) + area_of(b));
}

}  // namespace wallwright::arrange
