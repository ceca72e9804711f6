// The checker itself: it must find what is wrong.
#include "mounts/nest_replay.h"

#include "mounts/nest/nest.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::mounts;
using tests::replay;

namespace {

const NestTask kTask{
    .blanks = {{.id = "a", .size = {300, 400}}, {.id = "b", .size = {500, 200}, .may_turn = false}},
    .sheets = {{.id = "s", .size = {815, 1120}, .count = 1, .margin = 10}}};

NestPlan sound_plan() {
    return nest(kTask, {.seconds = 0, .rounds = 4}, [] { return true; });
}

/// What the checker says of the plan once it is spoiled.
template <class Spoil>
bool finds(const Spoil& spoil) {
    NestPlan plan = sound_plan();
    spoil(plan);
    return !replay(kTask, plan).empty();
}

}  // namespace

TEST_CASE("The checker finds nothing wrong with a sound plan", "[nest]") {
    CHECK(replay(kTask, sound_plan()).empty());
}

TEST_CASE("The checker finds cuts that do not go from edge to edge of what is in hand", "[nest]") {
    CHECK(finds([](NestPlan& plan) { plan.sheets[0].cuts.back().piece.size.width += 1; }));
    CHECK(finds([](NestPlan& plan) { plan.sheets[0].cuts.back().at += 1; }));
    CHECK(finds([](NestPlan& plan) {
        SheetCut& last = plan.sheets[0].cuts.back();
        last.upright = !last.upright;
    }));
    CHECK(finds([](NestPlan& plan) { plan.sheets[0].cuts.pop_back(); }));
    CHECK(finds([](NestPlan& plan) {
        std::vector<SheetCut>& cuts = plan.sheets[0].cuts;
        std::swap(cuts[0], cuts[1]);
        std::swap(cuts[0].number, cuts[1].number);
    }));
}

TEST_CASE("The checker finds blanks missing, twice, turned, or at a wrong size", "[nest]") {
    CHECK(finds([](NestPlan& plan) { plan.sheets[0].placed.pop_back(); }));
    CHECK(finds(
        [](NestPlan& plan) { plan.sheets[0].placed.push_back(plan.sheets[0].placed.front()); }));
    CHECK(finds([](NestPlan& plan) { plan.sheets.push_back(plan.sheets.front()); }));
    CHECK(finds([](NestPlan& plan) {
        for (PlacedBlank& placed : plan.sheets[0].placed)
            placed.turned = !placed.turned;
    }));
    CHECK(finds([](NestPlan& plan) { plan.sheets[0].placed[0].place.size.height -= 1; }));
    CHECK(finds([](NestPlan& plan) { plan.sheets[0].placed[0].place.left -= 1; }));
    CHECK(finds([](NestPlan& plan) { plan.left_out.push_back(0); }));
}

TEST_CASE("The checker finds offcuts and sums that are not so", "[nest]") {
    CHECK(finds([](NestPlan& plan) { plan.sheets[0].offcuts.pop_back(); }));
    CHECK(finds([](NestPlan& plan) { plan.sheets[0].offcuts[0].size.width += 1; }));
    CHECK(finds([](NestPlan& plan) { plan.waste_area += 100; }));
    CHECK(finds([](NestPlan& plan) { plan.waste += 0.01; }));
    CHECK(finds([](NestPlan& plan) { plan.bound = 2; }));
    CHECK(finds([](NestPlan& plan) { plan.count = 2; }));
}
