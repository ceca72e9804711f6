#include "desk/suggestions.h"

#include "edits/edit.h"
#include "growing.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::desk;

namespace {

void look(Suggestions& suggestions, Session& session) {
    suggestions.start(session);
    wait_for([&] {
        suggestions.follow(session);
        return !suggestions.is_running();
    });
}

arrange::Suggestion suggestion_of(std::string name) {
    arrange::Suggestion suggestion;
    suggestion.size_name = std::move(name);
    suggestion.place = {{100, 100}, {437, 560}};
    return suggestion;
}

}  // namespace

TEST_CASE("Frames to buy are looked for, and taking one is one step with a piece wished for") {
    Session session(growing_wall());
    Suggestions suggestions;
    look(suggestions, session);
    REQUIRE_FALSE(suggestions.list().empty());
    const arrange::Suggestion first = suggestions.list().front();
    const std::size_t before = session.kept().pieces.size();
    CHECK(suggestions.take(session, 0));
    REQUIRE(session.kept().pieces.size() == before + 1);
    const wall::Piece& piece = session.kept().pieces.back();
    CHECK(piece.wished);
    CHECK(piece.state == wall::PieceState::planned);
    CHECK(wall::place_of(session.kept(), piece)->left() == Approx(first.place.left()).margin(0.01));
    CHECK(session.history().undo_label().starts_with("Wish for "));
    session.undo();
    CHECK_FALSE(session.history().can_undo());
}

TEST_CASE("The list is about one wall: another hides it, and undoing the change brings it back") {
    Session session(growing_wall());
    Suggestions suggestions;
    look(suggestions, session);
    const std::size_t count = suggestions.list().size();
    REQUIRE(count > 0);
    suggestions.point_out(0);
    session.apply("Change the wanted gap", edits::set_gap(session.kept(), 70));
    CHECK(suggestions.follow(session));
    CHECK(suggestions.is_stale());
    CHECK(suggestions.list().empty());
    CHECK_FALSE(suggestions.pointed_out());
    CHECK_FALSE(suggestions.take(session, 0));
    session.undo();
    suggestions.follow(session);
    CHECK_FALSE(suggestions.is_stale());
    CHECK(suggestions.list().size() == count);
}

TEST_CASE("A search for frames is given up when the wall becomes another") {
    Session session(growing_wall());
    Suggestions suggestions;
    suggestions.start(session);
    session.apply("Change the wanted gap", edits::set_gap(session.kept(), 70));
    suggestions.follow(session);
    CHECK_FALSE(suggestions.is_running());
    CHECK(suggestions.list().empty());
}

TEST_CASE("Pointing goes round the ends of the list") {
    Session session(growing_wall());
    Suggestions suggestions;
    look(suggestions, session);
    const std::size_t count = suggestions.list().size();
    REQUIRE(count > 1);
    suggestions.point_further(1);
    CHECK(suggestions.pointed_out() == 0U);
    suggestions.point_further(-1);
    CHECK(suggestions.pointed_out() == count - 1);
    suggestions.point_further(1);
    CHECK(suggestions.pointed_out() == 0U);
    suggestions.point_out(count);
    CHECK_FALSE(suggestions.pointed_out());
}

TEST_CASE("With nothing on the wall there is nothing that a frame could join") {
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_waiting(project, "dune", {300, 400});
    CHECK_FALSE(Suggestions::hindrance(Session(project)).empty());
    CHECK(Suggestions::hindrance(Session(growing_wall())).empty());
}

TEST_CASE("A list that was put away is gone") {
    Session session(growing_wall());
    Suggestions suggestions;
    look(suggestions, session);
    suggestions.clear();
    CHECK(suggestions.list().empty());
    CHECK_FALSE(suggestions.found_nothing());
}

TEST_CASE("A size is said over the moulding in the person's unit") {
    CHECK(outside_words(suggestion_of("a3"), units::LengthUnit::mm) == "337 × 460 mm");
}

TEST_CASE("The print that would fit is named with the mount that is seen around it") {
    wall::Project project = growing_wall();
    wall::Print heron;
    heron.id = wall::PrintId{"heron"};
    heron.title = "Heron";
    project.prints.push_back(heron);
    arrange::Suggestion suggestion = suggestion_of("a3");
    CHECK(print_words(project, suggestion).empty());
    suggestion.prints = {{wall::PrintId{"heron"}, true, 35}};
    CHECK(print_words(project, suggestion) == "Fits Heron with 35 mm of mount around it.");
    suggestion.prints = {{wall::PrintId{"heron"}, false, 0}};
    CHECK(print_words(project, suggestion) == "Fits Heron without a mount.");
}
