#include "pages/standard_scale.h"

namespace wallwright::pages {

namespace {

constexpr double kDenominators[] = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10000};

}  // namespace

geometry::Size Scaled::size_on_page() const {
    return {drawing.extent.width() / denominator, drawing.extent.height() / denominator};
}

bool Scaled::fits(const Area& area) const {
    const geometry::Size size = size_on_page();
    return size.width <= area.width() && size.height <= area.height();
}

Scaled at_standard_scale(const std::function<draw::WallDrawing(double)>& make, const Area& area,
                         double least) {
    Scaled scaled;
    for (const double denominator : kDenominators) {
        if (denominator < least)
            continue;
        scaled = {denominator, make(denominator)};
        if (scaled.fits(area))
            break;
    }
    return scaled;
}

geometry::Transform<geometry::Wall, geometry::Page> put_at(const Scaled& scaled, Spot upper_left) {
    const geometry::Rect<geometry::Wall>& extent = scaled.drawing.extent;
    const double scale = scaled.scale();
    return {{upper_left.x - extent.left() * scale, upper_left.y + extent.top() * scale}, scale};
}

geometry::Transform<geometry::Wall, geometry::Page> centred(const Scaled& scaled,
                                                            const Area& area) {
    const geometry::Size size = scaled.size_on_page();
    return put_at(scaled, {area.centre().x - size.width / 2, area.centre().y - size.height / 2});
}

}  // namespace wallwright::pages
