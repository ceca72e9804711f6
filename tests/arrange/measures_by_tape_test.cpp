// Measures that a tape can verify.
#include "arrange/hand_laid.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::hand_laid;

namespace {

const std::vector<Size> kFourAlike(4, Size{300, 400});
const std::vector<Size> kThree{{300, 400}, {300, 400}, {300, 400}};

}  // namespace

TEST_CASE("Gaps that are all as wanted have the full value, and the sentence counts them") {
    const Task task = task_of(kFourAlike);
    CHECK(value("even_gaps", task, grid(task, 2)) == 1);
    CHECK(says("even_gaps", task, grid(task, 2)) == "All 4 gaps are 60 mm.");
    CHECK(value("even_gaps", task, row(task)) == 1);
}

TEST_CASE("A gap counts less the more it is off, and at once") {
    const Task task = task_of(kThree);
    double before = 1;
    for (const double off : {2.0, 6.0, 15.0, 40.0}) {
        Layout layout = row(task);
        layout[2].place = layout[2].place.moved({off, 0});
        const double now = value("even_gaps", task, layout);
        CHECK(now < before);
        before = now;
    }
    Layout layout = row(task);
    layout[2].place = layout[2].place.moved({0.9, 0});
    CHECK(value("even_gaps", task, layout) == 1);
    layout[2].place = layout[2].place.moved({6.1, 0});
    CHECK(value("even_gaps", task, layout) == Approx(0.75 * 0.75));
    CHECK(says("even_gaps", task, layout) == "1 of 2 gaps is 60 mm; the other 67 mm.");
    layout[0].place = layout[0].place.moved({-20, 0});
    CHECK(says("even_gaps", task, layout) == "None of 2 gaps is 60 mm; they are 67 to 80 mm.");
}

TEST_CASE("Pieces too far apart to face each other have no even gaps") {
    const Task task = task_of({{300, 400}, {300, 400}});
    const Layout layout = at(task, {{500, 1300}, {1500, 1300}});
    CHECK(value("even_gaps", task, layout) == 0);
    CHECK(says("even_gaps", task, layout) == "No two pieces face each other within 120 mm.");
    const Task alone = task_of({{300, 400}});
    CHECK(value("even_gaps", alone, row(alone)) == 1);
}

TEST_CASE("Corners nearer than the gap count as gaps that are off") {
    const Task task = task_of(kThree);
    const Layout corner = at(task, {{1000, 1300}, {1360, 1300}, {1680, 1720}});
    const Layout clear = at(task, {{1000, 1300}, {1360, 1300}, {1680, 1760}});
    CHECK(value("even_gaps", task, corner) < value("even_gaps", task, row(task)));
    CHECK(says("even_gaps", task, corner) ==
          "The gap is 60 mm; the corners of 1 pair are nearer than that.");
    CHECK(says("even_gaps", task, clear) == "The gap is 60 mm.");
}

TEST_CASE("Pieces far above or below the middle that is wanted are not at eye level") {
    const Task task = task_of(kThree);
    CHECK(value("eye_level", task, row(task)) == 1);
    CHECK(says("eye_level", task, row(task)) == "Every piece is easy to look at.");
    // Middles at 580, 1500 and 2420: 920 off, 470 past the 450 that is easy, of 700.
    const Layout tower = at(task, {{1000, 380}, {1000, 1300}, {1000, 2220}});
    CHECK(value("eye_level", task, tower) == Approx((1 + 2 * (1 - 470.0 / 700)) / 3));
    CHECK(says("eye_level", task, tower) == "2 pieces are to look up or down at, by up to 920 mm.");
}

TEST_CASE("A bare place between pieces is a hole, however even the gaps are beside it") {
    const Task task = task_of(kThree);
    const Layout holed = at(task, {{1000, 1000}, {1000, 1600}, {1360, 1300}});
    CHECK(value("even_gaps", task, holed) == 1);
    // 300 wide and 140 high beyond the gap, of three times 300 by 400, where 0.4 is the most.
    CHECK(value("holes", task, holed) == Approx(1 - 300.0 * 140 / (3 * 300 * 400) / 0.15));
    CHECK(value("holes", task, row(task)) == 1);
    CHECK(says("holes", task, holed) == "1 hole of 200 mm between pieces that look at each other.");
}

TEST_CASE("A row on one line is aligned, rows about a spine nearly, a staircase is not") {
    const Task task =
        task_of({{300, 400}, {250, 300}, {420, 520}, {350, 350}, {200, 260}, {310, 410}});
    CHECK(value("alignment", task, row(task)) == 1);
    CHECK(says("alignment", task, row(task)) ==
          "All 6 pieces are in line with a neighbour, on 1 line of edges or middles.");
    const double about_spine = value("alignment", task, spine(task, 3));
    CHECK(about_spine >= 0.75);
    CHECK(about_spine < 1);
    Layout stairs = row(task);
    for (std::size_t i = 0; i < stairs.size(); ++i)
        stairs[i].place = stairs[i].place.moved({0, 33.0 * static_cast<double>(i)});
    CHECK(value("alignment", task, stairs) == 0);
    CHECK(says("alignment", task, stairs) == "No piece is in line with a neighbour.");
}

TEST_CASE("In a grid every piece is in line both ways") {
    const Task task = task_of(kFourAlike);
    CHECK(value("alignment", task, grid(task, 2)) == 1);
    // Two rows and two columns, each with two edges and a middle.
    CHECK(says("alignment", task, grid(task, 2)) ==
          "All 4 pieces are in line with a neighbour, on 12 lines of edges or middles.");
}

TEST_CASE("The group's middle belongs on the centre line") {
    const Task task = task_of(kFourAlike);
    const Layout right = grid(task, 2);
    CHECK(value("centre_height", task, right) == 1);
    CHECK(says("centre_height", task, right) == "The group's middle is at the wanted 1500 mm.");
    CHECK(value("centre_height", task, moved(right, 0, 51)) == Approx(0.8));
    CHECK(value("centre_height", task, moved(right, 0, -51)) == Approx(0.8));
    CHECK(value("centre_height", task, moved(right, 0, 301)) == Approx(0).margin(1e-9));
    CHECK(says("centre_height", task, moved(right, 0, -20)) ==
          "The group's middle is 1480 mm above the floor, 20 mm under the wanted 1500 mm.");
}

TEST_CASE(
    "Clearance leads: a low group goes down for it at no cost, a tall one up at half the cost") {
    const Task tall = over_sofa(std::vector<Size>(4, Size{400, 700}));
    const Layout low = grid(tall, 2);  // 1460 high: its lowest edge 30 mm under the sofa's top.
    const Layout lifted = moved(low, 0, 180);
    const double at_90_off = value("centre_height", tall, lifted);
    CHECK(at_90_off == Approx(0.8 * (1 - 39.0 / 250)));  // Half of 180, less the 1 mm of a tape.
    CHECK(at_90_off > value("centre_height", tall, moved(lifted, 0, 30)));
    CHECK(at_90_off > value("centre_height", tall, moved(lifted, 0, -30)));
    CHECK(value("clearance", tall, lifted) == 1);
    CHECK(says("centre_height", tall, lifted) ==
          "The group's middle is at the 1680 mm that the clearance leaves.");
    const Task small = over_sofa(kFourAlike);
    const Layout high = row(small);
    const Layout lowered = moved(high, 0, -(1300 - 800 - 255));
    CHECK(value("centre_height", small, high) < 0.5);
    CHECK(value("centre_height", small, lowered) == 1);
    CHECK(value("clearance", small, lowered) == 1);
}

TEST_CASE("Clearance above the furniture falls on both sides of what is usual") {
    const Task task = over_sofa(kFourAlike);
    const Layout on_sofa = moved(row(task), 0, -500);
    CHECK(value("clearance", task, moved(on_sofa, 0, 75)) == Approx(0.5));
    CHECK(value("clearance", task, moved(on_sofa, 0, 150)) == 1);
    CHECK(value("clearance", task, moved(on_sofa, 0, 255)) == 1);
    CHECK(value("clearance", task, moved(on_sofa, 0, 510)) == Approx(0.5));
    CHECK(says("clearance", task, moved(on_sofa, 0, 200)) ==
          "The lowest edge over the sofa is 200 mm above it; 150 to 255 mm is usual.");
    const Layout beside = moved(on_sofa, -1600, 0);
    CHECK(value("clearance", task, beside) == 1);
    CHECK(says("clearance", task, beside) == "The group does not hang above the sofa.");
    CHECK(says("clearance", task_of(kFourAlike), on_sofa) ==
          "There is no furniture to hang above.");
}

TEST_CASE("A group is to take 60 to 75 percent of the furniture's width") {
    const auto of_width = [](double width) {
        const Task task = over_sofa({{width, 300}});
        return value("width_to_furniture", task, row(task));
    };
    CHECK(of_width(1200) == 1);
    CHECK(of_width(1500) == 1);
    CHECK(of_width(840) == Approx(0.5));
    CHECK(of_width(480) == Approx(0).margin(1e-9));
    CHECK(of_width(2000) < of_width(1700));
    CHECK(of_width(2000) > 0.5);
    CHECK(of_width(2700) == 0);
    const Task task = over_sofa({{1400, 300}});
    CHECK(says("width_to_furniture", task, row(task)) ==
          "The group is 1400 mm wide, 70 % of the sofa; 1200 to 1500 mm is usual.");
}

TEST_CASE("A group belongs over the middle of the furniture, or else in the middle of the wall") {
    const Task task = over_sofa(kThree);
    CHECK(value("centred", task, row(task)) == 1);
    CHECK(value("centred", task, moved(row(task), 501, 0)) == Approx(0.5));
    CHECK(value("centred", task, moved(row(task), -501, 0)) == Approx(0.5));
    CHECK(says("centred", task, moved(row(task), -20, 0)) ==
          "The group's middle is 20 mm left of the middle of the sofa.");
    const Task bare = task_of(kThree);
    CHECK(value("centred", bare, moved(row(bare), 501, 0)) == Approx(0.75));
    CHECK(says("centred", bare, row(bare)) ==
          "The group's middle is in line with that of the wall.");
}

TEST_CASE("Pieces that fall apart into groups count as many times less") {
    const Task task = task_of(kThree);
    CHECK(value("together", task, row(task)) == 1);
    const Layout two = at(task, {{100, 1300}, {460, 1300}, {2000, 1300}});
    CHECK(value("together", task, two) == 0.5);
    CHECK(says("together", task, two) == "The pieces are 2 groups, more than 120 mm apart.");
}
