#include "spacing/separation.h"

#include "base/random.h"
#include "dense_quadratic.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>
#include <limits>

namespace wallwright::spacing {

namespace {

using test::Optimality;
using test::optimality;
using test::optimum_by_enumeration;

constexpr double kHeld = std::numeric_limits<double>::infinity();

struct Line {
    std::vector<Variable> variables;
    std::vector<Separation> separations;
};

/// Separations of any direction and sign, so that many lines cannot be kept at all.
Line any_line(std::uint64_t seed, std::size_t variables, std::size_t separations,
              double equal_share) {
    Random random(seed);
    Line line;
    for (std::size_t i = 0; i < variables; ++i)
        line.variables.push_back({random.uniform(-100, 100), random.uniform(0.5, 4)});
    while (line.separations.size() < separations) {
        const std::size_t left = random.below(variables);
        const std::size_t right = random.below(variables);
        if (left != right)
            line.separations.push_back(
                {left, right, random.uniform(-30, 80), random.uniform() < equal_share});
    }
    return line;
}

/// Separations that follow one hidden order, so that they can all be kept.
Line orderly_line(std::uint64_t seed, std::size_t variables, std::size_t separations) {
    Random random(seed);
    Line line;
    for (std::size_t i = 0; i < variables; ++i)
        line.variables.push_back(
            {random.uniform(0, 40.0 * static_cast<double>(variables)), random.uniform(0.5, 4)});
    while (line.separations.size() < separations) {
        const std::size_t left = random.below(variables);
        const std::size_t right = random.below(variables);
        if (left < right)
            line.separations.push_back({left, right, random.uniform(0, 120), false});
    }
    return line;
}

void require_optimal(const Line& line, const Placement& placement) {
    const Optimality found = optimality(line.variables, line.separations, placement.at);
    CHECK(found.shortfall < 1e-8);
    CHECK(found.residual < 1e-6);
    CHECK(found.least_push >= 0);
}

}  // namespace

TEST_CASE("Variables with nothing between them stay where they are wanted") {
    const std::vector<Variable> variables{{3, 1}, {-7.5, 2}};
    const Placement placement = separate(variables, {});
    CHECK(placement.at == std::vector<double>{3, -7.5});
    CHECK(placement.cost == 0);
    CHECK(placement.active.empty());
}

TEST_CASE("Two variables share the way apart by their weights") {
    const std::vector<Variable> variables{{0, 1}, {0, 3}};
    const std::vector<Separation> separations{{0, 1, 40}};
    const Placement placement = separate(variables, separations);
    CHECK(placement.at[0] == Approx(-30));
    CHECK(placement.at[1] == Approx(10));
    CHECK(placement.cost == Approx(30 * 30 + 3 * 10 * 10));
    CHECK(placement.active == std::vector<std::size_t>{0});
}

TEST_CASE("A separation that is kept anyway does not move anything") {
    const std::vector<Variable> variables{{0, 1}, {100, 1}};
    const Placement placement = separate(variables, std::vector<Separation>{{0, 1, 40}});
    CHECK(placement.at == std::vector<double>{0, 100});
    CHECK(placement.active.empty());
}

TEST_CASE("An equality pulls together as well as apart") {
    const std::vector<Variable> variables{{0, 1}, {100, 1}};
    const Placement placement = separate(variables, std::vector<Separation>{{0, 1, 40, true}});
    CHECK(placement.at[0] == Approx(30));
    CHECK(placement.at[1] == Approx(70));
    CHECK(placement.active == std::vector<std::size_t>{0});
}

TEST_CASE("A separation lets go again when later ones make it needless") {
    // 0 and 1 first meet; then 2 pulls 1 away from 0.
    const std::vector<Variable> variables{{0, 1}, {0, 1}, {300, 100}};
    const std::vector<Separation> separations{{0, 1, 10}, {1, 2, 200, true}};
    const Placement placement = separate(variables, separations);
    CHECK(placement.at[0] == Approx(0).margin(1e-9));
    CHECK(placement.at[1] == Approx((0 + 100 * 100) / 101.0));
    CHECK(placement.active == std::vector<std::size_t>{1});
}

TEST_CASE("A variable of infinite weight does not move at all") {
    const std::vector<Variable> variables{{0, 1}, {10, kHeld}, {20, 1}};
    const std::vector<Separation> separations{{0, 1, 40}, {1, 2, 40}, {0, 2, 100}};
    const Placement placement = separate(variables, separations);
    CHECK(placement.at[1] == 10);
    CHECK(placement.at[0] == Approx(-40));
    CHECK(placement.at[2] == Approx(60));
    CHECK(placement.cost == Approx(40 * 40 + 40 * 40));
}

TEST_CASE("Several held variables keep their own places") {
    const std::vector<Variable> variables{{0, kHeld}, {45, 1}, {100, kHeld}};
    const std::vector<Separation> separations{{0, 1, 50}, {1, 2, 50}, {0, 2, 100}, {0, 2, 101}};
    const Placement placement = separate(variables, separations);
    CHECK(placement.at == std::vector<double>{0, 50, 100});
    CHECK(placement.unsatisfiable == std::vector<std::size_t>{3});
}

TEST_CASE("Of separations that contradict each other the later one is left out and named") {
    const std::vector<Variable> variables{{0, 1}, {50, 1}, {90, 1}};
    const std::vector<Separation> separations{
        {0, 1, 40, true}, {1, 2, 40, true}, {0, 2, 90}, {2, 0, -80}, {2, 0, -79}};
    const Placement placement = separate(variables, separations);
    CHECK(placement.unsatisfiable == std::vector<std::size_t>{2, 4});
    CHECK(placement.at[1] - placement.at[0] == Approx(40));
    CHECK(placement.at[2] - placement.at[1] == Approx(40));
}

TEST_CASE("A cycle of separations that adds up to more than nothing cannot hold") {
    const std::vector<Variable> variables{{0, 1}, {0, 1}, {0, 1}};
    const std::vector<Separation> separations{{0, 1, 5}, {1, 2, 5}, {2, 0, 5}};
    CHECK(separate(variables, separations).unsatisfiable == std::vector<std::size_t>{2});
}

TEST_CASE("The same separation twice is no contradiction") {
    const std::vector<Variable> variables{{0, 1}, {0, 1}};
    const std::vector<Separation> separations{
        {0, 1, 10, true}, {0, 1, 10, true}, {1, 0, -10, true}, {0, 1, 10}};
    const Placement placement = separate(variables, separations);
    CHECK(placement.unsatisfiable.empty());
    CHECK(placement.at[1] - placement.at[0] == Approx(10));
}

TEST_CASE("The cost agrees with a dense solve that tries every set of active separations") {
    rc::prop("for any separations that can hold together", [](std::uint64_t seed) {
        const Line line = any_line(seed, 2 + seed % 4, 1 + seed / 8 % 7, 0.25);
        const auto expected = optimum_by_enumeration(line.variables, line.separations);
        const Placement placement = separate(line.variables, line.separations);
        RC_ASSERT(placement.unsatisfiable.empty() == expected.has_value());
        RC_PRE(expected.has_value());
        for (std::size_t i = 0; i < placement.at.size(); ++i)
            RC_ASSERT(std::abs(placement.at[i] - (*expected)[i]) < 1e-6);
    });
}

TEST_CASE("What is left out is just what cannot hold with those kept before it") {
    rc::prop("for any separations", [](std::uint64_t seed) {
        const Line line = any_line(seed, 3 + seed % 2, 4 + seed / 8 % 5, 0.5);
        const Placement placement = separate(line.variables, line.separations);
        std::vector<Separation> kept;
        std::vector<std::size_t> left_out;
        for (std::size_t i = 0; i < line.separations.size(); ++i) {
            kept.push_back(line.separations[i]);
            if (!optimum_by_enumeration(line.variables, kept)) {
                kept.pop_back();
                left_out.push_back(i);
            }
        }
        RC_ASSERT(placement.unsatisfiable == left_out);
    });
}

TEST_CASE("No multiplier is negative and no separation fails, whatever the line") {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        const Line line = orderly_line(seed, 10 + seed, 3 * (10 + seed));
        require_optimal(line, separate(line.variables, line.separations));
    }
}

TEST_CASE("Moving every wish moves every place by as much") {
    rc::prop("for any orderly line", [](std::uint64_t seed) {
        Line line = orderly_line(seed, 12, 30);
        const Placement before = separate(line.variables, line.separations);
        for (Variable& variable : line.variables)
            variable.wanted += 1234.5;
        const Placement after = separate(line.variables, line.separations);
        for (std::size_t i = 0; i < before.at.size(); ++i)
            RC_ASSERT(std::abs(after.at[i] - before.at[i] - 1234.5) < 1e-8);
    });
}

TEST_CASE("One more separation never lowers the cost") {
    rc::prop("for any orderly line", [](std::uint64_t seed) {
        const Line line = orderly_line(seed, 10, 25);
        double last = 0;
        for (std::size_t count = 0; count <= line.separations.size(); ++count) {
            const Placement placement =
                separate(line.variables, std::span(line.separations).first(count));
            RC_ASSERT(placement.cost >= last - 1e-7);
            last = placement.cost;
        }
    });
}

}  // namespace wallwright::spacing
