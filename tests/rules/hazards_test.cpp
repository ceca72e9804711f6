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

/// On one nailed hook from a sawtooth, so that something goes into the wall.
void nailed(wall::Project& project) {
    hang_on_a_nail(project, "kelp");
}

void with_hanger(wall::Project& project, const wall::Hanger& hanger) {
    piece_named(project, "kelp").hanger = hanger;
}

/// One cord from the middle of the piece up to a rail.
void from_the_rail(wall::Project& project, const std::string& id) {
    hang_from_the_rail(project, id, {HangerType::cord_one_hook, 100, 200, 240, {}, {}});
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
    {"a nail above a radiator, where its pipes may be", "pipes", Severity::mind,
     [](wall::Project& project) {
         nailed(project);
         add_fixture(project, FixtureType::radiator, {{1500, 100}, {2100, 1250}});
     }},
    {"a nail below a basin", "pipes", Severity::mind,
     [](wall::Project& project) {
         nailed(project);
         piece_named(project, "kelp").at = geometry::Point<geometry::Wall>{1650, 300};
         add_fixture(project, FixtureType::basin, {{1500, 750}, {2100, 850}});
     }},
    {"a nail through a textured coating that nobody knows the age of", "old-coatings",
     Severity::mind,
     [](wall::Project& project) {
         nailed(project);
         on_surface(project, Surface::textured);
     }},
    {"a nail through paint of a house of 1930", "old-coatings", Severity::mind,
     [](wall::Project& project) {
         nailed(project);
         project.room.built = 1930;
     }},
    {"a nail in a wall that is not to be pierced", "no-holes", Severity::stop,
     [](wall::Project& project) {
         nailed(project);
         project.room.no_holes = true;
     }},
    {"a nail in a wall that nobody knows", "wall-known", Severity::note, nailed},
    {"strips that a day's sun warms", "in-sun", Severity::mind,
     [](wall::Project& project) { project.room.in_sun = true; }},
    {"strips alone where the ground shakes", "earthquake", Severity::mind,
     [](wall::Project& project) { project.room.shakes = true; }},
    {"an open hook under ten kilograms where the ground shakes", "earthquake", Severity::mind,
     [](wall::Project& project) {
         nailed(project);
         piece_named(project, "kelp").fixing = wall::FixingTypeId{"screw"};
         piece_named(project, "kelp").weighed = units::Kilograms{10};
         project.room.shakes = true;
     }},
    {"an heirloom over a radiator", "irreplaceable", Severity::mind,
     [](wall::Project& project) {
         nailed(project);
         piece_named(project, "kelp").irreplaceable = true;
         add_fixture(project, FixtureType::radiator, {{1500, 100}, {2100, 900}});
     }},
    {"an heirloom on strips", "irreplaceable-on-strips", Severity::stop,
     [](wall::Project& project) { piece_named(project, "kelp").irreplaceable = true; }},
    {"strips on paint that will not be dry on the day", "surface-fit", Severity::stop,
     [](wall::Project& project) {
         on_surface(project, Surface::fresh_paint);
         project.room.painted_on = wall::date_named("2026-11-20");
         project.hangs_on = wall::date_named("2026-11-25");
     }},
    {"a nail into concrete", "surface-fit", Severity::mind,
     [](wall::Project& project) {
         nailed(project);
         on_surface(project, Surface::concrete);
     }},
    {"a nail into a tile", "surface-fit", Severity::mind,
     [](wall::Project& project) {
         nailed(project);
         on_surface(project, Surface::tile);
     }},
    {"a nail over the socket of the room behind a thin wall", "cable-zones", Severity::stop,
     [](wall::Project& project) {
         nailed(project);
         add_fixture(project, FixtureType::socket, {{1760, 300}, {1840, 380}}).other_side = true;
         project.room.thickness = 75;
     }},
    {"strips on a rough back", "strips-fit-the-back", Severity::stop,
     [](wall::Project& project) { frame_named(project, "kelp").rough_back = true; }},
    {"a rail hook on the spot of another", "rail-clear", Severity::stop,
     [](wall::Project& project) {
         from_the_rail(project, "kelp");
         add_piece(project, "dune", {1660, 860}, {300, 400});
         from_the_rail(project, "dune");
     }},
    {"a rail cord behind the piece above", "rail-clear", Severity::mind,
     [](wall::Project& project) {
         from_the_rail(project, "kelp");
         add_piece(project, "dune", {1760, 1760}, {100, 140});
     }},
    {"a sawtooth on a frame too heavy for it", "hanger-strength", Severity::mind,
     [](wall::Project& project) {
         with_hanger(project, {HangerType::sawtooth, 60, {}, {}, {}, {}});
         piece_named(project, "kelp").weighed = units::Kilograms{3};
     }},
    {"keyholes on a frame too heavy for them", "hanger-strength", Severity::mind,
     [](wall::Project& project) {
         with_hanger(project, {HangerType::keyholes, 20, 240, {}, {}, {}});
         piece_named(project, "kelp").weighed = units::Kilograms{8};
     }},
    {"rings on a moulding too slender for the weight", "hanger-strength", Severity::mind,
     [](wall::Project& project) {
         with_hanger(project, {HangerType::two_rings, 100, 240, {}, {}, {}});
         piece_named(project, "kelp").weighed = units::Kilograms{12};
     }},
    {"marks from a piece that does not hang yet", "datum-in-sight", Severity::mind,
     [](wall::Project& project) {
         project.datum.height = wall::DatumHeight::piece;
         project.datum.piece = wall::PieceId{"kelp"};
     }},
};

}  // namespace

TEST_CASE("The wall on which hazards are planted is sound") {
    CHECK(findings_on(sound_wall()).empty());
}

TEST_CASE("A wall with all that belongs on it, and nothing wrong, raises no stop and no mind") {
    wall::Project project = wall_of(3600, 2400);
    wall::Room& room = project.room;
    room.core = wall::Core::masonry;
    room.built = 2005;
    room.cable_practice = wall::CablePractice::din_18015_3;
    add_furniture(project, FurnitureType::sofa, {{1000, 0}, {2160, 900}});
    add_fixture(project, FixtureType::radiator, {{2900, 100}, {3500, 700}});
    add_fixture(project, FixtureType::light_switch, {{3300, 1050}, {3380, 1130}});
    for (int i = 0; i < 3; ++i) {
        const std::string id = "p" + std::to_string(i);
        add_piece(project, id, {1180 + i * 260.0, 1140}, {200, 720});
        make_light(project, id, 0.8);
    }
    piece_named(project, "p1").hanger = {HangerType::two_rings, 150, 160, {}, {}, {}};
    piece_named(project, "p1").fixing = wall::FixingTypeId{"hook_small"};
    for (const wall::Finding& finding : findings_on(project)) {
        INFO(finding.rule << ": " << finding.text);
        CHECK(finding.severity == Severity::note);
    }
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
