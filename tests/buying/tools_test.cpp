#include "buying/shopping.h"
#include "support/mount_scenes.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>

using namespace wallwright;
using units::Kilograms;

namespace {

std::vector<buying::Tool> tools_of(const wall::Project& project) {
    return buying::tool_list(project, rules::assess(project, scenes::small_catalogue()));
}

/// What it is for; empty where it is not on the list.
std::string why(const wall::Project& project, const std::string& part) {
    for (const buying::Tool& tool : tools_of(project))
        if (tool.title.find(part) != std::string::npos)
            return tool.why;
    return "";
}

wall::Project hung_by(wall::HangerType hanger, const char* fixing) {
    wall::Project project = scenes::wall_of(4000, 2500);
    wall::Piece& piece = scenes::add_piece(project, "kelp", {500, 1300}, {400, 500});
    piece.weighed = Kilograms{1};
    piece.hanger.type = hanger;
    piece.fixing = wall::FixingTypeId{fixing};
    return project;
}

}  // namespace

TEST_CASE("An empty wall takes no tools") {
    CHECK(tools_of(scenes::wall_of(4000, 2500)).empty());
}

TEST_CASE("Strips take a cloth and a clock, and nothing that pierces") {
    const wall::Project project = hung_by(wall::HangerType::strips, "strip_medium");
    CHECK_FALSE(why(project, "cloth").empty());
    CHECK(why(project, "clock").find("30 s") != std::string::npos);
    CHECK(why(project, "Detector").empty());
    CHECK(why(project, "goggles").empty());
}

TEST_CASE("What pierces brings a detector and goggles, each with its caution") {
    const wall::Project nails = hung_by(wall::HangerType::sawtooth, "hook_small");
    CHECK(why(nails, "Detector").find("should be, not where they are") != std::string::npos);
    CHECK_FALSE(why(nails, "goggles").empty());
    CHECK_FALSE(why(nails, "hammer").empty());
    CHECK(why(nails, "Drill").empty());
}

TEST_CASE("The drill goes by what the wall is made of") {
    wall::Project project = hung_by(wall::HangerType::sawtooth, "screw");
    CHECK(why(project, "Drill").find("nobody has said") != std::string::npos);
    project.room.core = wall::Core::masonry;
    CHECK_FALSE(why(project, "Hammer drill with a masonry bit").empty());
    project.room.core = wall::Core::wood;
    CHECK_FALSE(why(project, "wood bit").empty());
    project.room.core = wall::Core::lath;
    CHECK(why(project, "Drill").find("without hammering") != std::string::npos);
    project.room.surface = wall::Surface::tile;
    CHECK_FALSE(why(project, "tile bit").empty());
}

TEST_CASE("The datum decides the level, the marks the tape and the steps") {
    wall::Project project = hung_by(wall::HangerType::sawtooth, "hook_small");
    CHECK_FALSE(why(project, "Tape measure, 3 m, class II").empty());
    CHECK(why(project, "Steps").empty());
    CHECK_FALSE(why(project, "Spirit level").empty());
    project.datum.height = wall::DatumHeight::level_line;
    CHECK(why(project, "line laser").find("0.5 mm") != std::string::npos);
    project.pieces[0].at->y = 1900;
    CHECK_FALSE(why(project, "Steps").empty());
}

TEST_CASE("A line along a piece, and a floor measured at both ends, ask for a level line too") {
    wall::Project project = hung_by(wall::HangerType::sawtooth, "hook_small");
    scenes::add_hung(project, "dune", {1500, 1300}, {400, 500});
    REQUIRE(why(project, "line laser").empty());
    project.datum.floor = wall::EndHeights{1000, 1004};
    CHECK_FALSE(why(project, "line laser").empty());
    project.datum = {};
    project.datum.height = wall::DatumHeight::piece;
    project.datum.piece = project.pieces[1].id;
    CHECK_FALSE(why(project, "line laser").empty());
}

TEST_CASE("Studs make a wall a hollow one, of which nobody has said what it is made of") {
    wall::Project project = hung_by(wall::HangerType::two_rings, "screw");
    CHECK(why(project, "Stud finder").empty());
    // Under both of its rings, 320 mm apart about 700 mm.
    project.room.studs = wall::Studs{540, 320, 45};
    REQUIRE(project.room.core == wall::Core::unknown);
    CHECK_FALSE(why(project, "Stud finder").empty());
    CHECK(why(project, "Drill").find("through the board") != std::string::npos);
}

TEST_CASE("A heavy or a wide piece takes two people") {
    wall::Project project = hung_by(wall::HangerType::sawtooth, "screw");
    CHECK(why(project, "second person").empty());
    project.pieces[0].weighed = Kilograms{12};
    CHECK(why(project, "second person").find("Kelp") != std::string::npos);
}

TEST_CASE("Mounts still to be cut bring knives with their cautions") {
    wall::Project project = scenes::mounts_to_cut();
    CHECK(why(project, "Mount cutter").find("behind the blade") != std::string::npos);
    for (wall::Piece& piece : project.pieces)
        piece.mount_cut = true;
    CHECK(why(project, "Mount cutter").empty());
}
