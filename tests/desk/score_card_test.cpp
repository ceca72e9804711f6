#include "desk/score_card.h"

#include "edits/edit.h"
#include "searching.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::desk;

TEST_CASE("A wall with pieces has a line for every measure in order, with what a tape would find") {
    const Session session(some_pieces());
    ScoreCard card;
    refresh(card, session);
    const auto measures = arrange::all_measures();
    REQUIRE(card.lines.size() == measures.size());
    double sum = 0;
    double weights = 0;
    std::size_t idle = 0;
    for (std::size_t i = 0; i < measures.size(); ++i) {
        const ScoreLine& line = card.lines[i];
        CHECK(line.measure == &measures[i]);
        CHECK(line.weight == measures[i].usual_weight);
        CHECK_FALSE(line.says.empty());
        if (!line.applies)
            ++idle;
        sum += line.applies ? line.weight * line.value : 0;
        weights += line.applies ? line.weight : 0;
    }
    CHECK(card.total == Approx(100 * sum / weights));
    CHECK(idle > 0);  // Nothing is wished.
}

TEST_CASE("A wall with nothing on it has no score") {
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_waiting(project, "kelp", {300, 400});
    ScoreCard card;
    refresh(card, Session(project));
    CHECK(card.lines.empty());
}

TEST_CASE("A wall on which all hangs has a score all the same") {
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_hung(project, "kelp", {1000, 1300}, {300, 400});
    ScoreCard card;
    refresh(card, Session(project));
    CHECK_FALSE(card.lines.empty());
}

TEST_CASE(
    "The score is that of what is shown: a layout's while it is, the wall's before and after") {
    Session session(some_pieces());
    LayoutChoice choice;
    choice.options = few_rounds();
    choice.search(session);
    wait_for(choice, session);
    ScoreCard card;
    refresh(card, session);
    const double before = card.total;
    REQUIRE_FALSE(choice.layouts().empty());
    choice.show(session, 0);
    refresh(card, session);
    CHECK(card.total == Approx(choice.layouts()[0].total).margin(0.05));
    CHECK(card.total > before);
    choice.leave(session);
    refresh(card, session);
    CHECK(card.total == before);
}
