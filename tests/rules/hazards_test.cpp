// The hazards that this program is trusted to name, each planted on a wall of its own.
#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::FixtureType;
using wall::FurnitureType;
using wall::HangerType;
using wall::Severity;
using wall::Surface;

namespace {

/// A wall with one light piece called kelp, with acrylic, on strips, at the usual height: nothing
/// is wrong with it.
wall::Project sound_wall() {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1650, 1300}, {300, 400});
    make_light(project, "kelp", 0.4);
    return project;
}

struct Hazard {
    const char* name;
    const char* rule;
    Severity severity;
    void (*plant)(wall::Project&);
};

void on_surface(wall::Project& project, Surface surface) {
    project.room.surface = surface;
}

void with_hanger(wall::Project& project, const wall::Hanger& hanger) {
    piece_named(project, "kelp").hanger = hanger;
}

const Hazard kHazards[] = {
    {"an overlapping pair", "no-overlap", Severity::stop,
     [](wall::Project& project) {
         add_piece(project, "dune", {1900, 1300}, {300, 400});
     }},
    {"an overloaded strip", "weight-within-rating", Severity::stop,
     [](wall::Project& project) {
         make_light(project, "kelp", 3);
         piece_named(project, "kelp").fixing = wall::FixingTypeId{"strip_small"};
     }},
    {"more than strips may hold in all", "weight-within-rating", Severity::stop,
     [](wall::Project& project) { make_light(project, "kelp", 7.5); }},
    {"an overloaded hook", "weight-within-rating", Severity::stop,
     [](wall::Project& project) {
         make_light(project, "kelp", 4);
         with_hanger(project, {HangerType::sawtooth, {}, {}, {}, {}, {}});
         piece_named(project, "kelp").fixing = wall::FixingTypeId{"hook_small"};
     }},
    {"a heavy piece over a cot", "over-bed", Severity::stop,
     [](wall::Project& project) {
         add_furniture(project, FurnitureType::cot, {{1400, 0}, {2200, 900}});
         make_light(project, "kelp", 1);
     }},
    {"glass over a bed", "over-bed", Severity::stop,
     [](wall::Project& project) {
         add_furniture(project, FurnitureType::bed, {{1400, 0}, {2800, 1000}});
         frame_named(project, "kelp").glazing.material = {"glass"};
     }},
    {"heavy glass over a sofa", "over-seat", Severity::note,
     [](wall::Project& project) {
         add_furniture(project, FurnitureType::sofa, {{1400, 0}, {2800, 800}});
         frame_named(project, "kelp").glazing.material = {"glass"};
         piece_named(project, "kelp").weighed = units::Kilograms{12};
     }},
    {"a nail under a switch", "cable-zones", Severity::stop,
     [](wall::Project& project) {
         add_fixture(project, FixtureType::light_switch, {{1760, 2000}, {1840, 2080}});
         with_hanger(project, {HangerType::sawtooth, {}, {}, {}, {}, {}});
     }},
    {"a screw over a socket", "cable-zones", Severity::stop,
     [](wall::Project& project) {
         add_fixture(project, FixtureType::socket, {{1760, 300}, {1840, 380}});
         with_hanger(project, {HangerType::sawtooth, {}, {}, {}, {}, {}});
         piece_named(project, "kelp").fixing = wall::FixingTypeId{"screw"};
     }},
    {"a nail beside a corner of a British room", "cable-zones", Severity::mind,
     [](wall::Project& project) {
         project.room.cable_practice = wall::CablePractice::bs_7671;
         with_hanger(project, {HangerType::sawtooth, {}, {}, {}, {}, {}});
         piece_named(project, "kelp").at = geometry::Point<geometry::Wall>{0, 1300};
     }},
    {"strips above a radiator", "heat-and-steam", Severity::stop,
     [](wall::Project& project) {
         add_fixture(project, FixtureType::radiator, {{1500, 100}, {2100, 900}});
     }},
    {"strips in a bathroom", "heat-and-steam", Severity::mind,
     [](wall::Project& project) { project.room.use = wall::RoomUse::bathroom; }},
    {"strips on wallpaper", "surface-fit", Severity::stop,
     [](wall::Project& project) { on_surface(project, Surface::wallpaper); }},
    {"strips on fresh paint", "surface-fit", Severity::stop,
     [](wall::Project& project) { on_surface(project, Surface::fresh_paint); }},
    {"strips on brick", "surface-fit", Severity::stop,
     [](wall::Project& project) { on_surface(project, Surface::brick); }},
    {"a piece through a sloping ceiling", "inside-wall", Severity::stop,
     [](wall::Project& project) { project.room.outline = attic_of(3600, 800, 2400).room.outline; }},
    {"a piece across a door", "clear-of-furniture-and-fixtures", Severity::stop,
     [](wall::Project& project) {
         add_fixture(project, FixtureType::door, {{1900, 0}, {2800, 2000}});
     }},
    {"a piece behind a bookcase", "clear-of-furniture-and-fixtures", Severity::stop,
     [](wall::Project& project) {
         add_furniture(project, FurnitureType::bookcase, {{1400, 0}, {2200, 1350}});
     }},
    {"a piece behind a plant", "clear-of-furniture-and-fixtures", Severity::mind,
     [](wall::Project& project) {
         add_furniture(project, FurnitureType::plant, {{1900, 0}, {2200, 1350}});
     }},
    {"a very heavy piece", "heavy", Severity::mind,
     [](wall::Project& project) { piece_named(project, "kelp").weighed = units::Kilograms{25}; }},
    {"a large pane of thin glass", "glass-large", Severity::mind,
     [](wall::Project& project) {
         frame_named(project, "kelp").outside = {1200, 400};
         frame_named(project, "kelp").glazing.material = {"glass"};
     }},
    {"a cord shorter than its rings are apart", "hanger-fits", Severity::stop,
     [](wall::Project& project) {
         with_hanger(project, {HangerType::cord_one_hook, 100, 240, 230, {}, {}});
     }},
    {"a cord so long that its hook shows", "hanger-fits", Severity::stop,
     [](wall::Project& project) {
         with_hanger(project, {HangerType::cord_one_hook, 100, 200, 400, {}, {}});
     }},
    {"a cord too flat for its rings", "hanger-fits", Severity::mind,
     [](wall::Project& project) {
         with_hanger(project, {HangerType::cord_one_hook, 100, 240, 241, {}, {}});
     }},
    {"strips wider than the moulding", "strips-fit-the-back", Severity::stop,
     [](wall::Project& project) { frame_named(project, "kelp").moulding_width = 10; }},
    {"a print larger than its frame", "print-fits-frame", Severity::stop,
     [](wall::Project& project) {
         project.prints.push_back({{"kelp"}, "Kelp", {300, 400}, 250, {}, "", {}, {}});
         piece_named(project, "kelp").print = wall::PrintId{"kelp"};
     }},
    {"a window that does not cover its print", "mount-serves", Severity::stop,
     [](wall::Project& project) {
         project.prints.push_back({{"kelp"}, "Kelp", {200, 300}, 250, {}, "", {}, {}});
         piece_named(project, "kelp").print = wall::PrintId{"kelp"};
         wall::Mount mount;
         mount.id = {"white"};
         mount.overlap = 0;
         project.mounts.push_back(mount);
         piece_named(project, "kelp").mount = mount.id;
     }},
};

}  // namespace

TEST_CASE("The wall on which hazards are planted is sound") {
    CHECK(findings_on(sound_wall()).empty());
}

TEST_CASE("Every planted hazard is named as gravely as it is") {
    for (const Hazard& hazard : kHazards) {
        wall::Project project = sound_wall();
        hazard.plant(project);
        const std::vector<wall::Finding> findings = findings_of(hazard.rule, project);
        INFO(hazard.name);
        REQUIRE_FALSE(findings.empty());
        CHECK(findings.front().severity == hazard.severity);
        CHECK(std::ranges::find(findings.front().pieces, wall::PieceId{"kelp"}) !=
              findings.front().pieces.end());
        CHECK(findings.front().text.find("elp") != std::string::npos);
    }
}

TEST_CASE("All hazards of one wall are named together") {
    wall::Project project = sound_wall();
    for (const char* name :
         {"a heavy piece over a cot", "an overlapping pair", "an overloaded strip"})
        std::ranges::find(kHazards, std::string_view(name), &Hazard::name)->plant(project);
    add_piece(project, "reef", {2500, 1300}, {300, 400}).hanger.type = HangerType::sawtooth;
    add_fixture(project, FixtureType::light_switch, {{2610, 2000}, {2690, 2080}});
    for (const char* rule : {"no-overlap", "weight-within-rating", "over-bed", "cable-zones"}) {
        INFO(rule);
        CHECK_FALSE(findings_of(rule, project).empty());
    }
    CHECK(wall::has_stop(findings_on(project)));
}
