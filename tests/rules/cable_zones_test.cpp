#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::Severity;

namespace {

using At = geometry::Point<geometry::Wall>;

constexpr const char* kRule = "cable-zones";

/// A wall 3600 by 2400 mm wired as in Britain, and a piece on one hook, at the middle of its width
/// and 15 mm under its top.
wall::Project hook_at(At hook) {
    wall::Project project = wall_of(3600, 2400);
    project.room.cable_practice = wall::CablePractice::bs_7671;
    add_piece(project, "kelp", {hook.x - 150, hook.y + 15 - 400}, {300, 400});
    make_light(project, "kelp", 1);
    hang_on_a_nail(project, "kelp");
    return project;
}

/// The same with a switch 40 mm wide, its middle at x = 1150.
wall::Project hook_near_switch(At hook) {
    wall::Project project = hook_at(hook);
    add_fixture(project, wall::FixtureType::light_switch, {{1130, 1000}, {1170, 1080}});
    return project;
}

}  // namespace

TEST_CASE("A nail in line with a switch is a stop with the way out") {
    const wall::Finding finding = only_finding(kRule, hook_near_switch({1145, 1785}));
    CHECK(finding.severity == Severity::stop);
    CHECK(finding.place.contains(At{1145, 1785}));
    CHECK(finding.text ==
          "A hook of Kelp goes in line with the switch, where a cable should run (BS 7671 "
          "522.6.202(i)); move it 16 mm to "
          "the left and use a detector, as zones only say where cables should be.");
}

TEST_CASE("The zone of a switch is as wide as the switch") {
    CHECK(findings_of(kRule, hook_near_switch({1130, 1785})).size() == 1);
    CHECK(findings_of(kRule, hook_near_switch({1129, 1785})).empty());
    CHECK(findings_of(kRule, hook_near_switch({1170, 1785})).size() == 1);
    CHECK(findings_of(kRule, hook_near_switch({1171, 1785})).empty());
}

// The plate of the hook in these tests is 25 mm high, and its nails may be anywhere in it.
TEST_CASE("A nail level with a socket is a stop as well") {
    wall::Project project = hook_at({2000, 1500});
    add_fixture(project, wall::FixtureType::socket, {{600, 1480}, {680, 1560}});
    CHECK(only_finding(kRule, project).severity == Severity::stop);
    project.room.fixtures.front().place = {{600, 1526}, {680, 1606}};
    CHECK(findings_of(kRule, project).empty());
}

TEST_CASE("A nail within 150 mm of the top of the wall is a thing to mind") {
    // BS 7671 522.6.202(i): within 150 mm of the top of the wall.
    const wall::Finding finding = only_finding(kRule, hook_at({1500, 2226}));
    CHECK(finding.severity == Severity::mind);
    CHECK(finding.text ==
          "A hook of Kelp goes where a cable may run, within 150 mm of the top of the wall (BS "
          "7671 522.6.202(i)); move it 2 "
          "mm down and use a detector, as zones only say where cables should be.");
    CHECK(findings_of(kRule, hook_at({1500, 2224})).empty());
}

TEST_CASE("A nail within 150 mm of a corner of the room is a thing to mind") {
    // BS 7671 522.6.202(i): within 150 mm of an angle formed by two adjoining walls.
    wall::Project project = hook_at({150, 1800});
    CHECK(only_finding(kRule, project).severity == Severity::mind);
    CHECK(findings_of(kRule, hook_at({151, 1800})).empty());
}

TEST_CASE("In a German kitchen the band from 1000 to 1300 mm is a zone") {
    // DIN 18015-3: the middle zone of kitchens and workrooms, 1000 to 1300 mm above the floor.
    const auto findings_in = [](wall::RoomUse use, double height) {
        wall::Project project = hook_at({1500, height});
        project.room.cable_practice = wall::CablePractice::din_18015_3;
        project.room.use = use;
        return findings_of(kRule, project);
    };
    REQUIRE(findings_in(wall::RoomUse::kitchen, 1000).size() == 1);
    CHECK(findings_in(wall::RoomUse::kitchen, 975).size() == 1);
    CHECK(findings_in(wall::RoomUse::kitchen, 1000).front().severity == Severity::mind);
    CHECK(findings_in(wall::RoomUse::kitchen, 1300).size() == 1);
    CHECK(findings_in(wall::RoomUse::kitchen, 974).empty());
    CHECK(findings_in(wall::RoomUse::kitchen, 1301).empty());
    CHECK(findings_in(wall::RoomUse::living, 1150).empty());
}

TEST_CASE("Where no practice is known a switch still warns") {
    wall::Project project = hook_near_switch({1145, 1785});
    project.room.cable_practice = wall::CablePractice::none_known;
    CHECK(only_finding(kRule, project).severity == Severity::stop);
    CHECK(findings_of(kRule, hook_at({1500, 1785})).empty());
}

TEST_CASE("Strips pierce nothing") {
    wall::Project project = hook_near_switch({1145, 1785});
    piece_named(project, "kelp").hanger.type = wall::HangerType::strips;
    CHECK(findings_of(kRule, project).empty());
}

TEST_CASE("A hook that is in the wall already is worth a note") {
    wall::Project project = hook_near_switch({1145, 1785});
    piece_named(project, "kelp").state = wall::PieceState::hung;
    const wall::Finding finding = only_finding(kRule, project);
    CHECK(finding.severity == Severity::note);
    CHECK(finding.text ==
          "A hook of Kelp sits in line with the switch, where a cable should run (BS 7671 "
          "522.6.202(i)); use a detector "
          "before driving another there.");
}

TEST_CASE("Of two hooks the one in line with a switch is named") {
    // The left ring is in the corner's zone, the right one above the switch.
    wall::Project project = hook_near_switch({650, 1785});
    wall::Piece& kelp = piece_named(project, "kelp");
    frame_named(project, "kelp").outside = {1200, 400};
    kelp.at = At{50, 1400};
    kelp.hanger = {wall::HangerType::two_rings, 20, 1000, {}, {}, {}};
    const wall::Finding finding = only_finding(kRule, project);
    CHECK(finding.severity == Severity::stop);
    CHECK(finding.place.contains(At{1150, 1780}));
    // To the left the other hook would come deeper into the corner, so the way leads to the right:
    // clear of both.
    CHECK(finding.text ==
          "A hook of Kelp goes in line with the switch, where a cable should run (BS 7671 "
          "522.6.202(i)); move it 21 mm to "
          "the right and use a detector, as zones only say where cables should be.");
}

TEST_CASE("Where no straight way leads out of the zones the piece is to hang by strips") {
    wall::Project project = hook_near_switch({150, 1785});
    project.room.outline.corners = {{0, 0}, {300, 0}, {300, 2400}, {0, 2400}};
    project.room.fixtures.front().place = {{130, 1000}, {170, 1080}};
    CHECK(only_finding(kRule, project).text ==
          "A hook of Kelp goes in line with the switch, where a cable should run (BS 7671 "
          "522.6.202(i)); hang it by strips "
          "or elsewhere.");
}
