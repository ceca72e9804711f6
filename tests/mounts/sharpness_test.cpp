#include "mounts/sharpness.h"

#include <catch2/catch.hpp>

#include <cmath>

namespace wallwright::mounts {

namespace {

using geometry::Size;
using units::kMmPerInch;
using units::LengthUnit;

wall::Print photograph(Size size, int width, int height) {
    wall::Print print;
    print.id = {"kelp"};
    print.title = "Kelp";
    print.size = size;
    print.pixels = wall::PixelSize{width, height};
    return print;
}

}  // namespace

// pixelcraft.photo.blog: one minute of arc is 0.000290888 rad, and 3438 over the distance in inches
// is what the eye resolves; at 24 in 143 pixels per inch, 0.177 mm each.
TEST_CASE("From 24 in an eye resolves 143 pixels per inch") {
    CHECK(kArcMinute == Approx(0.000290888).epsilon(1e-6));
    CHECK(pixels_resolved(kMmPerInch) == Approx(3438).margin(0.5));
    const double resolved = pixels_resolved(24 * kMmPerInch);
    CHECK(resolved == Approx(143).margin(0.5));
    CHECK(kMmPerInch / resolved == Approx(0.177).margin(0.0005));
}

// The same page: 300 pixels per inch are not resolved beyond 11.46 in.
TEST_CASE("300 pixels per inch are not told apart beyond 11.46 in") {
    CHECK(distance_resolved(300) == Approx(11.46 * kMmPerInch).margin(0.1));
}

// NCERT Exemplar Problems, Physics, class XI, "Units and Measurements": an eye that resolves
// 5.8e-4 rad sees 300 dots per inch as one from 14.5 cm; the book rounds 2.54 / 300 down to 0.0084
// cm, without which it is 14.6 cm.
TEST_CASE("An eye of 5.8e-4 rad sees 300 dots per inch as one from 14.6 cm") {
    CHECK(distance_resolved(300, 5.8e-4) == Approx(146).margin(0.05));
    CHECK(distance_resolved(2.54 / 0.0084, 5.8e-4) == Approx(145).margin(0.5));
}

// The rule of 3438 above in metric distances, worked out apart from this program.
TEST_CASE("What an eye resolves falls with the distance") {
    CHECK(pixels_resolved(250) == Approx(349).margin(0.5));
    CHECK(pixels_resolved(500) == Approx(175).margin(0.5));
    CHECK(pixels_resolved(1000) == Approx(87).margin(0.5));
    CHECK(pixels_resolved(1500) == Approx(58).margin(0.5));
    CHECK(pixels_resolved(2000) == Approx(44).margin(0.5));
}

// A photographers' question-and-answer page gives 1.5 to 2 times the diagonal; common practice.
TEST_CASE("A picture of 300 x 400 mm is looked at from 750 mm") {
    CHECK(usual_viewing_distance({300, 400}) == Approx(750));
}

TEST_CASE("Pixels per inch are counted along the direction that fills the paper with fewest") {
    CHECK(pixels_per_inch({3000, 2000}, {254, 254 * 2.0 / 3}) == Approx(300));
    CHECK(pixels_per_inch({3000, 2000}, {254 * 2.0 / 3, 254}) == Approx(300));
    // Of a 3 : 2 picture on square paper of 10 in only 2000 pixels are used either way.
    CHECK(pixels_per_inch({3000, 2000}, {254, 254}) == Approx(200));
}

TEST_CASE("A print without known pixels is not judged") {
    CHECK_FALSE(sharpness_of(wall::Print{}, LengthUnit::mm));
}

TEST_CASE(
    "A photograph of few pixels looks soft, and the sentence says up to which size it would not") {
    // 600 pixels on 400 mm are 38.1 per inch; from 1000 mm 87.3 are resolved.
    const auto seen = sharpness_of(photograph({600, 400}, 900, 600), LengthUnit::mm, 1000);
    REQUIRE(seen);
    CHECK(seen->soft);
    CHECK(seen->pixels_per_inch == Approx(38.1));
    CHECK(seen->sharp.width == Approx(600 * 38.1 / seen->resolved));
    CHECK(seen->text ==
          "Kelp has 38 pixels per inch, and from 1000 mm an eye resolves 87: it will look soft; "
          "print it at 261 x 174 mm at most, or look at it from 2292 mm or farther.");
}

TEST_CASE("Printed at the largest sharp size a photograph is just sharp from the same distance") {
    const wall::Print large = photograph({600, 400}, 900, 600);
    const auto before = sharpness_of(large, LengthUnit::mm, 1000);
    REQUIRE(before);
    wall::Print smaller = large;
    smaller.size = {before->sharp.width * 0.999, before->sharp.height * 0.999};
    CHECK_FALSE(sharpness_of(smaller, LengthUnit::mm, 1000)->soft);
    smaller.size = {before->sharp.width * 1.001, before->sharp.height * 1.001};
    CHECK(sharpness_of(smaller, LengthUnit::mm, 1000)->soft);
}

TEST_CASE("From the usual distance a photograph of twelve megapixels looks sharp") {
    const auto seen = sharpness_of(photograph({600, 400}, 4243, 2828), LengthUnit::cm);
    REQUIRE(seen);
    CHECK_FALSE(seen->soft);
    CHECK(seen->distance == Approx(1.5 * std::hypot(600, 400)));
    CHECK(
        seen->text ==
        "Kelp has 180 pixels per inch, and from 108.2 cm an eye resolves 81: it will look sharp.");
}

}  // namespace wallwright::mounts
