// From one space to another by name: scale, flip, shift. Nothing else may turn a wall point into a
// page point.
#pragma once

#include "geometry/rect.h"

namespace wallwright::geometry {

/// x' = origin.x + scale * x, y' = origin.y +- scale * y: a similarity without rotation. y is
/// flipped when one space goes up and the other down.
template <class From, class To>
struct Transform {
    Point<To> origin;  ///< Where From's (0, 0) lands.
    double scale = 1;  ///< To-units for one From-unit.

    static constexpr double kFlip = From::kUpward == To::kUpward ? 1.0 : -1.0;

    [[nodiscard]] constexpr Point<To> operator()(Point<From> p) const {
        return {origin.x + scale * p.x, origin.y + kFlip * scale * p.y};
    }
    [[nodiscard]] constexpr Rect<To> operator()(const Rect<From>& r) const {
        const Point<To> a = (*this)(r.min);
        const Point<To> b = (*this)(r.max);
        return {{std::min(a.x, b.x), std::min(a.y, b.y)}, {std::max(a.x, b.x), std::max(a.y, b.y)}};
    }
    [[nodiscard]] constexpr Transform<To, From> inverse() const {
        return {{-origin.x / scale, -kFlip * origin.y / scale}, 1 / scale};
    }
};

}  // namespace wallwright::geometry
