// Frames, mounts and prints for the tests of one mount's design.
#pragma once

#include "mounts/design/mount_design.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>
#include <string>
#include <vector>

namespace wallwright::mounts::test {

inline wall::Print print_of(const std::string& id, double width, double height) {
    wall::Print print;
    print.id = {id};
    print.size = {width, height};
    return print;
}

/// A frame whose rebate takes this blank and whose lip covers 5 mm of it.
inline wall::Frame frame_for(geometry::Size blank) {
    wall::Frame frame;
    frame.outside = {blank.width + 30, blank.height + 30};
    return frame;
}

inline wall::UnderLayer under_by(double reveal, double thickness = 1.4) {
    wall::UnderLayer under;
    under.reveal = reveal;
    under.card.thickness = thickness;
    return under;
}

/// A mount with a window for each of these prints.
inline wall::Mount mount_for(const std::vector<wall::Print>& prints, wall::WindowOrder order) {
    wall::Mount mount;
    mount.order = order;
    for (const wall::Print& print : prints)
        mount.openings.push_back({print.id, std::nullopt, {}});
    return mount;
}

struct Case {
    wall::Frame frame;
    wall::Mount mount;
    std::vector<wall::Print> prints;
    [[nodiscard]] MountDesign design() const { return design_mount(frame, mount, prints); }
};

inline double between(int low, int high) {
    return *rc::gen::inRange(10 * low, 10 * high) / 10.0;
}

/// Any frame, up to three layers and up to three prints in a row or column, some too large.
inline Case some_case() {
    Case one;
    one.frame.outside = {between(300, 1500), between(300, 1500)};
    one.frame.moulding_width = between(8, 45);
    one.frame.rebate_width = between(2, 8);
    const int prints = *rc::gen::inRange(1, 4);
    for (int i = 0; i < prints; ++i)
        one.prints.push_back(
            print_of("print" + std::to_string(i), between(60, 600), between(60, 600)));
    one.mount =
        mount_for(one.prints, *rc::gen::element(wall::WindowOrder::row, wall::WindowOrder::column));
    one.mount.overlap = between(1, 8);
    one.mount.overlap_most = between(1, 25);
    one.mount.bar = between(10, 60);
    one.mount.base_extra = between(0, 40);
    if (*rc::gen::inRange(0, 2) == 1)
        one.mount.base_ratio = *rc::gen::inRange(10, 20) / 10.0;
    one.mount.edge = *rc::gen::element(wall::WindowEdge::bevel, wall::WindowEdge::straight);
    const int layers = *rc::gen::inRange(0, 3);
    for (int i = 0; i < layers; ++i)
        one.mount.under.push_back(under_by(between(2, 7), between(1, 3)));
    return one;
}

inline bool near(double a, double b) {
    return std::abs(a - b) < 1e-9;
}

template <class Space>
bool near(const Rect<Space>& a, const Rect<Space>& b) {
    return near(a.min.x, b.min.x) && near(a.min.y, b.min.y) && near(a.max.x, b.max.x) &&
           near(a.max.y, b.max.y);
}

inline bool near(const Borders& a, const Borders& b) {
    return near(a.left, b.left) && near(a.right, b.right) && near(a.top, b.top) &&
           near(a.bottom, b.bottom);
}

}  // namespace wallwright::mounts::test
