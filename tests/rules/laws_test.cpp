// What must hold for any wall, tried on random ones.
#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <map>
#include <string>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using geometry::Point;
using geometry::Rect;
using geometry::Wall;

namespace {

constexpr double kWidth = 5000;
constexpr double kHeight = 2600;

double whole_mm(int least, int below) {
    return *rc::gen::inRange(least, below);
}

Rect<Wall> random_rect(geometry::Size most) {
    const geometry::Size size{whole_mm(50, static_cast<int>(most.width)),
                              whole_mm(50, static_cast<int>(most.height))};
    return Rect<Wall>::at({whole_mm(0, static_cast<int>(kWidth - size.width)), whole_mm(0, 1500)},
                          size);
}

void add_random_piece(wall::Project& project, int number) {
    const Point<Wall> at{whole_mm(0, 4300), whole_mm(700, 2000)};
    wall::Piece& piece = add_piece(project, "p" + std::to_string(number), at,
                                   {whole_mm(150, 700), whole_mm(150, 600)});
    piece.hanger.type = *rc::gen::element(wall::HangerType::strips, wall::HangerType::sawtooth,
                                          wall::HangerType::two_rings);
    piece.state = *rc::gen::element(wall::PieceState::planned, wall::PieceState::hung);
    piece.weighed = units::Kilograms{whole_mm(2, 250) / 10};
}

/// A wall under a slope or not, with furniture, fixtures and up to ten pieces at whole millimetres.
wall::Project random_wall() {
    wall::Project project = attic_of(kWidth, *rc::gen::element(1800.0, kHeight), kHeight);
    project.room.cable_practice =
        *rc::gen::element(wall::CablePractice::none_known, wall::CablePractice::bs_7671,
                          wall::CablePractice::din_18015_3);
    project.room.use = *rc::gen::element(wall::RoomUse::living, wall::RoomUse::kitchen);
    const int furniture = *rc::gen::inRange(0, 3);
    for (int i = 0; i < furniture; ++i)
        add_furniture(project,
                      *rc::gen::element(wall::FurnitureType::sofa, wall::FurnitureType::bed,
                                        wall::FurnitureType::plant),
                      random_rect({2000, 1000}));
    const int fixtures = *rc::gen::inRange(0, 3);
    for (int i = 0; i < fixtures; ++i)
        add_fixture(project,
                    *rc::gen::element(wall::FixtureType::door, wall::FixtureType::radiator,
                                      wall::FixtureType::light_switch),
                    random_rect({900, 700}));
    const int pieces = *rc::gen::inRange(0, 11);
    for (int i = 0; i < pieces; ++i)
        add_random_piece(project, i);
    return project;
}

Rect<Wall> mirrored(const Rect<Wall>& place) {
    return {{kWidth - place.max.x, place.min.y}, {kWidth - place.min.x, place.max.y}};
}

/// The same wall as its neighbour behind the wall would draw it.
wall::Project mirrored(wall::Project project) {
    for (Point<Wall>& corner : project.room.outline.corners)
        corner.x = kWidth - corner.x;
    for (wall::Furniture& furniture : project.room.furniture)
        furniture.place = mirrored(furniture.place);
    for (wall::Fixture& fixture : project.room.fixtures)
        fixture.place = mirrored(fixture.place);
    for (wall::Piece& piece : project.pieces)
        piece.at = mirrored(*place_of(project, piece)).min;
    project.datum.side = project.datum.side == wall::DatumSide::left ? wall::DatumSide::right
                                                                     : wall::DatumSide::left;
    return project;
}

using Counts = std::map<std::pair<std::string, wall::Severity>, int>;

Counts counts_of(const std::vector<wall::Finding>& findings) {
    Counts counts;
    for (const wall::Finding& finding : findings)
        ++counts[{finding.rule, finding.severity}];
    return counts;
}

/// Rule, measure and sentence of every finding about gaps and overlaps: nothing of where on the
/// wall it is.
std::vector<std::string> said_of_gaps(const wall::Project& project) {
    std::vector<std::string> said;
    for (const char* rule : {"gaps-even", "gaps-in-range", "no-overlap"})
        for (const wall::Finding& finding : findings_of(rule, project))
            said.push_back(finding.text);
    return said;
}

bool mentions(const wall::Finding& finding, const wall::PieceId& id) {
    return std::ranges::find(finding.pieces, id) != finding.pieces.end();
}

}  // namespace

TEST_CASE("The same wall is always judged the same") {
    rc::prop("two assessments are equal", [] {
        const wall::Project project = random_wall();
        RC_ASSERT(findings_on(project) == findings_on(project));
    });
}

TEST_CASE("A mirrored wall is judged like the wall") {
    rc::prop("each rule finds as many of each severity", [] {
        const wall::Project project = random_wall();
        RC_ASSERT(counts_of(findings_on(project)) == counts_of(findings_on(mirrored(project))));
    });
}

TEST_CASE("The order in which pieces were written down is no matter of safety") {
    rc::prop("each rule finds as many of each severity", [] {
        wall::Project project = random_wall();
        const Counts before = counts_of(findings_on(project));
        std::ranges::reverse(project.pieces);
        RC_ASSERT(counts_of(findings_on(project)) == before);
    });
}

TEST_CASE("Where on a large empty wall a group hangs changes nothing about its gaps") {
    rc::prop("moving all pieces together keeps what is said of gaps", [] {
        wall::Project project = wall_of(50000, 20000);
        const int pieces = *rc::gen::inRange(0, 11);
        for (int i = 0; i < pieces; ++i)
            add_random_piece(project, i);
        for (wall::Piece& piece : project.pieces)
            piece.at = *piece.at + geometry::Vec<Wall>{20000, 8000};
        const std::vector<std::string> before = said_of_gaps(project);
        const geometry::Vec<Wall> by{whole_mm(-9000, 9000), whole_mm(-5000, 5000)};
        for (wall::Piece& piece : project.pieces)
            piece.at = *piece.at + by;
        RC_ASSERT(said_of_gaps(project) == before);
    });
}

TEST_CASE("A piece far away changes nothing for the others") {
    rc::prop("findings without the new piece are those of before", [] {
        wall::Project project = random_wall();
        project.room.use = wall::RoomUse::living;
        project.room.outline = wall_of(20000, kHeight).room.outline;
        const std::vector<wall::Finding> before = findings_on(project);
        add_piece(project, "far", {15000, 1300}, {300, 400});
        std::vector<wall::Finding> after = findings_on(project);
        std::erase_if(after,
                      [](const wall::Finding& finding) { return mentions(finding, {"far"}); });
        RC_ASSERT(after == before);
    });
}
