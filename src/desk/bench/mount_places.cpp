#include "desk/bench/mount_places.h"

#include "base/contract.h"
#include "desk/bench/mount_part.h"

#include <algorithm>

namespace wallwright::desk {

namespace {

using geometry::Point;
using mounts::Borders;
using mounts::Front;
using mounts::MountDesign;
using wall::FromCorner;

FromCorner on_blank(Point<Front> corner) {
    return {std::max(0.0, corner.x), std::max(0.0, corner.y)};
}

}  // namespace

std::vector<FromCorner> corners_of(const MountDesign& design) {
    std::vector<FromCorner> corners;
    for (std::size_t i = 0; i < window_count(design); ++i)
        corners.push_back(on_blank(window_at(design, i).min));
    return corners;
}

std::vector<FromCorner> corners_for_border(const MountDesign& design, double Borders::*border,
                                           double more) {
    std::vector<FromCorner> corners = corners_of(design);
    for (FromCorner& corner : corners) {
        if (border == &Borders::left)
            corner.left += more;
        else if (border == &Borders::right)
            corner.left -= more;
        else if (border == &Borders::top)
            corner.top += more;
        else
            corner.top -= more;
    }
    return corners;
}

std::vector<FromCorner> corners_about(const MountDesign& design, const MountDesign& before) {
    WW_EXPECT(window_count(design) == window_count(before), "no window came or went");
    std::vector<FromCorner> corners;
    for (std::size_t i = 0; i < window_count(design); ++i) {
        const auto window = window_at(design, i);
        const auto off = window_at(before, i).centre() - window.centre();
        corners.push_back(on_blank(window.min + off));
    }
    return corners;
}

FromCorner corner_beside(const MountDesign& design, double bar, double width) {
    double right = 0;
    double top = design.blank.height;
    for (std::size_t i = 0; i < window_count(design); ++i) {
        right = std::max(right, window_at(design, i).max.x);
        top = std::min(top, window_at(design, i).min.y);
    }
    return on_blank({std::min(right + bar, design.blank.width - width), top});
}

}  // namespace wallwright::desk
