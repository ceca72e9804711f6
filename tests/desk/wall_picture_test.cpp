#include "desk/wall_picture.h"

#include "edits/edit.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::desk;
using namespace wallwright::scenes;

namespace {

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
