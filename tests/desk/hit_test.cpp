#include "desk/hit.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::desk;
using geometry::Point;
using geometry::Rect;
using geometry::Wall;

namespace {

constexpr double kReach = 40;

/// Two overlapping pieces over a sofa with a socket before it; one piece waits.
wall::Project busy_wall() {
    wall::Project project = scenes::wall_of(3600, 2400);
    scenes::add_piece(project, "below", {1000, 1300}, {400, 300});
    scenes::add_piece(project, "above", {1300, 1400}, {400, 300});
    scenes::add_waiting(project, "kelp", {300, 400});
    scenes::add_furniture(project, wall::FurnitureType::sofa,
                          Rect<Wall>::at({800, 0}, {1900, 800}));
    scenes::add_fixture(project, wall::FixtureType::socket, Rect<Wall>::at({900, 250}, {80, 80}));
    return project;
}

const std::vector<Waiting> kWaiting{{{"kelp"}, Rect<Wall>::at({100, -600}, {300, 400})}};

std::optional<Hit> hit_at(Point<Wall> at, const Selection& selection = {},
                          Step step = Step::arrange) {
    return hit_test(busy_wall(), kWaiting, selection, step, at, kReach);
}

Selection only(const Thing& thing) {
    Selection selection;
    selection.set(thing);
    return selection;
}

const Thing kSofa = wall::FurnitureId{"sofa"};
const Thing kSocket = wall::FixtureId{"socket"};

}  // namespace

TEST_CASE("Of two pieces under the pointer the one drawn last is taken") {
    CHECK(hit_at({1350, 1500}) == Hit{Thing{wall::PieceId{"above"}}});
    CHECK(hit_at({1050, 1500}) == Hit{Thing{wall::PieceId{"below"}}});
}

TEST_CASE("A waiting piece is hit where it stands, and not once it is placed") {
    CHECK(hit_at({200, -400}) == Hit{Thing{wall::PieceId{"kelp"}}});
    wall::Project project = busy_wall();
    project.pieces[2].state = wall::PieceState::planned;
    project.pieces[2].at = Point<Wall>{3000, 1000};
    CHECK_FALSE(hit_test(project, kWaiting, {}, Step::arrange, {200, -400}, kReach));
    CHECK(pieces_in(project, kWaiting, {{0, -700}, {3600, -10}}).empty());
}

TEST_CASE("A socket before the sofa is hit, and the sofa beside it") {
    CHECK(hit_at({940, 290}, {}, Step::room) == Hit{kSocket});
    CHECK(hit_at({1040, 290}, {}, Step::room) == Hit{kSofa});
    CHECK_FALSE(hit_at({940, 290}, {}, Step::arrange).has_value());
    CHECK_FALSE(hit_at({3000, 1500}).has_value());
}

TEST_CASE("Corners of the outline are hit only in the room step, within reach") {
    CHECK(hit_at({3590, 2390}, {}, Step::room) == Hit{Corner{2}});
    CHECK(hit_at({3620, 2410}, {}, Step::room) == Hit{Corner{2}});
    CHECK_FALSE(hit_at({3550, 2390}, {}, Step::room).has_value());
    CHECK_FALSE(hit_at({3590, 2390}, {}, Step::arrange).has_value());
}

TEST_CASE("Handles are those of the selected furniture, only in the room step, and come first") {
    CHECK(hit_at({2700, 390}, only(kSofa), Step::room) == Hit{Handle{kSofa, 1, 0}});
    CHECK(hit_at({2710, 810}, only(kSofa), Step::room) == Hit{Handle{kSofa, 1, 1}});
    CHECK(hit_at({1750, 820}, only(kSofa), Step::room) == Hit{Handle{kSofa, 0, 1}});
    CHECK(hit_at({2690, 390}, {}, Step::room) == Hit{kSofa});
    CHECK_FALSE(hit_at({2690, 390}, only(kSofa), Step::hang).has_value());
}

TEST_CASE("The middle of a small thing moves it, though handles are all around") {
    CHECK(hit_at({940, 290}, only(kSocket), Step::room) == Hit{kSocket});
    CHECK(hit_at({985, 335}, only(kSocket), Step::room) == Hit{Handle{kSocket, 1, 1}});
}

TEST_CASE("There are eight handles, each on the edge of its thing") {
    const Rect<Wall> place{{100, 200}, {500, 1000}};
    const std::vector<Handle> handles = handles_of(only(kSofa));
    REQUIRE(handles.size() == 8);
    for (const Handle& handle : handles) {
        const Point<Wall> at = point_of(handle, place);
        CHECK(place.contains(at));
        CHECK_FALSE(place.grown(-1).contains(at));
    }
    CHECK(handles_of(only(wall::PieceId{"below"})).empty());
}

TEST_CASE("A band takes the pieces that it touches, on the wall and on the floor") {
    const auto in = [](Rect<Wall> area) { return pieces_in(busy_wall(), kWaiting, area); };
    CHECK(in({{900, 1200}, {1000, 1300}}) == std::vector<wall::PieceId>{{"below"}});
    CHECK(in({{900, 1200}, {1350, 1450}}) == std::vector<wall::PieceId>{{"below"}, {"above"}});
    CHECK(in({{0, -700}, {3600, 2400}}).size() == 3);
    CHECK(in({{900, 1200}, {999, 1299}}).empty());
}

TEST_CASE("A thing is seen at its place, and a waiting piece where it stands") {
    CHECK(seen_at(busy_wall(), kWaiting, wall::PieceId{"kelp"}) == kWaiting[0].place);
    CHECK(seen_at(busy_wall(), kWaiting, kSofa) == Rect<Wall>::at({800, 0}, {1900, 800}));
    CHECK_FALSE(seen_at(busy_wall(), {}, wall::PieceId{"kelp"}).has_value());
}
