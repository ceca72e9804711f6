// What climbs with a stair.
#include "arrange/arrange.h"
#include "arrange/pattern.h"
#include "arrange/settle.h"
#include "arrange/spots.h"
#include "arrange/view.h"
#include "hand_laid.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <vector>

using namespace wallwright;
using namespace wallwright::arrange;

namespace {

constexpr double kRiser = 180;
constexpr double kTread = 250;

/// Eleven steps up to the right, from 1100 mm on, between a floor and a landing, with room over all
/// of it, and frames of two sizes to hang there.
wall::Project stairwell(std::size_t pieces) {
    wall::Project project = scenes::wall_of(4750, 5200);
    std::vector<WallPoint> corners{{0, 0}};
    for (int step = 0; step < 11; ++step) {
        corners.push_back({1100 + kTread * step, kRiser * step});
        corners.push_back({1100 + kTread * step, kRiser * (step + 1)});
    }
    corners.insert(corners.end(), {{4750, 11 * kRiser}, {4750, 5200}, {0, 5200}});
    project.room.outline.corners = corners;
    for (std::size_t i = 0; i < pieces; ++i)
        scenes::add_waiting(project, "p" + std::to_string(i),
                            i % 2 == 0 ? geometry::Size{300, 400} : geometry::Size{400, 300});
    return project;
}

Task task_on_stair(std::size_t pieces) {
    return task_of(stairwell(pieces), {}, Free::all_unfixed);
}

std::vector<double> middles_above_floor(const Task& task, const Layout& layout) {
    std::vector<double> middles;
    for (const Spot& spot : layout)
        middles.push_back(geometry::above(task.floor, spot.place).centre().y);
    return middles;
}

}  // namespace

TEST_CASE("On a stair a row climbs with it at the centre height, the gap apart") {
    const Task task = task_on_stair(5);
    const Plan row{Pattern::row, RowLine::centre, {{0, 1, 2, 3, 4}}, true};
    const std::optional<Layout> hung = settle(task, *lay_out(task, row));
    REQUIRE(hung);
    for (const double middle : middles_above_floor(task, *hung))
        CHECK(middle == Approx(1500).margin(1));
    for (std::size_t i = 1; i < hung->size(); ++i)
        CHECK((*hung)[i].place.left() - (*hung)[i - 1].place.right() == Approx(60));
    CHECK(hand_laid::value("alignment", task, *hung) == 1);
    CHECK(hand_laid::value("centre_height", task, *hung) == 1);
    CHECK(hand_laid::value("ragged_edge", task, *hung) > 0.9);
    CHECK(hand_laid::says("centre_height", task, *hung) ==
          "The group's middle is at the wanted 1500 mm.");
}

TEST_CASE("A level row on a stair is out of line with it") {
    const Task task = task_on_stair(3);
    const Layout level = hand_laid::at(task, {{1600, 2200}, {1960, 2250}, {2420, 2200}});
    CHECK(hand_laid::value("ragged_edge", task, level) < 0.7);
    CHECK(hand_laid::value("alignment", task, level) == 1);
}

TEST_CASE("Columns climb each as a whole and keep the gap to each other") {
    const Task task = task_on_stair(6);
    const Plan columns{Pattern::columns, RowLine::centre, {{0, 1}, {2, 3}, {4, 5}}, true};
    const std::optional<Layout> block = lay_out(task, columns);
    REQUIRE(block);
    CHECK(bounds_of(*block).min.x == Approx(0).margin(1e-9));
    CHECK(bounds_of(*block).min.y == Approx(0).margin(1e-9));
    std::vector<WallPoint> middles;
    for (std::size_t i = 0; i < 6; i += 2) {
        const Layout column((*block).begin() + static_cast<std::ptrdiff_t>(i),
                            (*block).begin() + static_cast<std::ptrdiff_t>(i) + 2);
        middles.push_back(bounds_of(column).centre());
        CHECK(column[0].place.bottom() - column[1].place.top() == Approx(60));
    }
    for (std::size_t i = 1; i < middles.size(); ++i) {
        CHECK((middles[i].y - middles[i - 1].y) / (middles[i].x - middles[i - 1].x) ==
              Approx(kRiser / kTread).margin(0.003));
        CHECK(middles[i].x - middles[i - 1].x == Approx(460));
    }
}

TEST_CASE("What waits goes on up the stair from what hangs") {
    wall::Project project = stairwell(5);
    const Task bare = task_of(project, {}, Free::all_unfixed);
    for (std::size_t i = 0; i < 2; ++i) {
        wall::Piece& piece = project.pieces[i];
        const double middle = 1700 + 410.0 * static_cast<double>(i);
        const geometry::Size size = bare.items[i].size;
        piece.state = wall::PieceState::hung;
        piece.at = {middle - size.width / 2, bare.floor.at(middle) + 1500 - size.height / 2};
    }
    const Task task = task_of(project, {}, Free::all_unfixed);
    const Plan row{Pattern::row, RowLine::centre, {{2, 3, 4}}, true};
    const std::optional<Layout> hung = settle(task, *lay_out(task, row));
    REQUIRE(hung);
    for (const double middle : middles_above_floor(task, *hung))
        CHECK(middle == Approx(1500).margin(1));

    std::vector<WallRect> spots;
    touching_spots(task, fixed_part(task), 2, spots);
    CHECK(std::ranges::any_of(spots, [&](const WallRect& place) {
        return place.left() == Approx(2110 + 200 + 60) &&
               geometry::above(task.floor, place).centre().y == Approx(1500).margin(1);
    }));
}

TEST_CASE("Of the layouts for a stair one is a row that climbs it, and no good one is a tower") {
    const Task task = task_on_stair(6);
    ArrangeOptions options;
    options.rounds = 3;
    options.seconds = 60;
    const std::vector<Candidate> found =
        arrange::arrange(task, options, [](const Progress&) { return true; });
    REQUIRE(found.size() >= 5);
    const auto row = std::ranges::find(found, Pattern::row, &Candidate::pattern);
    REQUIRE(row != found.end());
    CHECK(row->score.total > found.front().score.total - 2);
    for (const double middle : middles_above_floor(task, row->layout))
        CHECK(middle == Approx(1500).margin(1));
    for (const double middle : middles_above_floor(task, found.front().layout))
        CHECK(middle == Approx(1500).margin(700));
}

TEST_CASE("Beside a short flight a row over the sofa stays level") {
    wall::Project project = scenes::wall_of(6000, 3300);
    std::vector<WallPoint> corners{{0, 0}};
    for (int step = 0; step < 4; ++step) {
        corners.push_back({5000 + kTread * step, kRiser * step});
        corners.push_back({5000 + kTread * step, kRiser * (step + 1)});
    }
    corners.insert(corners.end(), {{6000, 4 * kRiser}, {6000, 3300}, {0, 3300}});
    project.room.outline.corners = corners;
    scenes::add_furniture(project, wall::FurnitureType::sofa, WallRect::at({1500, 0}, {2000, 800}));
    for (int i = 0; i < 3; ++i)
        scenes::add_waiting(project, "p" + std::to_string(i), {400, 500});
    const Task task = task_of(project, {}, Free::all_unfixed);
    ArrangeOptions options;
    options.rounds = 1;
    options.seconds = 60;
    options.pattern = Pattern::row;
    const std::vector<Candidate> found =
        arrange::arrange(task, options, [](const Progress&) { return true; });
    REQUIRE_FALSE(found.empty());
    CHECK(bounds_of(found.front().layout).height() == Approx(500));
    CHECK(bounds_of(found.front().layout).centre().x == Approx(2500));
}

TEST_CASE("A group is judged by the furniture that it hangs above") {
    wall::Project project = scenes::wall_of(8000, 2600);
    scenes::add_furniture(project, wall::FurnitureType::sofa, WallRect::at({500, 0}, {2000, 800}));
    scenes::add_furniture(project, wall::FurnitureType::sideboard,
                          WallRect::at({5000, 0}, {1500, 900}));
    scenes::add_waiting(project, "print", {1000, 600});
    const Task task = task_of(project, {}, Free::all_unfixed);
    REQUIRE(task.furniture.size() == 2);
    const Layout above_sideboard = {{0, WallRect::at({5250, 1100}, {1000, 600})}};
    CHECK(View(task, above_sideboard).beneath() == &task.furniture[1]);
    CHECK(hand_laid::says("centred", task, above_sideboard) ==
          "The group's middle is in line with that of the sideboard.");
    const Layout above_sofa = {{0, WallRect::at({1000, 1000}, {1000, 600})}};
    CHECK(View(task, above_sofa).beneath() == &task.furniture[0]);
    CHECK(hand_laid::says("clearance", task, above_sofa) ==
          "The lowest edge over the sofa is 200 mm above it; 150 to 255 mm is usual.");
    const Layout beside = {{0, WallRect::at({3000, 1000}, {1000, 600})}};
    CHECK(View(task, beside).beneath() == &*task.beneath);
    project.pieces[0].state = wall::PieceState::hung;
    project.pieces[0].at = {500, 1000};
    scenes::add_waiting(project, "other", {1000, 600});
    const Task by_another = task_of(project, {}, Free::all_unfixed);
    const Layout in_its_part = {{1, WallRect::at({3000, 1000}, {1000, 600})}};
    CHECK(View(by_another, in_its_part).beneath() == nullptr);
    CHECK(hand_laid::says("centred", by_another, in_its_part) ==
          "The group's middle is 500 mm left of the middle of the free wall about it.");
}
