#include "edits/room.h"

#include "support/scenes.h"
#include "wall/validity.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::wall;

namespace {

Project furnished() {
    Project project = scenes::wall_of(3600, 2400);
    scenes::add_furniture(project, FurnitureType::sofa, Rect<Wall>::at({700, 0}, {1900, 800}));
    scenes::add_fixture(project, FixtureType::light_switch, Rect<Wall>::at({3300, 1050}, {86, 86}));
    return project;
}

template <class T>
std::string problem_of(const Result<T>& result) {
    return result ? "no problem" : to_text(result.error());
}

std::vector<Point<Wall>> corners(const Result<Project>& project) {
    return project.value().room.outline.corners;
}

}  // namespace

TEST_CASE("What is said of the whole wall changes when it is sound") {
    const auto titled =
        edits::change_project(furnished(), [](Project& one) { one.title = "Hall"; });
    CHECK(titled->title == "Hall");
    CHECK_FALSE(edits::change_project(furnished(), [](Project& one) { one.style.gap = -1; }));
}

TEST_CASE("Furniture and fixtures change by their ids") {
    const auto wider = edits::change_furniture(furnished(), {"sofa"},
                                               [](Furniture& one) { one.place.max.x += 10.0 / 3; });
    CHECK(wider->room.furniture[0].place.width() == Approx(1903.33).epsilon(1e-12));
    const auto named =
        edits::change_fixture(furnished(), {"switch"}, [](Fixture& one) { one.title = "Light"; });
    CHECK(named->room.fixtures[0].title == "Light");
    CHECK_FALSE(edits::change_furniture(furnished(), {"sofa"},
                                        [](Furniture& one) { one.place.max.x = one.place.min.x; }));
}

TEST_CASE("A thing that is not in the room is named") {
    const FurnitureId cot{"cot"};
    const FixtureId door{"door"};
    CHECK(problem_of(edits::change_furniture(furnished(), cot, [](Furniture&) {})) ==
          "room/furniture/cot: there is no such thing; name one that is in the room");
    CHECK(problem_of(edits::change_fixture(furnished(), door, [](Fixture&) {})) ==
          "room/fixtures/door: there is no such thing; name one that is in the room");
    CHECK_FALSE(edits::remove(furnished(), cot));
    CHECK_FALSE(edits::remove(furnished(), door));
}

TEST_CASE("What is added gets an id from its type and tells it") {
    Furniture sofa;
    sofa.type = FurnitureType::sofa;
    sofa.place = Rect<Wall>::at({100, 0}, edits::usual_size(sofa.type));
    Fixture light;
    light.type = FixtureType::light_switch;
    light.place = Rect<Wall>::at({100, 1050}, edits::usual_size(light.type));
    FurnitureId furniture;
    FixtureId fixture;
    Project project = edits::add_furniture(furnished(), sofa, furniture).value();
    project = edits::add_fixture(project, light, fixture).value();
    CHECK(furniture.text == "sofa-2");
    CHECK(fixture.text == "switch-2");
    CHECK(edits::remove(edits::remove(project, furniture).value(), fixture).value() == furnished());
    light.place.max = light.place.min;
    CHECK_FALSE(edits::add_fixture(project, light, fixture));
    CHECK(fixture.text == "switch-2");
}

TEST_CASE("Every thing of its usual size fits a usual wall") {
    const Size wall{3600, 2400};
    const auto fits = [wall](Size size, double from) {
        return size.width > 0 && size.height > 0 && size.width <= wall.width && from >= 0 &&
               from + size.height <= wall.height;
    };
    for (const std::string_view name : Names<FurnitureType>::values)
        CHECK(fits(edits::usual_size(*with_name<FurnitureType>(name)), 0));
    for (const std::string_view name : Names<FixtureType>::values) {
        const auto type = *with_name<FixtureType>(name);
        CHECK(fits(edits::usual_size(type), edits::usual_height(type)));
    }
    CHECK(edits::usual_height(FixtureType::light_switch) == 1050);
    CHECK(edits::usual_height(FixtureType::socket) == 300);
    CHECK(edits::usual_height(FixtureType::door) == 0);
}

TEST_CASE("A corner moves, and an outline that would cross itself is refused") {
    const auto sloping = edits::move_corner(furnished(), 2, {3600, 1800.004});
    CHECK(corners(sloping)[2] == Point<Wall>{3600, 1800});
    CHECK(problem_of(edits::move_corner(furnished(), 2, {-500, 1200})) ==
          "room/outline_mm: the outline would cross itself or fold onto itself; keep the corners "
          "in order around the wall");
    CHECK(problem_of(edits::move_corner(furnished(), 4, {0, 0})) ==
          "room/outline_mm: there is no corner 5; the outline has 4 corners");
}

TEST_CASE("A side is split in its middle, the last one too") {
    CHECK(corners(edits::split_side(furnished(), 2))[3] == Point<Wall>{1800, 2400});
    const auto last = corners(edits::split_side(furnished(), 3));
    REQUIRE(last.size() == 5);
    CHECK(last[4] == Point<Wall>{0, 1200});
}

TEST_CASE("A corner is added to the longest side, to the ceiling before the floor") {
    CHECK(corners(edits::add_corner(furnished()))[3] == Point<Wall>{1800, 2400});
    Project high = scenes::wall_of(2000, 2400);
    CHECK(corners(edits::add_corner(high))[2] == Point<Wall>{2000, 1200});
}

TEST_CASE("A split side's corner can be taken out again, but three must stay") {
    const Project split = edits::split_side(furnished(), 1).value();
    CHECK(edits::remove_corner(split, 2).value() == furnished());
    const Project three = edits::remove_corner(furnished(), 0).value();
    CHECK(problem_of(edits::remove_corner(three, 0)) ==
          "room/outline_mm: a wall has at least three corners; move the corner instead of removing "
          "it");
}

TEST_CASE("A wall of another size is flat and keeps what stands before it") {
    const Project attic = edits::move_corner(furnished(), 2, {3600, 1800}).value();
    const Project flat = edits::set_wall_size(attic, {4000, 2500}).value();
    CHECK(flat.room.outline.corners ==
          std::vector<Point<Wall>>{{0, 0}, {4000, 0}, {4000, 2500}, {0, 2500}});
    CHECK(flat.room.furniture == attic.room.furniture);
    CHECK(problem_of(edits::set_wall_size(attic, {4000, -5})) ==
          "room/outline_mm: -5 mm is no size; give a width and a height of more than 0");
    CHECK_FALSE(edits::set_wall_size(attic, {1e9, 2500}));
}
