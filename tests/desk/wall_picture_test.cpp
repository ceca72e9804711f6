#include "desk/wall_picture.h"

#include "edits/edit.h"
#include "searching.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::desk;
using namespace wallwright::scenes;

namespace {

using geometry::Rect;
using geometry::Wall;

/// What would be drawn of the wall with that layout.
Rect<Wall> extent_with(const Session& session, const LayoutChoice& choice, std::size_t rank,
                       double scale) {
    const Session laid_out(
        arrange::with_layout(session.kept(), choice.task(), choice.layouts()[rank].candidate.layout)
            .value());
    WallPicture picture;
    refresh(picture, laid_out, Step::arrange, scale);
    return picture.drawing.extent;
}

Session some_wall() {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    add_waiting(project, "dune", {200, 200});
    return Session(project);
}

}  // namespace

TEST_CASE("The picture is drawn anew only when something is another") {
    Session session = some_wall();
    WallPicture picture;
    CHECK(refresh(picture, session, Step::arrange, 0.05));
    CHECK_FALSE(refresh(picture, session, Step::arrange, 0.05));
    CHECK(refresh(picture, session, Step::hang, 0.05));
    CHECK(refresh(picture, session, Step::hang, 0.1));
    session.apply("Change the gap", edits::set_gap(session.kept(), 50));
    CHECK(refresh(picture, session, Step::hang, 0.1));
    CHECK_FALSE(refresh(picture, session, Step::hang, 0.1));
}

TEST_CASE("Each layer of the step hang can be left out, and is drawn nowhere else") {
    wall::Project project = wall_of(3600, 2400);
    project.room.core = wall::Core::plasterboard;
    project.room.studs = wall::Studs{300, 600, 45};
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    add_fixture(project, wall::FixtureType::socket, Rect<Wall>::at({2900, 300}, {86, 86}));
    const Session session(project);
    const auto drawn = [&](Step step, const HangLayers& layers) {
        WallPicture picture;
        refresh(picture, session, step, 0.05, layers);
        return draw::to_text(picture.drawing);
    };
    const std::string all = drawn(Step::hang, {});
    for (const auto layer : {&HangLayers::marks, &HangLayers::fixings, &HangLayers::loads,
                             &HangLayers::zones, &HangLayers::studs}) {
        HangLayers layers;
        layers.*layer = false;
        CHECK(drawn(Step::hang, layers).size() < all.size());
        CHECK(drawn(Step::arrange, layers) == drawn(Step::arrange, {}));
        CHECK(drawn(Step::room, layers) == drawn(Step::room, {}));
    }
    CHECK(drawn(Step::arrange, {}).size() < all.size());
}

TEST_CASE("A layer that is switched draws the step hang anew, and no other step") {
    const Session session = some_wall();
    HangLayers layers;
    WallPicture picture;
    for (const Step step : {Step::hang, Step::room}) {
        refresh(picture, session, step, 0.05, layers);
        layers.marks = !layers.marks;
        CHECK(refresh(picture, session, step, 0.05, layers) == (step == Step::hang));
    }
}

TEST_CASE("Waiting pieces are where the drawing has them, below the wall") {
    Session session = some_wall();
    WallPicture picture;
    refresh(picture, session, Step::pieces, 0.05);
    REQUIRE(picture.waiting.size() == 1);
    CHECK(picture.waiting.front().piece.text == "dune");
    CHECK(picture.waiting.front().place.top() < 0);
    CHECK(picture.waiting.front().place.width() == Approx(200));
    CHECK(picture.drawing.extent.contains(picture.waiting.front().place.min));
}

TEST_CASE("A viewer should see all of each layout to choose from, as long as they may be shown") {
    constexpr double kScale = 0.05;
    wall::Project project = wall_of(3600, 2400);
    for (const char* id : {"kelp", "dune", "moss", "tide"})
        add_waiting(project, id, {400, 300});
    Session session(project);
    LayoutChoice choice;
    choice.options = few_rounds();
    choice.search(session);
    wait_for(choice, session);
    REQUIRE_FALSE(choice.layouts().empty());
    WallPicture picture;
    refresh(picture, session, Step::arrange, kScale);
    const Rect<Wall> extent = extent_of(picture, session, choice);
    CHECK(extent.max.y > picture.drawing.extent.max.y);
    for (std::size_t i = 0; i < choice.layouts().size(); ++i) {
        const Rect<Wall> one = extent_with(session, choice, i, kScale);
        CHECK(hull(extent, one) == extent);
    }
    choice.close(session);
    CHECK(extent_of(picture, session, choice) == picture.drawing.extent);
}
