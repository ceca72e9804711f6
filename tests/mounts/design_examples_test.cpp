// The design of one mount against what books and trade pages print.
#include "design_cases.h"

using namespace wallwright;
using namespace wallwright::mounts;
using geometry::Size;
using units::kMmPerInch;

namespace {

Size inches(double width, double height) {
    return {width * kMmPerInch, height * kMmPerInch};
}

/// The borders as cut around a window of this size.
Borders cut(Size blank, Size window, wall::Mount mount) {
    mount.border_least = 0;
    const wall::Print print = test::print_of("print", window.width + 2 * mount.overlap,
                                             window.height + 2 * mount.overlap);
    return design_mount(frame_around(blank), mount, {print}).cut;
}

wall::Mount base_extra(double extra) {
    wall::Mount mount;
    mount.base_extra = extra;
    return mount;
}

wall::Mount base_ratio(double ratio) {
    wall::Mount mount;
    mount.base_ratio = ratio;
    return mount;
}

/// Of a window, a free width, and a base in either way of saying it.
struct Weighted {
    Size window;
    double free = 0;
    double extra = 0;
    double ratio = 1;
};

Weighted some_weighted(double shape_low, double shape_high) {
    Weighted out;
    const double height = test::between(100, 500);
    const double shape = *rc::gen::inRange(0, 1001) / 1000.0;
    out.window = {height * (shape_low + shape * (shape_high - shape_low)), height};
    out.free = test::between(100, 300);
    out.extra = test::between(1, 40);
    out.ratio = *rc::gen::inRange(105, 180) / 100.0;
    return out;
}

Size blank_of(const Weighted& one, double free_height) {
    return {one.window.width + one.free, one.window.height + free_height};
}

}  // namespace

// Westfall Framing, printed Framing Guide, "Standard frame size formula": a 20 x 24 in frame with
// an 11 x 14 in window has borders of 5 in above and below and 4.5 in at the sides.
TEST_CASE("The framing guide's 20 x 24 in frame is designed with its borders") {
    const Borders borders = cut(inches(20, 24), inches(11, 14), {});
    CHECK(borders.left == Approx(4.5 * kMmPerInch));
    CHECK(borders.right == Approx(4.5 * kMmPerInch));
    CHECK(borders.top == Approx(5 * kMmPerInch));
    CHECK(borders.bottom == Approx(5 * kMmPerInch));
}

// A framing workshop's measuring guide: glass 14 x 11 in, window 9 3/4 x 7 3/4 in, borders 2 1/8 in
// at the sides and 1 5/8 in above and below.
TEST_CASE("The framing workshop's 14 x 11 in glass is designed with its borders") {
    const Borders borders = cut(inches(14, 11), inches(9.75, 7.75), {});
    CHECK(borders.left == Approx(2.125 * kMmPerInch));
    CHECK(borders.right == Approx(2.125 * kMmPerInch));
    CHECK(borders.top == Approx(1.625 * kMmPerInch));
    CHECK(borders.bottom == Approx(1.625 * kMmPerInch));
}

// A. H. Rutt, Home Furnishing, 2nd ed. (Wiley), p. 397: a watercolour of 16 x 20 in has about 4 in
// above it; of an upright picture the sides are narrowest and the base is widest.
TEST_CASE("The textbook's 16 x 20 in watercolour has its 4 in above") {
    const Borders borders = cut(inches(16 + 7, 20 + 8.5), inches(16, 20), base_extra(12.7));
    CHECK(borders.top == Approx(4 * kMmPerInch));
    CHECK(borders.left < borders.top);
    CHECK(borders.top < borders.bottom);
}

// Rutt, p. 397, the order of the margins.
TEST_CASE("Wider pictures with a weighted base are narrowest above and widest below") {
    rc::prop("where the frame leaves as much beside as above and below", [] {
        const Weighted one = some_weighted(1.05, 2);
        for (const wall::Mount& mount : {base_extra(one.extra), base_ratio(one.ratio)}) {
            const Borders borders = cut(blank_of(one, one.free), one.window, mount);
            RC_ASSERT(borders.top < borders.left);
            RC_ASSERT(borders.left < borders.bottom);
            RC_ASSERT(test::near(borders.left, borders.right));
        }
    });
}

TEST_CASE("Upright pictures with a weighted base are narrowest beside and widest below") {
    rc::prop("where the frame leaves more above and below than twice the sides and the base", [] {
        const Weighted one = some_weighted(0.4, 0.95);
        const double more = test::between(1, 60);
        const Borders by_extra =
            cut(blank_of(one, one.free + one.extra + more), one.window, base_extra(one.extra));
        const Borders by_ratio = cut(blank_of(one, one.free * (1 + one.ratio) / 2 + more),
                                     one.window, base_ratio(one.ratio));
        for (const Borders& borders : {by_extra, by_ratio}) {
            RC_ASSERT(borders.left < borders.top);
            RC_ASSERT(borders.top < borders.bottom);
        }
    });
}

TEST_CASE("Square pictures have equal top and sides and more below") {
    rc::prop("where the frame is higher by the base's weight", [] {
        const Weighted one = some_weighted(1, 1);
        const Borders by_extra =
            cut(blank_of(one, one.free + one.extra), one.window, base_extra(one.extra));
        const Borders by_ratio =
            cut(blank_of(one, one.free * (1 + one.ratio) / 2), one.window, base_ratio(one.ratio));
        for (const Borders& borders : {by_extra, by_ratio}) {
            RC_ASSERT(test::near(borders.top, borders.left));
            RC_ASSERT(borders.bottom > borders.top);
        }
        RC_ASSERT(test::near(by_extra.bottom, by_extra.top + one.extra));
        RC_ASSERT(test::near(by_ratio.bottom, by_ratio.top * one.ratio));
    });
}

// US Navy training course (NAVEDTRA 14066), p. 2-32, "Mat proportions": top equals sides, top to
// bottom as 3 to 4.
TEST_CASE("The naval draughtsmen's proportions come of a base of 4 to 3") {
    const Borders borders = cut({300 + 150, 200 + 175}, {300, 200}, base_ratio(4.0 / 3));
    CHECK(borders.left == Approx(75));
    CHECK(borders.top == Approx(75));
    CHECK(borders.bottom == Approx(100));
}

// Westfall Framing, printed Framing Guide: acrylic 1/8 in, board 1/16 in and backing 3/16 in fill a
// rebate of 3/8 in.
TEST_CASE("The framing guide's package fills its rebate") {
    wall::Frame frame = test::frame_for({300, 400});
    frame.glazing.thickness = kMmPerInch / 8;
    frame.backing.thickness = kMmPerInch * 3 / 16;
    wall::Mount mount;
    mount.card.thickness = kMmPerInch / 16;
    wall::Print print = test::print_of("print", 200, 300);
    print.grams_per_square_metre = 0;
    CHECK(design_mount(frame, mount, {print}).depth.total() == Approx(kMmPerInch * 3 / 8));
}

// Geometry: at 45 degrees a board of thickness t leans its cut by t.
TEST_CASE("A bevel of 45 degrees takes one thickness of the board off each side at its back") {
    wall::Mount mount;
    const MountDesign design =
        design_mount(test::frame_for({300, 400}), mount, {test::print_of("print", 210, 297)});
    REQUIRE(design.layers.size() == 1);
    const Window& window = design.layers[0].windows.at(0);
    CHECK(window.face.width() == Approx(200));
    CHECK(window.face.height() == Approx(287));
    CHECK(window.back.width() == Approx(200 - 2.8));
    CHECK(window.back.left() - window.face.left() == Approx(1.4));
    mount.edge = wall::WindowEdge::straight;
    const MountDesign straight =
        design_mount(test::frame_for({300, 400}), mount, {test::print_of("print", 210, 297)});
    CHECK(straight.layers[0].windows.at(0).back == straight.layers[0].windows.at(0).face);
}
