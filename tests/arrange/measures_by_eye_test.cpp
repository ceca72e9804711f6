// Measures that an eye judges.
#include "arrange/hand_laid.h"
#include "wall/lab.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::hand_laid;

namespace {

const std::vector<Size> kFourAlike(4, Size{300, 400});
const std::vector<Size> kSixMixed{{300, 400}, {250, 300}, {420, 520},
                                  {350, 350}, {200, 260}, {310, 410}};

Layout scattered(const Task& task) {
    return at(task,
              {{300, 900}, {900, 1700}, {1500, 1100}, {2300, 1900}, {2700, 800}, {3300, 1500}});
}

wall::Colour colour(std::uint8_t red, std::uint8_t green, std::uint8_t blue) {
    return {red, green, blue};
}

}  // namespace

TEST_CASE("A grid wastes nothing, a row of mixed heights a little, scattered pieces nearly all") {
    const Task alike = task_of(kFourAlike);
    CHECK(value("compactness", alike, grid(alike, 2)) == Approx(1));
    const Task mixed = task_of(kSixMixed);
    const double in_a_row = value("compactness", mixed, row(mixed));
    CHECK(in_a_row > 0.6);
    CHECK(in_a_row < 0.95);
    CHECK(value("compactness", mixed, scattered(mixed)) < 0.3);
}

TEST_CASE("Compactness is the share of the grown bounds that grown pieces cover") {
    // Grown by the gap: 360 x 460 and 260 x 360 in 620 x 460.
    const Task task = task_of({{300, 400}, {200, 300}});
    CHECK(value("compactness", task, row(task)) ==
          Approx((360.0 * 460 + 260.0 * 360) / (620.0 * 460)));
    CHECK(says("compactness", task, row(task)) ==
          "Within 560 by 400 mm, 9 % is bare beyond the gaps.");
}

TEST_CASE(
    "The outline of a grid is calm, that of a row of mixed heights nearly, scattered it is not") {
    const Task alike = task_of(kFourAlike);
    CHECK(value("ragged_edge", alike, grid(alike, 2)) == Approx(1));
    const Task mixed = task_of(kSixMixed);
    CHECK(value("ragged_edge", mixed, row(mixed)) > 0.7);
    CHECK(value("ragged_edge", mixed, row(mixed)) < 1);
    CHECK(value("ragged_edge", mixed, scattered(mixed)) < 0.4);
}

TEST_CASE("How far the outline steps in is exact") {
    // Level at the bottom: the second is 100 mm lower over 260 of 620 mm at the top, and from the
    // right the uppermost 70 of 460 mm (the gap's half goes with the lower one) see the first,
    // 260 mm farther in.
    const Task task = task_of({{300, 400}, {200, 300}});
    const Layout layout = at(task, {{1000, 1300}, {1360, 1300}});
    const double at_top = 100.0 * 260 / 620;
    const double at_right = 260.0 * 100 / 460;
    CHECK(says("ragged_edge", task, layout) ==
          "The outline steps in by " + units::format_length(at_top / 2, units::LengthUnit::mm) +
              " on average at top and bottom, " +
              units::format_length(at_right / 2, units::LengthUnit::mm) + " at the sides.");
    const double ratio = (at_top / 2 / 400 + at_right / 2 / 560) / 2 / 0.25;
    CHECK(value("ragged_edge", task, layout) == Approx(1 / (1 + ratio * ratio)));
}

TEST_CASE("Symmetric layouts are balanced, a large piece at one end is not") {
    const Task mirror = task_of({{300, 400}, {500, 600}, {300, 400}});
    CHECK(value("balance", mirror, row(mirror)) == Approx(1));
    CHECK(value("equilibrium", mirror, row(mirror)) == Approx(1));
    CHECK(says("equilibrium", mirror, row(mirror)) ==
          "The centre of all areas is in the group's middle.");
    const Task heavy_left = task_of({{600, 800}, {200, 250}, {200, 250}});
    CHECK(value("balance", heavy_left, row(heavy_left)) < 0.8);
    CHECK(value("equilibrium", heavy_left, row(heavy_left)) < 0.9);
    CHECK(says("equilibrium", heavy_left, row(heavy_left)).find("left of") != std::string::npos);
    CHECK(says("balance", mirror, row(mirror)) ==
          "To the eye 50 % weighs left and 50 % right, 50 % above and 50 % below.");
}

TEST_CASE("Like sizes side by side count only where they could be mixed") {
    const Task alike = task_of(kFourAlike);
    CHECK(value("unlike_neighbours", alike, row(alike)) == 1);
    CHECK(says("unlike_neighbours", alike, row(alike)) == "All pieces are of one size.");
    const Size large{400, 500};
    const Size small{200, 250};
    const Task clumped = task_of({large, large, large, small, small, small});
    const Task mixed = task_of({large, small, large, small, large, small});
    CHECK(value("unlike_neighbours", mixed, row(mixed)) == 1);
    CHECK(value("unlike_neighbours", clumped, row(clumped)) < 0.6);
    CHECK(says("unlike_neighbours", clumped, row(clumped)) ==
          "4 of 5 pairs of neighbours are much alike in size.");
}

TEST_CASE("An upright and a level frame of one size are not alike") {
    const Task task = task_of({{300, 400}, {400, 300}, {900, 200}});
    CHECK(value("unlike_neighbours", task, row(task)) == 1);
}

TEST_CASE("Like colours side by side count only where they could be mixed") {
    Task task = task_of(kFourAlike);
    CHECK(value("colours", task, row(task)) == 1);
    const wall::Colour oak = colour(0xB0, 0x84, 0x50);
    const wall::Colour black = colour(0x20, 0x20, 0x20);
    for (std::size_t i = 0; i < 4; ++i)
        task.items[i].frame = i % 2 == 0 ? oak : black;
    const double mixed = value("colours", task, row(task));
    CHECK(mixed == 1);
    for (std::size_t i = 0; i < 4; ++i)
        task.items[i].frame = i < 2 ? oak : black;
    CHECK(value("colours", task, row(task)) < mixed);
    CHECK(says("colours", task, row(task)) ==
          "Of 3 pairs of neighbours, 2 are much alike in the frame's colour and 3 in the "
          "picture's.");
}

TEST_CASE("Colours have the L*a*b* that tables give for sRGB under D65") {
    // White, black and the primaries as usually tabulated; from memory.
    const auto is = [](wall::Colour asked, double lightness, double a, double b) {
        const wall::Lab lab = wall::lab_of(asked);
        CHECK(lab.lightness == Approx(lightness).margin(0.02));
        CHECK(lab.a == Approx(a).margin(0.03));
        CHECK(lab.b == Approx(b).margin(0.03));
    };
    is(colour(255, 255, 255), 100, 0, 0);
    is(colour(0, 0, 0), 0, 0, 0);
    is(colour(255, 0, 0), 53.24, 80.09, 67.20);
    is(colour(0, 255, 0), 87.73, -86.18, 83.18);
    is(colour(0, 0, 255), 32.30, 79.19, -107.86);
}
