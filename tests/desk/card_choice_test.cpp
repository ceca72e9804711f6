#include "desk/bench/card_choice.h"

#include "card_planning.h"
#include "edits/card.h"
#include "edits/edit.h"
#include "mounts/card/still_to_cut.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::desk;

namespace {

struct Planned {
    Session session{cards()};
    CardChoice choice;

    Planned() {
        choice.options = few_rounds_of_card();
        wait_for(choice, session);
    }
};

void set_count(Session& session, const char* sheet, int count) {
    REQUIRE(session.apply(
        "Count", edits::change_card(session.kept(), {sheet},
                                    [count](wall::CardSheet& one) { one.count = count; })));
}

}  // namespace

TEST_CASE("The card is laid out by itself, each blank once, and nothing has changed") {
    const Planned it;
    REQUIRE(it.choice.plan() != nullptr);
    const mounts::CardPlan& plan = *it.choice.plan();
    REQUIRE(plan.lots.size() == 2);
    CHECK(plan.lots[0].plan.sheets.size() == 1);
    CHECK(plan.lots[0].plan.sheets[0].placed.size() == 2);
    CHECK(plan.lots[1].plan.sheets[0].placed.size() == 1);
    CHECK_FALSE(it.choice.is_stale());
    CHECK(it.choice.done() == 1);
    CHECK(it.session.kept() == cards());
}

TEST_CASE("A change of card makes the plan stale until it has been laid out anew") {
    Planned it;
    const std::uint64_t number = it.choice.plan_number();
    set_count(it.session, "cream", 5);
    it.choice.follow(it.session);
    CHECK((it.choice.is_stale() || it.choice.plan_number() != number));
    wait_for(it.choice, it.session);
    CHECK_FALSE(it.choice.is_stale());
    CHECK(it.choice.plan_number() > number);
}

TEST_CASE("Where pieces go on the wall is no matter to the plan") {
    Planned it;
    const std::uint64_t number = it.choice.plan_number();
    const std::vector<edits::Move> moves{{wall::PieceId{"kelp"}, {100, 1200}}};
    REQUIRE(it.session.apply("Move", edits::place(it.session.kept(), moves)));
    it.choice.follow(it.session);
    CHECK_FALSE(it.choice.is_stale());
    CHECK_FALSE(it.choice.is_running());
    CHECK(it.choice.plan_number() == number);
}

TEST_CASE("Under a hand that drags the plan stays as it is") {
    Planned it;
    const std::uint64_t number = it.choice.plan_number();
    set_count(it.session, "cream", 5);
    for (int i = 0; i < 3; ++i)
        it.choice.follow(it.session, true);
    it.choice.stop();
    it.choice.follow(it.session, true);
    CHECK(it.choice.plan_number() == number);
    it.choice.follow(it.session);
    CHECK(it.choice.plan_number() > number);
}

TEST_CASE("It looks for a better plan when it is told to, and the wall is the same") {
    Planned it;
    const std::uint64_t number = it.choice.plan_number();
    it.choice.again();
    wait_for(it.choice, it.session);
    CHECK(it.choice.plan_number() > number);
    CHECK(it.choice.options.seed == 2);
    CHECK_FALSE(it.choice.is_stale());
}

TEST_CASE("A view that is left plans no longer, and begins again when it is back") {
    Planned it;
    set_count(it.session, "cream", 5);
    it.choice.follow(it.session);
    it.choice.pause();
    CHECK_FALSE(it.choice.is_running());
    CHECK(it.choice.is_stale());
    wait_for(it.choice, it.session);
    CHECK_FALSE(it.choice.is_stale());
}

TEST_CASE("What was cut is taken off the stock in one step, and offcuts worth keeping join it") {
    Planned it;
    REQUIRE(it.choice.take_off_stock(it.session));
    const auto& card = it.session.kept().card;
    CHECK(find(it.session.kept(), wall::CardSheetId{"cream"})->count == 1);
    CHECK(find(it.session.kept(), wall::CardSheetId{"slate"})->count == 0);
    CHECK(std::ranges::any_of(card, [](const wall::CardSheet& sheet) { return sheet.offcut; }));
    CHECK(it.session.history().undo_label() == "Take the cut card off the stock");
    CHECK(std::ranges::none_of(it.session.kept().pieces, mounts::is_still_to_cut));
    CHECK_FALSE(it.choice.take_off_stock(it.session));
    it.session.undo();
    CHECK(it.session.kept() == cards());
}
