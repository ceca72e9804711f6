#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::Severity;

namespace {

wall::Project one_piece(double kg) {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    make_light(project, "kelp", kg);
    return project;
}

}  // namespace

TEST_CASE("A strip loaded beyond its rating with margin is a stop") {
    wall::Project project = one_piece(2);
    piece_named(project, "kelp").fixing = wall::FixingTypeId{"strip_small"};
    const std::vector<wall::Finding> findings = findings_of("weight-within-rating", project);
    REQUIRE_FALSE(findings.empty());
    CHECK(findings.front().severity == Severity::stop);
    CHECK(findings.front().pieces == std::vector<wall::PieceId>{{"kelp"}});
    CHECK(findings.front().unit == "kg");

    // Two pairs rated 0.4 kg carry 0.533 kg with a margin of 1.5.
    make_light(project, "kelp", 0.5);
    CHECK(findings_of("weight-within-rating", project).empty());
}

TEST_CASE("A cord shorter than the rings are apart is a stop") {
    wall::Project project = one_piece(1);
    piece_named(project, "kelp").hanger = {wall::HangerType::cord_one_hook, 100, 240, 230, {}, {}};
    CHECK(only_finding("hanger-fits", project).severity == Severity::stop);
    piece_named(project, "kelp").hanger.cord_length = 260;
    CHECK(findings_of("hanger-fits", project).empty());
}

TEST_CASE("A strip wider than the moulding is a stop") {
    wall::Project project = one_piece(0.5);
    frame_named(project, "kelp").moulding_width = 10;
    CHECK(findings_of("strips-fit-the-back", project).front().severity == Severity::stop);
    frame_named(project, "kelp").moulding_width = 25;
    CHECK(findings_of("strips-fit-the-back", project).empty());
}

TEST_CASE("Strips that are not in the drawer are worth a note") {
    wall::Project project = one_piece(0.5);
    project.stock.push_back({{"strip_small"}, 1, {}});
    CHECK(only_finding("fixings-in-stock", project).severity == Severity::note);
    project.stock.front().count = 20;
    CHECK(findings_of("fixings-in-stock", project).empty());
}

TEST_CASE("Whatever choosing the fixings brought to light reaches the person once") {
    wall::Project project = one_piece(12);
    add_piece(project, "dune", {1500, 1300}, {300, 400}).hanger = {
        wall::HangerType::cord_one_hook, 100, 240, 230, {}, {}};
    add_piece(project, "tide", {2000, 1300}, {300, 400});
    frame_named(project, "tide").moulding_width = 10;
    project.stock.push_back({{"strip_large"}, 1, {}});
    const Assessment assessment = assess(project, small_catalogue());
    int said = 0;
    for (const hanging::Hanging& hanging : assessment.hangings)
        for (const wall::Finding& finding : hanging.findings) {
            ++said;
            CHECK(std::ranges::count(assessment.findings, finding) == 1);
        }
    CHECK(said >= 4);
}

TEST_CASE("The same note about several pieces is said once, with all their titles") {
    wall::Project project = one_piece(0.5);
    add_piece(project, "dune", {1500, 1300}, {300, 400});
    for (const std::string name : {"kelp", "dune"}) {
        make_light(project, name, 0.5);
        piece_named(project, name).hanger = {wall::HangerType::sawtooth, 5, {}, {}, {}, {}};
        piece_named(project, name).fixing = wall::FixingTypeId{"hook_small"};
    }
    const wall::Finding note = only_finding("hanger-fits", project);
    CHECK(note.severity == Severity::note);
    CHECK(note.pieces == std::vector<wall::PieceId>{{"kelp"}, {"dune"}});
    CHECK(note.text.find("Kelp and Dune: the hook's plate") == 0);
}
