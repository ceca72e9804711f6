// What is true of a wall and of those who may pierce it: pipes, old coatings, holes, sun,
// earthquakes.
#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::FixtureType;
using wall::Severity;
using wall::Surface;

namespace {

/// Kelp and Dune, light and with acrylic; Kelp on a nail, Dune on strips.
wall::Project two_pieces() {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    add_piece(project, "dune", {1360, 1300}, {300, 400});
    make_light(project, "kelp", 0.4);
    make_light(project, "dune", 0.4);
    hang_on_a_nail(project, "kelp");
    return project;
}

const std::vector<wall::PieceId> kKelp{{"kelp"}};
const std::vector<wall::PieceId> kDune{{"dune"}};

}  // namespace

TEST_CASE("Pipes may run half a metre above a radiator, and only what pierces minds them") {
    wall::Project project = two_pieces();
    add_fixture(project, FixtureType::radiator, {{900, 100}, {1800, 1250}});
    const wall::Finding found = only_finding("pipes", project);
    CHECK(found.severity == Severity::mind);
    CHECK(found.pieces == kKelp);
    CHECK(found.text ==
          "What holds Kelp goes into the wall above the radiator, where water pipes may run; use a "
          "detector that shows pipes, or hang elsewhere or by strips.");
    project.room.fixtures.front().place.max.y = 1150;
    CHECK(findings_of("pipes", project).empty());
    project.room.fixtures.front().place.max.y = 1250;
    project.room.fixtures.front().place.min.x = 1260;
    CHECK(findings_of("pipes", project).empty());
    project.room.fixtures.front().place.min.x = 1240;
    CHECK(findings_of("pipes", project).size() == 1);
    project.room.fixtures.front().other_side = true;
    CHECK(findings_of("pipes", project).size() == 1);
    project.room.thickness = 150;
    CHECK(findings_of("pipes", project).empty());
}

TEST_CASE("Below a basin pipes run down to the floor") {
    wall::Project project = two_pieces();
    piece_named(project, "kelp").at = geometry::Point<geometry::Wall>{1000, 100};
    add_fixture(project, FixtureType::basin, {{900, 700}, {1500, 850}});
    CHECK(only_finding("pipes", project).text ==
          "What holds Kelp goes into the wall below or beside the basin, where water pipes may "
          "run; use a detector that shows pipes, or hang elsewhere or by strips.");
    piece_named(project, "kelp").at = geometry::Point<geometry::Wall>{1000, 1300};
    CHECK(findings_of("pipes", project).empty());
}

// HSE, Asbestos Essentials: textured coatings from before 2000.
TEST_CASE("A textured coating may hold asbestos unless it is from 2000 or later") {
    wall::Project project = two_pieces();
    project.room.surface = Surface::textured;
    const wall::Finding found = only_finding("old-coatings", project);
    CHECK(found.severity == Severity::mind);
    CHECK(found.pieces == kKelp);
    CHECK(found.text ==
          "A textured coating of an age that nobody has said may hold asbestos, and what holds "
          "Kelp goes through it; have it sampled first, or hang by what leaves it whole.");
    project.room.built = 1999;
    CHECK(findings_of("old-coatings", project).size() == 1);
    project.room.built = 2000;
    CHECK(findings_of("old-coatings", project).empty());
}

// US EPA, 40 CFR 745 subpart E: homes built before 1978.
TEST_CASE("Paint from before 1978 may hold lead, where there is paint") {
    wall::Project project = two_pieces();
    project.room.built = 1977;
    CHECK(only_finding("old-coatings", project).text ==
          "Paint from 1977 may hold lead, and what holds Kelp goes through it; test it, keep the "
          "dust damp, wipe it up, and neither sand nor sweep it dry.");
    project.room.surface = Surface::brick;
    CHECK(findings_of("old-coatings", project).empty());
    project.room.surface = Surface::painted;
    project.room.built = 1978;
    CHECK(findings_of("old-coatings", project).empty());
    project.room.built = {};
    CHECK(findings_of("old-coatings", project).empty());
    project.room.built = 1930;
    piece_named(project, "kelp").state = wall::PieceState::hung;
    CHECK(findings_of("old-coatings", project).empty());
}

TEST_CASE("Nothing pierces a wall that is not to be pierced, but for what hangs already") {
    wall::Project project = two_pieces();
    project.room.no_holes = true;
    const wall::Finding found = only_finding("no-holes", project);
    CHECK(found.severity == Severity::stop);
    CHECK(found.pieces == kKelp);
    CHECK(found.text ==
          "This wall is not to be pierced, and what holds Kelp goes into it; hang by strips, or "
          "ask whose wall it is.");
    project.room.rail = 1600;  // Below the top of both.
    CHECK(only_finding("no-holes", project).text == found.text);
    project.room.rail = 2200;
    CHECK(only_finding("no-holes", project).text ==
          "This wall is not to be pierced, and what holds Kelp goes into it; hang by strips or the "
          "picture rail, or ask whose wall it is. The rail takes no sawtooth, no keyholes and no "
          "cord over two hooks: give Kelp two rings, each for a cord of its own.");
    for (const wall::HangerType type :
         {wall::HangerType::keyholes, wall::HangerType::cord_two_hooks}) {
        wall::Project other = project;
        piece_named(other, "kelp").hanger.type = type;
        piece_named(other, "kelp").fixing = wall::FixingTypeId{"screw"};
        CHECK(only_finding("no-holes", other).text.find("give Kelp two rings") !=
              std::string::npos);
    }
    wall::Project ringed = project;
    piece_named(ringed, "kelp").hanger.type = wall::HangerType::two_rings;
    CHECK(only_finding("no-holes", ringed).text.find("two rings") == std::string::npos);
    piece_named(project, "kelp").state = wall::PieceState::hung;
    CHECK(findings_of("no-holes", project).empty());
}

TEST_CASE("What the wall is made of is asked for once something goes into it") {
    wall::Project project = two_pieces();
    CHECK(only_finding("wall-known", project).severity == Severity::note);
    CHECK(only_finding("wall-known", project).pieces == kKelp);
    project.room.core = wall::Core::masonry;
    CHECK(findings_of("wall-known", project).empty());
    project.room.core = wall::Core::unknown;
    project.room.surface = Surface::wood;
    CHECK(findings_of("wall-known", project).empty());
}

TEST_CASE("On a sunny wall strips let go and all that hangs there fades") {
    wall::Project project = two_pieces();
    CHECK(findings_of("in-sun", project).empty());
    project.room.in_sun = true;
    const std::vector<wall::Finding> found = findings_of("in-sun", project);
    REQUIRE(found.size() == 2);
    CHECK(found[0].severity == Severity::mind);
    CHECK(found[0].pieces == kDune);
    CHECK(found[0].text ==
          "The sun warms this wall, and warm strips let go; hang Dune by hooks or screws.");
    CHECK(found[1].severity == Severity::note);
    CHECK(found[1].pieces.size() == 2);
}

// Earthquake Country Alliance, Secure your hanging objects: up to 20 lb (9.07 kg) putty at all
// corners; up to 50 lb (22.7 kg) a closed hanger in a stud; over that a professional.
TEST_CASE("Where the ground shakes light pieces want closed hooks or putty") {
    wall::Project project = two_pieces();
    project.room.shakes = true;
    const wall::Finding found = only_finding("earthquake", project);
    CHECK(found.severity == Severity::mind);
    CHECK(found.pieces.size() == 2);
    CHECK(found.text ==
          "The ground shakes here, and Kelp and Dune can jump off; use closed hooks, or hold all "
          "four corners with putty too.");
    wall::FixingType closed = *find(small_catalogue(), wall::FixingTypeId{"hook_small"});
    closed.closed = true;
    project.own.fixings = {closed};
    piece_named(project, "kelp").hanger.type = wall::HangerType::two_rings;
    CHECK(findings_of("hanger-fits", project).empty());
    CHECK(only_finding("earthquake", project).pieces == kDune);
}

TEST_CASE("Where the ground shakes heavier pieces want closed hooks in studs or in a solid wall") {
    wall::Project project = two_pieces();
    project.room.shakes = true;
    std::erase_if(project.pieces, [](const wall::Piece& piece) { return piece.id.text == "dune"; });
    wall::FixingType closed = *find(small_catalogue(), wall::FixingTypeId{"screw"});
    closed.closed = true;
    closed.rated = {60};
    project.own.fixings = {closed};
    project.room.core = wall::Core::plasterboard;
    wall::Piece& kelp = piece_named(project, "kelp");
    kelp.fixing = closed.id;
    kelp.hanger.type = wall::HangerType::two_rings;
    kelp.weighed = units::Kilograms{10};
    const wall::Finding found = only_finding("earthquake", project);
    CHECK(found.severity == Severity::mind);
    CHECK(found.text ==
          "Where the ground shakes, pieces over 9.07 kg hang from closed hooks in studs; Kelp does "
          "not.");
    // The rings of a frame of 300 mm are taken to be 240 mm apart.
    project.room.studs = wall::Studs{70, 240, 45};
    CHECK(findings_of("earthquake", project).empty());
    project.room.studs = {};
    project.room.core = wall::Core::unknown;
    CHECK(findings_of("earthquake", project).size() == 1);
    for (const wall::Core solid : {wall::Core::masonry, wall::Core::concrete, wall::Core::wood}) {
        project.room.core = solid;
        CHECK(findings_of("earthquake", project).empty());
    }
    project.own.fixings.front().closed = false;
    CHECK(only_finding("earthquake", project).text ==
          "Where the ground shakes, pieces over 9.07 kg hang from closed hooks screwed into the "
          "wood; Kelp does not.");
    project.room.core = wall::Core::masonry;
    CHECK(only_finding("earthquake", project).text ==
          "Where the ground shakes, pieces over 9.07 kg hang from closed hooks in plugs; Kelp does "
          "not.");
    project.room.core = wall::Core::plasterboard;
    kelp.weighed = units::Kilograms{30};
    CHECK(findings_of("earthquake", project).empty());
    CHECK(findings_of("heavy", project).size() == 1);
}

TEST_CASE("What cannot be replaced is kept from heat, sun and steam") {
    wall::Project project = two_pieces();
    piece_named(project, "kelp").irreplaceable = true;
    CHECK(findings_of("irreplaceable", project).empty());
    add_fixture(project, FixtureType::radiator, {{900, 100}, {1800, 900}});
    project.room.in_sun = true;
    project.room.use = wall::RoomUse::bathroom;
    const wall::Finding found = only_finding("irreplaceable", project);
    CHECK(found.severity == Severity::mind);
    CHECK(found.text ==
          "Kelp cannot be replaced and hangs over a radiator, in the sun and in the steam of a "
          "bathroom; hang it elsewhere.");
}

TEST_CASE(
    "A gap that tape and pencil leave open farther than is seen is a note with a better way") {
    wall::Project project = two_pieces();
    CHECK(findings_of("gap-spread", project).empty());
    project.tape = wall::TapeClass::three;
    const wall::Finding found = only_finding("gap-spread", project);
    CHECK(found.severity == Severity::note);
    CHECK(found.pieces.size() == 2);
    CHECK(found.unit == "mm");
    CHECK(found.wanted == 2);
    // Class III: 0.6 + 0.4 x 2 + 0.3 mm, with a pencil stroke of 0.5; of two marks.
    CHECK(*found.measured == Approx(std::sqrt(2) * std::hypot(1.7, 0.5)));
    CHECK(found.text ==
          "Measured from the floor and the left corner, the gap between Kelp and Dune may come out "
          "2.5 mm off, over the 2 mm that the eye lets pass; a tape of class II leaves +-1.5 mm.");
}

TEST_CASE("Where a better tape is not enough the nearer corner is named") {
    wall::Project project = two_pieces();
    project.room.outline = wall_of(9000, 2400).room.outline;
    project.tape = wall::TapeClass::one;
    project.datum.side = wall::DatumSide::right;
    project.style.gap_tolerance = 1;
    CHECK(only_finding("gap-spread", project).text.find("the left corner leaves +-0.9 mm") !=
          std::string::npos);
}
