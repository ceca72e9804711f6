#include "mounts/match/fitting.h"
#include "wall/lab.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>

namespace wallwright::mounts {

namespace {

using geometry::Size;

constexpr wall::Colour kGrey{0x80, 0x80, 0x80};

/// A frame that takes a sheet of this size and whose lip covers 5 mm of it on each side. Frame,
/// mount and print are of one colour unless a test says otherwise.
Holder holder_for(Size blank) {
    Holder holder;
    const double around =
        2 * (holder.frame.moulding_width - holder.frame.rebate_width) + kRebateClearance;
    holder.frame.outside = {blank.width + around, blank.height + around};
    holder.frame.colour = kGrey;
    holder.mount.colour = kGrey;
    return holder;
}

wall::Print print_of(Size size) {
    wall::Print print;
    print.size = size;
    print.colour = kGrey;
    return print;
}

Fitting fitting(const Holder& holder, Size print) {
    const auto found = best_fitting(holder, print_of(print));
    REQUIRE(found);
    return *found;
}

}  // namespace

// The values of the sRGB primaries in CIELAB under D65 that colour calculators print: white
// L* 100, red 53.24 80.09 67.20, blue 32.30 79.19 -107.86; from memory.
TEST_CASE("Colours are as far apart as their published CIELAB values say") {
    const wall::Colour white{255, 255, 255};
    const wall::Colour red{255, 0, 0};
    const wall::Colour blue{0, 0, 255};
    CHECK(colour_distance({0, 0, 0}, white) == Approx(100).margin(0.01));
    CHECK(colour_distance(red, white) == Approx(std::hypot(100 - 53.24, 80.09, 67.20)).margin(0.1));
    CHECK(colour_distance(red, blue) ==
          Approx(std::hypot(53.24 - 32.30, 80.09 - 79.19, 67.20 + 107.86)).margin(0.1));
    CHECK(colour_distance(red, red) == 0);
}

// A window of 200 x 287 in a blank of 300 x 400: 50 and 56.5 as cut, 45 and 51.5 as seen.
TEST_CASE("An A4 print in a 300 x 400 frame is charged for its unevenness alone") {
    const Fitting found = fitting(holder_for({300, 400}), {210, 297});
    CHECK(found.mounted);
    CHECK_FALSE(found.turned);
    CHECK(found.seen.left == Approx(45));
    CHECK(found.seen.top == Approx(51.5));
    CHECK(found.of(Flaw::uneven).measured == Approx(6.5));
    CHECK(found.of(Flaw::uneven).cost == 650);
    CHECK(found.cost() == 650);
}

TEST_CASE("A base that is wanted wider is no unevenness") {
    Holder holder = holder_for({300, 400});
    holder.mount.base_extra = 13;
    const Fitting found = fitting(holder, {210, 297});
    CHECK(found.seen.bottom - found.seen.top == Approx(13));
    CHECK(found.cost() == 0);
}

// Least border 25: the sides need 2 x (25 + 5), so the window may be 140 wide. 170 - 2 x 5 is 20
// more, so the overlap grows by its whole 5 on each side at the sides to 150, and the border seen
// is (200 - 150) / 2 - 5 = 20.
TEST_CASE("Borders too narrow are made up by crop as far as it may go, and the rest is thin") {
    const Fitting found = fitting(holder_for({200, 200}), {170, 170});
    CHECK(found.of(Flaw::crop).measured == Approx(5));
    CHECK(found.of(Flaw::crop).cost == 1500);
    CHECK(found.of(Flaw::thin).measured == Approx(5));
    CHECK(found.of(Flaw::thin).cost == 2000);
    CHECK(found.of(Flaw::uneven).cost == 0);
    CHECK(found.cost() == 3500);
}

TEST_CASE("A person who allows no crop gets the thin border instead") {
    Holder holder = holder_for({200, 200});
    holder.mount.overlap_most = holder.mount.overlap;
    const Fitting found = fitting(holder, {170, 170});
    CHECK(found.of(Flaw::crop).cost == 0);
    CHECK(found.of(Flaw::thin).cost == 4000);
}

// With the most overlap a print of 195 mm shows through 175, which leaves 12.5 on each side of 200,
// 7.5 of it past the lip; with an overlap of 5 it would be 2.5, less than the 3 that are the least.
TEST_CASE("A print that would need more crop than allowed to show its mount has no place") {
    Holder holder = holder_for({200, 206});
    CHECK(fitting(holder, {195, 195}).seen.left == Approx(7.5));
    holder.mount.overlap_most = 5;
    CHECK_FALSE(best_fitting(holder, print_of({195, 195})));
}

TEST_CASE("A sheet larger than the frame takes has no place, whatever is cropped") {
    Holder holder = holder_for({200, 300});
    holder.mount.overlap_most = 100;
    CHECK(best_fitting(holder, print_of({200, 250})));
    CHECK_FALSE(best_fitting(holder, print_of({201, 250})));
}

// An art teacher's rule for mats ("Matting", mmresourcecenter.org): 8 x 10 in of picture in 6 in
// more of width, 11 x 14 in 8 in more.
TEST_CASE("The widest border that a picture needs is the art teacher's") {
    CHECK(border_most({203.2, 254}) == Approx(76.2));
    CHECK(border_most({355.6, 279.4}) == Approx(101.6));
}

// A window of 90 x 90 in 500 x 500: 205 as cut, 200 as seen, 123.8 over 76.2.
TEST_CASE("A small print lost in a large frame is charged for its wide borders") {
    const Fitting found = fitting(holder_for({500, 500}), {100, 100});
    CHECK(found.of(Flaw::wide).measured == Approx(123.8));
    CHECK(found.of(Flaw::wide).cost == 6190);
    CHECK(found.cost() == 6190);
}

TEST_CASE("Colours count little: black frame and white mount about a grey print") {
    Holder holder = holder_for({300, 387});
    holder.frame.colour = {0, 0, 0};
    holder.mount.colour = {255, 255, 255};
    // Grey lies on the way from black to white, 100 long, so the mean distance is 50.
    const Fitting found = fitting(holder, {210, 297});
    CHECK(found.of(Flaw::colour).measured == Approx(50).margin(0.01));
    CHECK(found.cost() == 250);
}

TEST_CASE("A print that fills its frame needs no mount") {
    const Fitting found = fitting(holder_for({210, 297}), {210, 297});
    CHECK_FALSE(found.mounted);
    CHECK(found.cost() == 0);
    // The lip of 6 mm still covers a sheet that is 4 mm smaller than its blank, which is 2 mm
    // smaller than the rebate; more and an edge could come out.
    CHECK_FALSE(fitting(holder_for({214, 301}), {210, 297}).mounted);
    CHECK(fitting(holder_for({214.5, 301}), {210, 297}).mounted);
}

TEST_CASE("Turning the frame a quarter costs nothing, and only what may turn is turned") {
    Holder holder = holder_for({400, 300});
    const Fitting upright = fitting(holder, {210, 297});
    CHECK(upright.turned);
    CHECK(upright.cost() == 650);
    holder.may_turn = false;
    CHECK_FALSE(best_fitting(holder, print_of({210, 310})));
    holder.turned = true;
    CHECK(fitting(holder, {210, 297}) == upright);
}

TEST_CASE("A square frame is not turned for nothing") {
    Holder holder = holder_for({300, 300});
    CHECK_FALSE(fitting(holder, {200, 200}).turned);
    holder.turned = true;
    CHECK(fitting(holder, {200, 200}).turned);
}

TEST_CASE("Where a window was placed by hand does not count for another print") {
    Holder holder = holder_for({300, 400});
    holder.mount.by_hand = wall::FromCorner{10, 90};
    CHECK(fitting(holder, {210, 297}).cost() == 650);
}

TEST_CASE(
    "A floating print keeps its edges, so nothing is cropped and its borders are the card's") {
    Holder holder = holder_for({300, 400});
    holder.mount.floats = true;
    const Fitting found = fitting(holder, {210, 297});
    CHECK(found.seen.left == Approx(40));
    CHECK(found.of(Flaw::crop).cost == 0);
    CHECK(found.cost() == 650);
}

TEST_CASE("Turning print and frame together changes no charge") {
    rc::prop("for any print and frame", [] {
        const auto length = [](int low, int high) {
            return *rc::gen::inRange(10 * low, 10 * high) / 10.0;
        };
        const Size blank{length(100, 600), length(100, 600)};
        const Size size{length(50, 600), length(50, 600)};
        const auto one = best_fitting(holder_for(blank), print_of(size));
        const auto other = best_fitting(holder_for(blank.turned()), print_of(size.turned()));
        RC_ASSERT(one.has_value() == other.has_value());
        if (one)
            RC_ASSERT(one->cost() == other->cost());
    });
}

}  // namespace wallwright::mounts
