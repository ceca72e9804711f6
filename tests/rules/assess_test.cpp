#include "rules/assess.h"

#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;

namespace {

/// One wall with stops, minds and notes.
wall::Project troubled_wall() {
    wall::Project project = wall_of(3600, 2400);
    add_furniture(project, wall::FurnitureType::sofa, {{700, 0}, {2600, 800}});
    add_fixture(project, wall::FixtureType::light_switch, {{2890, 1000}, {2960, 1080}});
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    add_piece(project, "dune", {1250, 1300}, {300, 400});
    add_piece(project, "tide", {1680, 1000}, {300, 400});
    add_hung(project, "reef", {2775, 1600}, {300, 400}).hanger.type = wall::HangerType::sawtooth;
    add_waiting(project, "foam", {300, 400});
    return project;
}

}  // namespace

TEST_CASE("A bare wall has nothing to say") {
    const Assessment assessment = assess(wall_of(3600, 2400), small_catalogue());
    CHECK(assessment.findings.empty());
    CHECK(assessment.groups.empty());
    CHECK(assessment.hangings.empty());
    CHECK(assessment.marks.marks.empty());
}

TEST_CASE("One well hung piece has nothing to say") {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1650, 1300}, {300, 400});
    make_light(project, "kelp", 0.5);
    CHECK(findings_on(project).empty());
}

TEST_CASE("Stops come before minds and minds before notes") {
    const std::vector<wall::Finding> findings = findings_on(troubled_wall());
    CHECK(std::ranges::is_sorted(findings, {}, &wall::Finding::severity));
    CHECK(findings.front().severity == wall::Severity::stop);
    CHECK(findings.back().severity == wall::Severity::note);
}

TEST_CASE("Within a severity findings come in the order of the rules") {
    const auto place_in_table = [](const wall::Finding& finding) {
        const auto rules = all_rules();
        const auto rule = std::ranges::find(rules, finding.rule, &Rule::name);
        REQUIRE(rule != rules.end());
        return std::pair(finding.severity, rule - rules.begin());
    };
    const std::vector<wall::Finding> findings = findings_on(troubled_wall());
    CHECK(findings.size() >= 5);
    CHECK(std::ranges::is_sorted(findings, {}, place_in_table));
}

TEST_CASE("No two findings say the same") {
    const std::vector<wall::Finding> findings = findings_on(troubled_wall());
    for (const wall::Finding& finding : findings)
        CHECK(std::ranges::count(findings, finding.text, &wall::Finding::text) == 1);
}

TEST_CASE("Groups, hangings, zones and marks are of the same wall") {
    const wall::Project project = troubled_wall();
    const Assessment assessment = assess(project, small_catalogue());
    CHECK(assessment.groups.size() == 3);
    CHECK(assessment.hangings.size() == 4);
    CHECK(assessment.zones.size() == 2);
    const auto marked = [&assessment](const char* id) {
        return std::ranges::count(assessment.marks.marks, wall::PieceId{id}, &hanging::Mark::piece);
    };
    CHECK(marked("kelp") > 0);
    CHECK(marked("reef") == 0);  // It hangs.
    CHECK(marked("foam") == 0);  // It waits.
}

TEST_CASE("A gap wide for one style holds a group in another") {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    add_piece(project, "dune", {1450, 1300}, {300, 400});
    CHECK(assess(project, small_catalogue()).groups.size() == 2);
    project.style.gap = 80;
    CHECK(assess(project, small_catalogue()).groups.size() == 1);
}

TEST_CASE("The person's own fixing counts before the catalogue's of that name") {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1650, 1300}, {300, 400}).fixing = wall::FixingTypeId{"strip_small"};
    make_light(project, "kelp", 2);
    CHECK(findings_of("weight-within-rating", project).size() == 1);
    project.own.fixings.push_back({{"strip_small"},
                                   "My strips",
                                   wall::FixingKind::strip_pair,
                                   {3},
                                   {16, 46},
                                   "its packet",
                                   {}});
    CHECK(findings_of("weight-within-rating", project).empty());
}
