// Against figures from outside: tests/data/aesthetics/README.md says where they come from.
#include "arrange/hand_laid.h"
#include "arrange/measures/ngo.h"
#include "arrange/published.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <fstream>
#include <map>

using namespace wallwright;
using namespace wallwright::hand_laid;

namespace {

struct Case {
    std::string name;
    Task task;
    Layout layout;
    WallRect frame;
    std::map<std::string, double> values;
};

/// The file's y goes down.
Case case_from(const std::string& name, const nlohmann::json& told) {
    Case one;
    one.name = name;
    one.frame = WallRect::at({0, 0}, {told.at("frame").at(0), told.at("frame").at(1)});
    std::vector<Size> sizes;
    std::vector<WallPoint> corners;
    for (const nlohmann::json& object : told.at("objects")) {
        sizes.push_back({object.at(2), object.at(3)});
        corners.push_back(
            {object.at(0), one.frame.height() - object.at(1).get<double>() - sizes.back().height});
    }
    one.task = task_of(sizes);
    one.task.gap = 50;
    one.layout = at(one.task, corners);
    one.values = told.at("values").get<std::map<std::string, double>>();
    return one;
}

/// By the letter that each name begins with.
std::map<char, Case> all_cases() {
    std::ifstream in(std::string(WW_TEST_DATA) + "/aesthetics/aesthetics_cases.json");
    REQUIRE(in);
    std::map<char, Case> cases;
    const nlohmann::json file = nlohmann::json::parse(in);
    for (const auto& [name, told] : file.items())
        cases.emplace(name.front(), case_from(name, told));
    REQUIRE(cases.size() == 5);
    return cases;
}

double of(const Case& one, std::string_view measure) {
    return value(measure, one.task, one.layout);
}

}  // namespace

TEST_CASE("Balance and equilibrium are those of the reference cases") {
    for (const auto& [letter, one] : all_cases()) {
        INFO(one.name);
        CHECK(arrange::balance(arrange::moments_of(one.layout, one.frame)) ==
              Approx(one.values.at("balance")).margin(1e-12));
        const arrange::View view(one.task, one.layout);
        REQUIRE(view.size() == one.layout.size());
        CHECK(arrange::equilibrium(view.mass(), one.frame) ==
              Approx(one.values.at("centre_of_mass")).margin(1e-12));
    }
}

TEST_CASE("The published measures are read as the reference reads them") {
    for (const auto& [letter, one] : all_cases()) {
        INFO(one.name);
        CHECK(published::equilibrium(one.layout, one.frame) ==
              Approx(one.values.at("equilibrium")).margin(1e-12));
        CHECK(published::regularity(one.layout) ==
              Approx(one.values.at("regularity")).margin(1e-12));
        CHECK(published::density(one.layout, one.frame) ==
              Approx(one.values.at("density")).margin(1e-12));
        CHECK(published::homogeneity(one.layout, one.frame) ==
              Approx(one.values.at("homogeneity")).margin(1e-12));
    }
}

TEST_CASE("Where the published measures are blind, ours see") {
    const std::map<char, Case> cases = all_cases();
    const Case& grid = cases.at('A');
    const Case& row = cases.at('B');
    const Case& scattered = cases.at('D');

    // Divided by the number of objects, equilibrium takes scattered pieces for nearly balanced.
    CHECK(published::equilibrium(scattered.layout, scattered.frame) > 0.95);
    const arrange::View view(scattered.task, scattered.layout);
    CHECK(arrange::equilibrium(view.mass(), scattered.frame) < 0.8);

    // Regularity counts starts, so a perfect grid has two thirds, as a row has.
    CHECK(published::regularity(grid.layout) == Approx(2.0 / 3));
    CHECK(of(grid, "alignment") == 1);
    CHECK(of(row, "alignment") == 1);
    CHECK(of(scattered, "alignment") < 0.5);

    // Homogeneity prefers scattered pieces to a row of three with even gaps.
    CHECK(published::homogeneity(scattered.layout, scattered.frame) >
          published::homogeneity(row.layout, row.frame));
    CHECK(of(row, "even_gaps") > of(scattered, "even_gaps"));

    // Density asks for a frame half full, so pieces that fill theirs are the worst.
    const arrange::View full(grid.task, grid.layout);
    CHECK(published::density(grid.layout, full.bounds()) < 0.3);
    CHECK(of(grid, "compactness") == Approx(1));
    CHECK(of(scattered, "compactness") < 0.6);
}

TEST_CASE(
    "Of the reference cases, grid and row come before the mixed group, scattered pieces last") {
    const std::map<char, Case> cases = all_cases();
    const auto points = [&cases](char letter) {
        return total(cases.at(letter).task, cases.at(letter).layout);
    };
    CHECK(std::min(points('A'), points('B')) > points('C'));
    CHECK(points('C') > points('D') + 10);
}
