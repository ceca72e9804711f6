#include "desk/layout_choice.h"

#include "edits/edit.h"
#include "edits/pieces.h"
#include "edits/wishes.h"
#include "searching.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::desk;

namespace {

/// A wall whose layouts have been found.
struct Found {
    Session session{some_pieces()};
    LayoutChoice choice;

    Found() {
        choice.options = few_rounds();
        choice.search(session);
        wait_for(choice, session);
        REQUIRE(choice.layouts().size() >= 2);
    }
};

bool is_best_first(const LayoutChoice& choice) {
    return std::ranges::is_sorted(choice.layouts(), [](const auto& a, const auto& b) {
        const auto left_out = [](const RankedLayout& one) { return one.candidate.left_out.size(); };
        return left_out(a) != left_out(b) ? left_out(a) < left_out(b) : a.total > b.total;
    });
}

std::vector<std::size_t> order(const LayoutChoice& choice) {
    std::vector<std::size_t> numbers;
    for (const RankedLayout& layout : choice.layouts())
        numbers.push_back(layout.number);
    return numbers;
}

void hang(Session& session, const char* id) {
    const std::vector<wall::PieceId> pieces{wall::PieceId{id}};
    REQUIRE(
        session.apply("Hang", edits::set_state(session.kept(), pieces, wall::PieceState::hung)));
}

}  // namespace

TEST_CASE("A finished search has layouts, the best first, and has changed nothing") {
    const wall::Project before = some_pieces();
    Found it;
    CHECK_FALSE(it.choice.is_searching());
    CHECK(it.choice.is_open());
    CHECK(is_best_first(it.choice));
    CHECK(it.session.kept() == before);
    CHECK(it.session.project() == before);
    CHECK_FALSE(it.session.history().can_undo());
}

TEST_CASE("A layout that is shown is a preview, and leaving it leaves no trace") {
    Found it;
    const wall::Project before = it.session.kept();
    it.choice.show(it.session, 1);
    CHECK(it.choice.shown() == 1);
    CHECK(it.session.project() != before);
    CHECK(it.session.kept() == before);
    it.choice.leave(it.session);
    CHECK_FALSE(it.choice.shown());
    CHECK(it.session.project() == before);
    CHECK_FALSE(it.session.history().can_undo());
}

TEST_CASE("Leaving does not take away a preview that is somebody else's") {
    Found it;
    it.choice.show(it.session, 0);
    const std::vector<edits::Move> moves{{wall::PieceId{"dune"}, {100, 1500}}};
    it.session.preview(edits::place(it.session.kept(), moves));
    const wall::Project dragged = it.session.project();
    it.choice.update(it.session);
    CHECK_FALSE(it.choice.shown());
    it.choice.leave(it.session);
    CHECK(it.session.project() == dragged);
}

TEST_CASE("Taking a layout is one step named for its pattern, and puts every piece in its place") {
    Found it;
    const wall::Project before = it.session.kept();
    const arrange::Candidate taken = it.choice.layouts()[1].candidate;
    it.choice.show(it.session, 1);
    it.choice.take(it.session, 1);
    CHECK(it.session.history().undo_label() == step_of(taken.pattern));
    CHECK_FALSE(it.session.has_preview());
    for (const arrange::Spot& spot : taken.layout) {
        const wall::Piece& piece = it.session.kept().pieces[spot.item];
        REQUIRE(piece.at);
        CHECK(piece.at->x == Approx(spot.place.min.x).margin(0.01));
        CHECK(piece.at->y == Approx(spot.place.min.y).margin(0.01));
    }
    it.session.undo();
    CHECK(it.session.kept() == before);
    CHECK_FALSE(it.session.history().can_undo());
}

TEST_CASE("The layout that is on the wall is marked, and another can be taken after it") {
    Found it;
    const auto marked = [&it] {
        it.choice.update(it.session);
        return std::ranges::count(it.choice.layouts(), true, &RankedLayout::on_wall);
    };
    CHECK(marked() == 0);
    it.choice.take(it.session, 0);
    CHECK(it.choice.layouts()[0].on_wall);
    CHECK(marked() == 1);
    CHECK_FALSE(it.choice.is_stale());
    it.choice.take(it.session, 1);
    CHECK(it.choice.layouts()[1].on_wall);
    it.session.undo();
    it.session.undo();
    CHECK(marked() == 0);
}

TEST_CASE("Layouts of a wall that has changed are neither shown nor taken until it is undone") {
    Found it;
    hang(it.session, "dune");
    it.choice.update(it.session);
    CHECK(it.choice.is_stale());
    const wall::Project now = it.session.kept();
    it.choice.show(it.session, 0);
    it.choice.take(it.session, 0);
    CHECK(it.session.project() == now);
    CHECK(it.session.kept() == now);
    it.session.undo();
    it.choice.update(it.session);
    CHECK_FALSE(it.choice.is_stale());
    it.choice.show(it.session, 0);
    CHECK(it.choice.shown() == 0);
}

TEST_CASE("A change before the next frame is seen by what is shown at once") {
    Found it;
    it.session.selection.set(wall::PieceId{"tide"});
    REQUIRE(it.session.apply(
        "Remove", edits::remove_pieces(it.session.kept(), it.session.selection.pieces())));
    const wall::Project now = it.session.kept();
    it.choice.show(it.session, 0);
    it.choice.take(it.session, 0);
    CHECK(it.session.project() == now);
}

TEST_CASE("A wish makes the layouts stale, moving a free piece does not") {
    Found it;
    const std::vector<edits::Move> moves{{wall::PieceId{"dune"}, {100, 1500}}};
    REQUIRE(it.session.apply("Move", edits::place(it.session.kept(), moves)));
    it.choice.update(it.session);
    CHECK_FALSE(it.choice.is_stale());
    const wall::Wish wish{wall::WishKind::low, wall::PieceId{"dune"}, std::nullopt, std::nullopt};
    REQUIRE(it.session.apply("Wish", edits::add_wish(it.session.kept(), wish)));
    it.choice.update(it.session);
    CHECK(it.choice.is_stale());
}

TEST_CASE("A weight orders the layouts anew at once, is kept, and keeps what is shown") {
    Found it;
    it.choice.show(it.session, 1);
    const std::size_t number = it.choice.layouts()[1].number;
    const wall::Project shown = it.session.project();
    for (const arrange::Measure& measure : arrange::all_measures())
        it.choice.set_weight(it.session, measure, 0);
    const arrange::Measure& only = *arrange::find_measure("alignment");
    const auto index = static_cast<std::size_t>(&only - arrange::all_measures().data());
    it.choice.set_weight(it.session, only, 4);
    CHECK(is_best_first(it.choice));
    const auto weights = arrange::weights_of(it.session.kept());
    CHECK(weights[index] == 4);
    CHECK(std::ranges::count(weights, 0.0) == static_cast<std::ptrdiff_t>(weights.size()) - 1);
    for (const RankedLayout& layout : it.choice.layouts())
        CHECK(layout.total == Approx(100 * layout.candidate.score.parts[index].value));
    REQUIRE(it.choice.shown());
    CHECK(it.choice.layouts()[*it.choice.shown()].number == number);
    for (std::size_t i = 0; i < shown.pieces.size(); ++i)
        CHECK(it.session.project().pieces[i].at == shown.pieces[i].at);
    CHECK_FALSE(it.choice.is_stale());
}

TEST_CASE("A weight that is dragged is one step, and its usual value is not kept") {
    Found it;
    const arrange::Measure& measure = arrange::all_measures().front();
    for (const double weight : {3.0, 4.0, 5.0})
        it.choice.set_weight(it.session, measure, weight);
    REQUIRE(it.session.kept().weights.size() == 1);
    CHECK(it.session.kept().weights[0].weight == 5);
    it.session.end_burst();
    it.choice.set_weight(it.session, measure, measure.usual_weight);
    CHECK(it.session.kept().weights.empty());
    it.session.undo();
    CHECK(it.session.kept().weights.size() == 1);
    it.session.undo();
    CHECK_FALSE(it.session.history().can_undo());
}

TEST_CASE("Weights can be set before any search") {
    Session session(some_pieces());
    LayoutChoice choice;
    choice.set_weight(session, arrange::all_measures().front(), 2.5);
    CHECK(session.kept().weights.size() == 1);
    CHECK_FALSE(choice.is_open());
}

TEST_CASE("Next goes round through all the layouts, before goes back") {
    Found it;
    const std::size_t count = it.choice.layouts().size();
    for (std::size_t i = 0; i < 2 * count; ++i) {
        it.choice.show_next(it.session, 1);
        CHECK(it.choice.shown() == i % count);
    }
    it.choice.show_next(it.session, -1);
    CHECK(it.choice.shown() == count - 2);
    it.choice.leave(it.session);
    it.choice.show_next(it.session, -1);
    CHECK(it.choice.shown() == count - 1);
}

TEST_CASE("What is found while a layout is shown waits until that is left") {
    Session session(some_pieces());
    LayoutChoice choice;
    choice.options.seconds = 600;
    choice.search(session);
    while (choice.layouts().empty())
        choice.update(session);
    choice.show(session, 0);
    const std::vector<std::size_t> before = order(choice);
    const arrange::Layout shown = choice.layouts()[0].candidate.layout;
    choice.stop();
    choice.update(session);
    CHECK_FALSE(choice.is_searching());
    CHECK(order(choice) == before);
    CHECK(choice.layouts()[0].candidate.layout == shown);
    choice.leave(session);
    choice.update(session);
    CHECK(is_best_first(choice));
}

TEST_CASE("A search that is stopped keeps what it has, one that is put away keeps nothing") {
    Session session(some_pieces());
    LayoutChoice choice;
    choice.options.seconds = 600;
    choice.search(session);
    CHECK(choice.is_searching());
    choice.stop();
    CHECK_FALSE(choice.is_searching());
    choice.update(session);
    CHECK_FALSE(choice.layouts().empty());
    choice.show(session, 0);
    choice.close(session);
    CHECK_FALSE(choice.is_open());
    CHECK(choice.layouts().empty());
    CHECK_FALSE(session.has_preview());
}

TEST_CASE("Taking a layout ends the search, and the taken one stays in the list") {
    Session session(some_pieces());
    LayoutChoice choice;
    choice.options.seconds = 600;
    choice.search(session);
    while (choice.layouts().empty())
        choice.update(session);
    const std::vector<std::size_t> before = order(choice);
    choice.take(session, before.size() - 1);
    CHECK_FALSE(choice.is_searching());
    choice.update(session);
    CHECK(order(choice) == before);
    CHECK(choice.layouts().back().on_wall);
}

TEST_CASE("A change of the wall stops the search") {
    Session session(some_pieces());
    LayoutChoice choice;
    choice.options.seconds = 600;
    choice.search(session);
    hang(session, "dune");
    choice.update(session);
    CHECK_FALSE(choice.is_searching());
    CHECK(choice.is_stale());
}

TEST_CASE("The same seed gives the same layouts, and each further search has another seed") {
    Found one;
    Found other;
    REQUIRE(one.choice.layouts().size() == other.choice.layouts().size());
    for (std::size_t i = 0; i < one.choice.layouts().size(); ++i)
        CHECK(one.choice.layouts()[i].candidate.layout ==
              other.choice.layouts()[i].candidate.layout);
    CHECK(one.choice.options.seed == 1);
    one.choice.search(one.session);
    CHECK(one.choice.options.seed == 2);
}

TEST_CASE("Layouts are not searched for where no piece may move") {
    Session session(scenes::wall_of(3000, 2400));
    CHECK(LayoutChoice::hindrance(session) == "Add a piece first");
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_hung(project, "kelp", {1000, 1300}, {300, 400});
    scenes::add_piece(project, "dune", {1600, 1300}, {300, 400}).pinned = true;
    CHECK(LayoutChoice::hindrance(Session(project)) ==
          "No piece may move, since all hang already or are pinned");
    scenes::add_waiting(project, "moss", {300, 400});
    CHECK(LayoutChoice::hindrance(Session(project)).empty());
}

TEST_CASE("A choice can be moved while its search runs") {
    Session session(some_pieces());
    LayoutChoice choice;
    choice.options = few_rounds();
    choice.search(session);
    LayoutChoice moved = std::move(choice);
    wait_for(moved, session);
    CHECK_FALSE(moved.layouts().empty());
}
