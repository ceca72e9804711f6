// The search against proven optima, from GLPK's branch and cut.
#include "arrange/pack_until.h"
#include "arrange/packing_cases.h"
#include "arrange/packing_model.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::arrange;

namespace {

PackingGoal goal_of(std::uint64_t which) {
    PackingGoal goal;
    if (which % 3 == 0) {
        goal = {.width = 0.5, .height = 0.1, .over = 3, .height_free = 700};
    } else {
        goal.width = 1;
        goal.height = static_cast<double>(which % 3);
    }
    return goal;
}

void check_against_glpk(std::uint64_t seed, std::size_t count) {
    Random random(seed);
    const std::vector<Block> blocks = tests::random_blocks(count, seed % 2 == 0, random);
    const PackingGoal goal = goal_of(seed);
    CAPTURE(seed, count);
    const tests::Optimum optimum = tests::least_by_glpk(blocks, goal, 60);
    REQUIRE(optimum.proven);
    CHECK(tests::best_of_runs(8, blocks, goal, 1).cost == Approx(optimum.cost).epsilon(1e-6));
}

}  // namespace

TEST_CASE("The search finds what branch and cut proves to be the least, for two to five blocks") {
    for (std::uint64_t seed = 1; seed <= 48; ++seed)
        check_against_glpk(seed, 2 + seed % 4);
}

TEST_CASE("The search finds what branch and cut proves to be the least, for six blocks") {
    for (std::uint64_t seed = 101; seed <= 104; ++seed)
        check_against_glpk(seed, 6);
}
