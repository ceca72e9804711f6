#include "desk/session.h"

#include "edits/edit.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::desk;
using namespace wallwright::scenes;

namespace {

wall::Project one_piece() {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    return project;
}

Result<wall::Project> with_gap(const Session& session, double gap) {
    return edits::set_gap(session.kept(), gap);
}

}  // namespace

TEST_CASE("An edit is kept as a step and undone by its name") {
    Session session(one_piece());
    const std::uint64_t version = session.version();
    CHECK(session.apply("Change the gap", with_gap(session, 50)));
    CHECK(session.project().style.gap == 50);
    CHECK(session.version() > version);
    CHECK_FALSE(session.is_saved());
    CHECK(session.history().undo_label() == "Change the gap");
    session.undo();
    CHECK(session.project() == one_piece());
    CHECK(session.is_saved());
}

TEST_CASE("What cannot be done is told and changes nothing") {
    Session session(one_piece());
    CHECK_FALSE(session.apply("Change the gap", with_gap(session, -5)));
    REQUIRE(session.notice);
    CHECK(session.notice->is_problem);
    CHECK(session.notice->text.find("gap") != std::string::npos);
    CHECK(session.project() == one_piece());
    CHECK_FALSE(session.history().can_undo());
}

TEST_CASE("A preview is seen and judged, and becomes a step only when it is kept") {
    Session session(one_piece());
    session.preview(with_gap(session, 50));
    CHECK(session.project().style.gap == 50);
    CHECK(session.kept().style.gap == 60);
    session.drop_preview();
    CHECK(session.project() == one_piece());

    session.preview(with_gap(session, 50));
    session.preview(with_gap(session, 40));
    session.keep_preview("Change the gap");
    CHECK(session.kept().style.gap == 40);
    session.undo();
    CHECK(session.kept() == one_piece());
}

TEST_CASE("The assessment is always that of what is shown") {
    Session session(one_piece());
    const std::size_t before = session.assessment().findings.size();
    wall::Project overlapping = session.kept();
    add_piece(overlapping, "dune", {1100, 1300}, {300, 400});
    session.preview(overlapping);
    CHECK(session.assessment().findings.size() > before);
    session.drop_preview();
    CHECK(session.assessment().findings.size() == before);
}

TEST_CASE("Undo takes what it removed out of the selection") {
    Session session(one_piece());
    wall::Project more = session.kept();
    add_piece(more, "dune", {2000, 1300}, {300, 400});
    session.apply("Add Dune", more);
    session.selection.set(Thing{wall::PieceId{"dune"}});
    session.undo();
    CHECK(session.selection.empty());
}

TEST_CASE("Pictures are looked for beside the file, or where the wall came from") {
    CHECK(Session(one_piece(), "/walls/attic.json").picture_folder() == "/walls");
    CHECK(Session(one_piece(), {}, "/demo").picture_folder() == "/demo");
    CHECK(Session(one_piece(), "/walls/attic.json", "/demo").picture_folder() == "/demo");
}

TEST_CASE("Saving leaves the names in every step as they start, and gives a new wall its folder") {
    Session demo(one_piece(), {}, "/demo");
    demo.saved_as("/walls/mine.json");
    CHECK(demo.picture_folder() == "/demo");
    CHECK(demo.is_saved());
    Session fresh(one_piece());
    fresh.saved_as("/walls/mine.json");
    CHECK(fresh.picture_folder() == "/walls");
}
