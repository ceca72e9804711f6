#include "mounts/window.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

namespace wallwright::mounts {

namespace {

using geometry::Size;
using units::kMmPerInch;

/// A frame whose rebate takes a blank of this size.
wall::Frame frame_for(Size blank) {
    wall::Frame frame;
    const double around = 2 * (frame.moulding_width - frame.rebate_width) + kRebateClearance;
    frame.outside = {blank.width + around, blank.height + around};
    return frame;
}

/// A print that this mount shows through a window of this size.
wall::Print print_for(Size window, const wall::Mount& mount) {
    wall::Print print;
    print.size = {window.width + 2 * mount.overlap, window.height + 2 * mount.overlap};
    return print;
}

MountPlan plan(Size blank, Size window, double base_extra = 0) {
    wall::Mount mount;
    mount.base_extra = base_extra;
    return plan_mount(frame_for(blank), mount, print_for(window, mount));
}

Size inches(double width, double height) {
    return {width * kMmPerInch, height * kMmPerInch};
}

}  // namespace

// Westfall Framing, printed Framing Guide, "Standard frame size formula": a 20 x 24 in frame with
// an 11 x 14 in window has borders of 5 in above and below and 4.5 in at the sides.
TEST_CASE("The framing guide's 20 x 24 in frame has its borders") {
    const Borders cut = plan(inches(20, 24), inches(11, 14)).cut;
    CHECK(cut.left == Approx(4.5 * kMmPerInch));
    CHECK(cut.right == Approx(4.5 * kMmPerInch));
    CHECK(cut.top == Approx(5 * kMmPerInch));
    CHECK(cut.bottom == Approx(5 * kMmPerInch));
}

// A framing workshop's measuring guide: glass 14 x 11 in, window 9 3/4 x 7 3/4 in, borders 2 1/8 in
// at the sides and 1 5/8 in above and below.
TEST_CASE("The framing workshop's 14 x 11 in mount has its borders") {
    const Borders cut = plan(inches(14, 11), inches(9.75, 7.75)).cut;
    CHECK(cut.left == Approx(2.125 * kMmPerInch));
    CHECK(cut.right == Approx(2.125 * kMmPerInch));
    CHECK(cut.top == Approx(1.625 * kMmPerInch));
    CHECK(cut.bottom == Approx(1.625 * kMmPerInch));
}

// A. H. Rutt, Home Furnishing, 2nd ed. (Wiley), p. 397: the order of the margins of each shape of
// picture.
TEST_CASE(
    "A weighted base gives a landscape picture its narrowest border above and its widest below") {
    const Borders cut = plan({500, 400}, {300, 200}, 20).cut;
    CHECK(cut.top < cut.left);
    CHECK(cut.left < cut.bottom);
}

TEST_CASE(
    "A weighted base gives a portrait picture its narrowest borders at the sides and its widest "
    "below") {
    const Borders cut = plan({400, 520}, {240, 300}, 20).cut;
    CHECK(cut.left < cut.top);
    CHECK(cut.top < cut.bottom);
}

TEST_CASE(
    "A square picture on a blank higher by the base's weight has equal top and sides and more "
    "below") {
    const Borders cut = plan({400, 420}, {240, 240}, 20).cut;
    CHECK(cut.top == Approx(cut.left));
    CHECK(cut.bottom == Approx(cut.left + 20));
}

// US Navy training course (NAVEDTRA 14066), p. 2-32, "Mat proportions": top equals sides, top to
// bottom as 3 to 4.
TEST_CASE("A mount of the naval draughtsmen's proportions is told by its base") {
    const Borders cut = plan({300 + 2 * 75, 200 + 75 + 100}, {300, 200}, 25).cut;
    CHECK(cut.top == Approx(75));
    CHECK(cut.left == Approx(75));
    CHECK(cut.top / cut.bottom == Approx(3.0 / 4));
}

TEST_CASE("The blank leaves its clearance in the rebate") {
    wall::Frame frame;
    frame.outside = {431, 531};
    frame.moulding_width = 20;
    frame.rebate_width = 6;
    // The rebate is 403 x 503 mm.
    CHECK(blank_size(frame, 3) == Size{400, 500});
    CHECK(blank_size(frame) == Size{401, 501});
    CHECK(blank_size(frame, 0) == Size{403, 503});
}

TEST_CASE("A print larger than the frame shows as a negative border") {
    const Borders cut = plan({300, 400}, {320, 200}).cut;
    CHECK(cut.left == Approx(-10));
    CHECK(cut.top == Approx(100));
}

TEST_CASE(
    "Window and borders make up the blank, the lip hides the rest, and the print stays covered") {
    rc::prop("for any frame, mount and print", [] {
        const auto length = [](int low, int high) {
            return *rc::gen::inRange(10 * low, 10 * high) / 10.0;
        };
        wall::Frame frame;
        frame.outside = {length(100, 1500), length(100, 1500)};
        frame.moulding_width = length(8, 45);
        frame.rebate_width = length(2, 8);
        wall::Mount mount;
        mount.overlap = length(1, 10);
        mount.base_extra = length(0, 30);
        wall::Print print;
        print.size = {length(50, 1500), length(50, 1500)};
        const MountPlan made = plan_mount(frame, mount, print);
        const auto near = [](double a, double b) { return std::abs(a - b) < 1e-9; };

        RC_ASSERT(near(made.window.width + made.cut.left + made.cut.right, made.blank.width));
        RC_ASSERT(near(made.window.height + made.cut.top + made.cut.bottom, made.blank.height));
        RC_ASSERT(near(made.cut.bottom - made.cut.top, mount.base_extra));
        // What is seen of mount and window fills the frame's sight size.
        const Size sight{frame.outside.width - 2 * frame.moulding_width,
                         frame.outside.height - 2 * frame.moulding_width};
        RC_ASSERT(near(made.window.width + made.seen.left + made.seen.right, sight.width));
        RC_ASSERT(near(made.window.height + made.seen.top + made.seen.bottom, sight.height));
        RC_ASSERT(near(made.cut.left - made.seen.left, frame.rebate_width - kRebateClearance / 2));
        RC_ASSERT(near(made.cut.bottom - made.seen.bottom, made.cut.left - made.seen.left));
        // The window overlaps the print on every side.
        RC_ASSERT(near((print.size.width - made.window.width) / 2, mount.overlap));
        RC_ASSERT(near((print.size.height - made.window.height) / 2, mount.overlap));
    });
}

}  // namespace wallwright::mounts
