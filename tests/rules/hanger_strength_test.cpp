#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::HangerType;
using wall::Severity;

namespace {

/// Kelp, 300 mm wide, with 14 mm of wood behind its rebate; a scale's 2 % are added again.
wall::Project kelp_of(double high_kg, HangerType hanger) {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    make_light(project, "kelp", high_kg / 1.02);
    piece_named(project, "kelp").hanger.type = hanger;
    return project;
}

constexpr const char* kRule = "hanger-strength";

}  // namespace

TEST_CASE("A sawtooth takes five pounds") {
    CHECK(findings_of(kRule, kelp_of(2.26, HangerType::sawtooth)).empty());
    const wall::Finding found = only_finding(kRule, kelp_of(2.5, HangerType::sawtooth));
    CHECK(found.severity == Severity::mind);
    CHECK(found.text ==
          "Kelp weighs up to 2.50 kg and hangs by a sawtooth; over 2.27 kg, give it two rings.");
    CHECK(*found.wanted == Approx(2.268).margin(0.001));
}

TEST_CASE("A sawtooth does not keep a wide frame level, turned or not") {
    wall::Project project = kelp_of(1, HangerType::sawtooth);
    frame_named(project, "kelp").outside.width = 400;
    CHECK(findings_of(kRule, project).empty());
    frame_named(project, "kelp").outside = {300, 500};
    CHECK(findings_of(kRule, project).empty());
    piece_named(project, "kelp").turned = true;
    CHECK(only_finding(kRule, project).text ==
          "Kelp is 500 mm wide and hangs by one sawtooth, on which a frame over 400 mm wide does "
          "not stay level; give it two rings.");
}

TEST_CASE("Keyholes take seven kilograms") {
    CHECK(findings_of(kRule, kelp_of(6.9, HangerType::keyholes)).empty());
    const wall::Finding found = only_finding(kRule, kelp_of(7.5, HangerType::keyholes));
    CHECK(found.severity == Severity::mind);
    CHECK(found.text ==
          "Kelp weighs up to 7.50 kg and hangs by keyholes; over 7.00 kg, give it two rings.");
}

TEST_CASE("Rings want wood for their screws under a heavy piece, with a cord or without") {
    for (const HangerType type :
         {HangerType::two_rings, HangerType::cord_one_hook, HangerType::cord_two_hooks}) {
        CHECK(findings_of(kRule, kelp_of(8.9, type)).empty());
        wall::Project project = kelp_of(10.2, type);
        const wall::Finding found = only_finding(kRule, project);
        CHECK(found.severity == Severity::mind);
        CHECK(found.text ==
              "Kelp weighs up to 10.20 kg, and its moulding has only 14 mm behind the rebate for "
              "the screws of its rings; over 10.00 kg, have a framer strengthen the back and set "
              "rings with two holes.");
        frame_named(project, "kelp").moulding_width = 21;
        CHECK(only_finding(kRule, project).severity == Severity::note);
    }
}

TEST_CASE(
    "Heavy frames are looked at by a framer, all in one note, up to where a professional is") {
    wall::Project project = kelp_of(9.5, HangerType::two_rings);
    add_piece(project, "dune", {1360, 1300}, {300, 400}).hanger.type = HangerType::two_rings;
    make_light(project, "dune", 9.5);
    const wall::Finding found = only_finding(kRule, project);
    CHECK(found.severity == Severity::note);
    CHECK(found.pieces.size() == 2);
    CHECK(found.text ==
          "Kelp and Dune weigh over 9.00 kg; have a framer look at the corner joints, and at what "
          "the hanger is screwed into.");
    piece_named(project, "dune").weighed = units::Kilograms{21};
    frame_named(project, "dune").moulding_width = 30;
    CHECK(only_finding(kRule, project).pieces == std::vector<wall::PieceId>{{"kelp"}});
    CHECK(findings_of("heavy", project).size() == 1);
}

TEST_CASE("Strips have their own bounds") {
    CHECK(findings_of(kRule, kelp_of(9.5, HangerType::strips)).empty());
}
