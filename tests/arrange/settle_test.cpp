#include "arrange/settle.h"

#include "random_task.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>
#include <limits>

using namespace wallwright;
using namespace wallwright::arrange;
using test::add_fixed;
using test::add_item;

namespace {

Layout one_piece(Task& task, geometry::Size size) {
    const std::uint32_t item = add_item(task, size);
    return {{item, WallRect::at({0, 0}, size)}};
}

WallRect settled(const Task& task, const Layout& block) {
    const std::optional<Layout> there = settle(task, block);
    REQUIRE(there);
    return there->back().place;
}

Beneath sofa(double left, double right) {
    return {"Sofa", {{left, 0}, {right, 850}}, 150, 255, 0.6, 0.75};
}

Layout moved(const Layout& block, WallVec by) {
    Layout there = block;
    for (Spot& spot : there)
        spot.place = spot.place.moved(by);
    return there;
}

Layout with_fixed(const Task& task, const Layout& block) {
    Layout layout = fixed_part(task);
    layout.insert(layout.end(), block.begin(), block.end());
    return layout;
}

/// The least distance from the wanted centre at which the block may hang, of those on a raster.
double nearest_on_a_raster(const Task& task, const Layout& block) {
    constexpr double kStep = 20;
    const WallRect bounds = bounds_of(block);
    const WallPoint wanted = wanted_centre(task, bounds.height());
    double nearest = std::numeric_limits<double>::infinity();
    for (double x = 0; x <= task.wall.width(); x += kStep)
        for (double y = 0; y <= task.wall.height(); y += kStep) {
            const WallPoint centre{x, y};
            const double distance = geometry::distance(centre, wanted);
            if (distance < nearest &&
                is_allowed(task, with_fixed(task, moved(block, centre - bounds.centre()))))
                nearest = distance;
        }
    return nearest;
}

}  // namespace

TEST_CASE("A group hangs about the middle of a bare wall at the centre height") {
    Task task = test::wall_task({4000, 2500});
    const Layout block = one_piece(task, {600, 400});
    CHECK(settled(task, block) == WallRect::at({1700, 1300}, {600, 400}));
}

TEST_CASE(
    "Over furniture a group hangs about its middle, as near to the line as the clearance lets it") {
    Task task = test::wall_task({4000, 2500});
    task.beneath = sofa(500, 2500);
    CHECK(wanted_centre(task, 900) == WallPoint{1500, 1500});
    CHECK(wanted_centre(task, 1200) == WallPoint{1500, 850 + 150 + 600});
    CHECK(wanted_centre(task, 300) == WallPoint{1500, 850 + task.beneath->clearance_most + 150});
}

TEST_CASE("A group that is too high for the clearance stays under the ceiling") {
    Task task = test::wall_task({4000, 2300});
    task.beneath = sofa(500, 2500);
    CHECK(wanted_centre(task, 1400) == WallPoint{1500, 2300 - 60 - 700});
}

TEST_CASE("Before a window a group moves to the nearer side, just clear of it") {
    Task task = test::wall_task({4000, 2500});
    task.keep_out.push_back({{1600, 500}, {2500, 2300}});
    const Layout block = one_piece(task, {600, 400});
    CHECK(settled(task, block) == WallRect::at({1000, 1300}, {600, 400}));
}

TEST_CASE("A group goes into the corner between two things when that is nearest") {
    Task task = test::wall_task({4000, 2500});
    task.keep_out.push_back({{1800, 0}, {4000, 2500}});
    task.keep_out.push_back({{0, 0}, {4000, 1400}});
    const Layout block = one_piece(task, {600, 400});
    CHECK(settled(task, block) == WallRect::at({1200, 1400}, {600, 400}));
}

TEST_CASE("A piece whose fixing would be in a cable zone moves until it is not") {
    Task task = test::wall_task({4000, 2500});
    task.zones.push_back({{1950, 0}, {2100, 2500}});
    const Layout block = one_piece(task, {600, 400});
    task.items[0].pierces.push_back({{300, 350}, {300, 350}});
    const WallRect place = settled(task, block);
    CHECK(place.left() == Approx(1650).margin(0.01));
    CHECK(place.left() < 1650);
    CHECK(place.bottom() == Approx(1300));
}

TEST_CASE("A piece that is not to hang over a thing moves off it") {
    Task task = test::wall_task({4000, 2500});
    const Layout block = one_piece(task, {600, 400});
    task.items[0].not_over.push_back({1500, 2200});
    CHECK(settled(task, block).left() == Approx(2200));
}

TEST_CASE("What has no room on the wall does not settle") {
    Task task = test::wall_task({1000, 1000});
    CHECK_FALSE(settle(task, one_piece(task, {1100, 200})));
    task.keep_out.push_back({{400, 0}, {600, 1000}});
    CHECK_FALSE(settle(task, one_piece(task, {450, 200})));
}

TEST_CASE("A block settles as near to its wanted place as the wall allows") {
    rc::prop("no place on a raster is nearer", [](std::uint64_t seed) {
        Random random(seed);
        Task task = test::wall_task({3000, 2400});
        for (std::uint64_t i = random.below(5); i > 0; --i)
            task.keep_out.push_back(
                WallRect::at({random.uniform(0, 2600), random.uniform(0, 2000)},
                             {random.uniform(100, 900), random.uniform(100, 900)}));
        Layout block = one_piece(task, {random.uniform(200, 900), random.uniform(200, 500)});
        const std::uint32_t second = add_item(task, {random.uniform(200, 500), 300});
        block.push_back(
            {second, WallRect::at({random.uniform(0, 300), 600}, task.items[second].size)});
        const double nearest = nearest_on_a_raster(task, block);
        const std::optional<Layout> there = settle(task, block);
        RC_ASSERT(there.has_value() || !std::isfinite(nearest));
        if (!there)
            return;
        RC_ASSERT(is_allowed(task, *there));
        const WallRect bounds = bounds_of(*there);
        RC_ASSERT(geometry::distance(bounds.centre(), wanted_centre(task, bounds.height())) <=
                  nearest + 1e-6);
        const WallVec by = there->front().place.min - block.front().place.min;
        const Layout as_one = moved(block, by);
        for (std::size_t i = 0; i < block.size(); ++i)
            RC_ASSERT(geometry::distance((*there)[i].place.max, as_one[i].place.max) < 1e-9);
    });
}

TEST_CASE("Where pieces stay a block touches them at the gap, in line with something") {
    rc::prop("for any two pieces that stay", [](std::uint64_t seed) {
        Random random(seed);
        Task task = test::wall_task({6000, 2600});
        const double width = random.uniform(200, 600);
        add_fixed(task, {2500, 1200}, {width, random.uniform(300, 600)});
        add_fixed(task, {2500 + width + task.gap, 1200},
                  {random.uniform(200, 600), random.uniform(300, 600)});
        Layout block = one_piece(task, {random.uniform(200, 600), random.uniform(200, 600)});
        const std::optional<Layout> there = settle(task, block);
        RC_ASSERT(there.has_value());
        RC_ASSERT(there->size() == 3);
        RC_ASSERT(is_allowed(task, *there));
        std::vector<WallRect> places;
        for (const Spot& spot : *there)
            places.push_back(spot.place);
        int touching = 0;
        for (const spacing::Facing& facing : spacing::facing_pairs(places, task.reach))
            if (facing.second == 2 || facing.first == 2)
                touching += std::abs(facing.size - task.gap) < 1e-6 ? 1 : 0;
        RC_ASSERT(touching > 0);
    });
}

TEST_CASE("A row goes on beside the row that stays") {
    Task task = test::wall_task({4000, 2500});
    add_fixed(task, {1000, 1350}, {300, 300});
    add_fixed(task, {1360, 1350}, {300, 300});
    const Layout block = one_piece(task, {300, 300});
    const WallRect place = settled(task, block);
    CHECK(place.bottom() == Approx(1350));
    CHECK((place.left() == Approx(1720) || place.right() == Approx(940)));
}

TEST_CASE("A block that cannot touch what stays hangs free of it") {
    Task task = test::wall_task({4000, 2500});
    add_fixed(task, {100, 100}, {200, 200});
    task.keep_out.push_back({{0, 0}, {1000, 2500}});
    const Layout block = one_piece(task, {600, 400});
    CHECK(settled(task, block) == WallRect::at({1700, 1300}, {600, 400}));
}
