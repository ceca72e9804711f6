#include "desk/wish_choice.h"

#include "searching.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::desk;
using wall::Wish;
using wall::WishKind;

namespace {

const wall::PieceId kDune{"dune"};
const wall::PieceId kGull{"gull"};

Wish of(WishKind kind, const wall::PieceId& piece) {
    return {kind, piece, std::nullopt, std::nullopt};
}
Wish of(WishKind kind, const wall::PieceId& first, const wall::PieceId& second) {
    return {kind, first, second, std::nullopt};
}

bool has(const Session& session, const Wish& wish) {
    return find_wish(session.kept(), wish).has_value();
}

}  // namespace

TEST_CASE("A wish is made and unmade as one step each, named for what it says") {
    Session session(some_pieces());
    const wall::Project before = session.kept();
    set_wish(session, of(WishKind::low, kDune), true);
    CHECK(has(session, of(WishKind::low, kDune)));
    CHECK(session.history().undo_label() == "Wish Dune low");
    set_wish(session, of(WishKind::low, kDune), true);
    CHECK(session.kept().wishes.size() == 1);
    set_wish(session, of(WishKind::low, kDune), false);
    CHECK(session.kept() == before);
    CHECK(session.history().undo_label() == "No longer wish Dune low");
    session.undo();
    session.undo();
    CHECK_FALSE(session.history().can_undo());
}

TEST_CASE("Low takes the place of high, and apart that of side by side, whoever is named first") {
    Session session(some_pieces());
    set_wish(session, of(WishKind::high, kDune), true);
    set_wish(session, of(WishKind::high, kGull), true);
    set_wish(session, of(WishKind::low, kDune), true);
    CHECK(has(session, of(WishKind::low, kDune)));
    CHECK_FALSE(has(session, of(WishKind::high, kDune)));
    CHECK(has(session, of(WishKind::high, kGull)));
    set_wish(session, of(WishKind::side_by_side, kDune, kGull), true);
    CHECK(has(session, of(WishKind::side_by_side, kGull, kDune)));
    set_wish(session, of(WishKind::apart, kGull, kDune), true);
    CHECK_FALSE(has(session, of(WishKind::side_by_side, kDune, kGull)));
    CHECK(session.kept().wishes.size() == 3);
}

TEST_CASE("A piece can be wished off several things") {
    wall::Project project = some_pieces();
    scenes::add_fixture(project, wall::FixtureType::radiator, {{100, 100}, {700, 700}});
    Session session(project);
    const Wish sofa{WishKind::not_over, kDune, std::nullopt, wall::FurnitureId{"sofa"}};
    const Wish radiator{WishKind::not_over, kDune, std::nullopt, wall::FixtureId{"radiator"}};
    set_wish(session, sofa, true);
    set_wish(session, radiator, true);
    set_wish(session, of(WishKind::low, kDune), true);
    CHECK(session.kept().wishes.size() == 3);
    CHECK(words_of(session.kept(), sofa) == "Dune not over the sofa");
    CHECK(words_of(session.kept(), radiator) == "Dune not over the radiator");
}

TEST_CASE("Each kind of wish reads as a sentence would") {
    const wall::Project project = some_pieces();
    CHECK(words_of(project, of(WishKind::middle, kDune)) == "Dune in the middle");
    CHECK(words_of(project, of(WishKind::high, kDune)) == "Dune high");
    CHECK(words_of(project, of(WishKind::side_by_side, kDune, kGull)) == "Dune beside Gull");
    CHECK(words_of(project, of(WishKind::apart, kDune, kGull)) == "Dune apart from Gull");
}

TEST_CASE("A wish that is not there cannot be taken back") {
    Session session(some_pieces());
    remove_wish(session, 3);
    REQUIRE(session.notice);
    CHECK(session.notice->is_problem);
    CHECK_FALSE(session.history().can_undo());
}
