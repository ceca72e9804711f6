#include "draw/furnishings.h"

#include "draw/looking.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::draw;
using geometry::Rect;
using geometry::Wall;

namespace {

constexpr auto kFurniture = std::size(wall::Names<wall::FurnitureType>::values);
constexpr auto kFixtures = std::size(wall::Names<wall::FixtureType>::values);

Shapes silhouette(wall::FurnitureType type, const Rect<Wall>& place) {
    wall::Furniture furniture;
    furniture.type = type;
    furniture.title = "Chest";
    furniture.place = place;
    Shapes shapes;
    add_furniture(shapes, furniture);
    return shapes;
}

Shapes silhouette(wall::FixtureType type, const Rect<Wall>& place) {
    wall::Fixture fixture;
    fixture.type = type;
    fixture.title = "Fuse box";
    fixture.place = place;
    Shapes shapes;
    add_fixture(shapes, fixture);
    return shapes;
}

bool all_inside(const Shapes& shapes, const Rect<Wall>& place) {
    const Rect<Wall> within = place.grown(1e-6);
    for (const Shape<Wall>& shape : shapes)
        for (const Point<Wall> point : test::points_of(shape))
            if (!within.contains(point))
                return false;
    return true;
}

/// What all paths of the silhouette cover together.
Rect<Wall> covered(const Shapes& shapes) {
    const auto paths = test::shapes_in<Path<Wall>>(shapes);
    Rect<Wall> bounds = test::bounds_of(paths.front());
    for (const Path<Wall>& path : paths)
        bounds = hull(bounds, test::bounds_of(path));
    return bounds;
}

}  // namespace

TEST_CASE("Furniture of any type and size stays inside its rectangle") {
    rc::prop("down to 20 mm", []() {
        const auto type =
            static_cast<wall::FurnitureType>(*rc::gen::inRange<std::size_t>(0, kFurniture));
        const double width = *rc::gen::inRange(20, 4000);
        const double height = *rc::gen::inRange(20, 2600);
        const Rect<Wall> place = Rect<Wall>::at({300, 0}, {width, height});
        RC_ASSERT(all_inside(silhouette(type, place), place));
    });
}

TEST_CASE("A sideboard narrower than its usual knobs stays inside its rectangle") {
    const Rect<Wall> place = Rect<Wall>::at({300, 0}, {20, 172});
    CHECK(all_inside(silhouette(wall::FurnitureType::sideboard, place), place));
}

TEST_CASE("Fixtures of any type and size stay inside their rectangle") {
    rc::prop("down to 20 mm", []() {
        const auto type =
            static_cast<wall::FixtureType>(*rc::gen::inRange<std::size_t>(0, kFixtures));
        const double width = *rc::gen::inRange(20, 4000);
        const double height = *rc::gen::inRange(20, 2600);
        const Rect<Wall> place = Rect<Wall>::at({300, 900}, {width, height});
        RC_ASSERT(all_inside(silhouette(type, place), place));
    });
}

TEST_CASE("A silhouette stands on the floor and is as high as its rectangle") {
    const Rect<Wall> place = Rect<Wall>::at({300, 0}, {1200, 900});
    for (std::size_t i = 0; i < kFurniture; ++i) {
        const auto type = static_cast<wall::FurnitureType>(i);
        CAPTURE(wall::name_of(type));
        const Rect<Wall> bounds = covered(silhouette(type, place));
        CHECK(bounds.min.y == Approx(0).margin(1e-6));
        CHECK(bounds.max.y == Approx(900));
        CHECK(bounds.width() > 0.65 * place.width());
    }
}

TEST_CASE("No two types of furniture look the same") {
    const Rect<Wall> place = Rect<Wall>::at({0, 0}, {1200, 900});
    std::vector<std::string> drawings;
    for (std::size_t i = 0; i < kFurniture; ++i)
        drawings.push_back(
            to_text(WallDrawing{place, silhouette(static_cast<wall::FurnitureType>(i), place)}));
    std::sort(drawings.begin(), drawings.end());
    CHECK(std::adjacent_find(drawings.begin(), drawings.end()) == drawings.end());
}

TEST_CASE("A long sofa has more seats and a tall bookcase more shelves, not larger ones") {
    const auto count = [](wall::FurnitureType type, double width, double height) {
        return silhouette(type, Rect<Wall>::at({0, 0}, {width, height})).size();
    };
    CHECK(count(wall::FurnitureType::sofa, 2800, 800) >
          count(wall::FurnitureType::sofa, 1000, 800));
    CHECK(count(wall::FurnitureType::bookcase, 800, 2200) >
          count(wall::FurnitureType::bookcase, 800, 800));
    CHECK(count(wall::FurnitureType::sideboard, 2400, 700) >
          count(wall::FurnitureType::sideboard, 900, 700));
}

TEST_CASE("The same bookcase holds the same books each time") {
    const Rect<Wall> place = Rect<Wall>::at({0, 0}, {800, 2000});
    CHECK(silhouette(wall::FurnitureType::bookcase, place) ==
          silhouette(wall::FurnitureType::bookcase, place));
}

TEST_CASE("Furniture takes its own colour where it has one") {
    wall::Furniture furniture;
    furniture.type = wall::FurnitureType::other;
    furniture.place = Rect<Wall>::at({0, 0}, {500, 500});
    furniture.colour = wall::Colour{1, 2, 3};
    Shapes shapes;
    add_furniture(shapes, furniture);
    CHECK(test::shapes_in<Path<Wall>>(shapes).front().fill->colour == wall::Colour{1, 2, 3});
}

TEST_CASE("Only what has no silhouette of its own carries its name") {
    const Rect<Wall> place = Rect<Wall>::at({0, 0}, {500, 500});
    CHECK(test::shapes_in<Text<Wall>>(silhouette(wall::FurnitureType::other, place)).size() == 1);
    CHECK(test::shapes_in<Text<Wall>>(silhouette(wall::FurnitureType::sofa, place)).empty());
    CHECK(test::shapes_in<Text<Wall>>(silhouette(wall::FixtureType::other, place)).size() == 1);
    CHECK(test::shapes_in<Text<Wall>>(silhouette(wall::FixtureType::door, place)).empty());
}
