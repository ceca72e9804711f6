#include "desk/fix.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::desk;
using namespace wallwright::scenes;
using wall::Finding;

namespace {

std::vector<Finding> findings_of(const Session& session, std::string_view rule) {
    std::vector<Finding> all = session.assessment().findings;
    std::erase_if(all, [rule](const Finding& one) { return one.rule != rule; });
    return all;
}

/// Applies the fix of the first finding of the rule; the finding must then be gone and no stop new.
std::string fixed_by(const wall::Project& project, std::string_view rule) {
    INFO(rule);
    Session session(project);
    const std::vector<Finding> before = findings_of(session, rule);
    REQUIRE_FALSE(before.empty());
    const bool had_stop = wall::has_stop(session.assessment().findings);
    const auto fix = fix_for(session, before.front());
    REQUIRE(fix.has_value());
    REQUIRE(session.apply(fix->label, fix->project));
    CHECK(findings_of(session, rule).size() < before.size());
    CHECK((had_stop || !wall::has_stop(session.assessment().findings)));
    return fix->label;
}

bool is_fixable(const wall::Project& project, std::string_view rule) {
    INFO(rule);
    const Session session(project);
    const std::vector<Finding> found = findings_of(session, rule);
    REQUIRE_FALSE(found.empty());
    return fix_for(session, found.front()).has_value();
}

wall::Project three(double first_gap, double second_gap) {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    add_piece(project, "dune", {1300 + first_gap, 1300}, {300, 400});
    add_piece(project, "gull", {1600 + first_gap + second_gap, 1300}, {300, 400});
    return project;
}

wall::Project one_on_hooks(geometry::Point<geometry::Wall> at) {
    wall::Project project = wall_of(9000, 2400);
    add_piece(project, "kelp", at, {300, 400}).hanger.type = wall::HangerType::sawtooth;
    return project;
}

}  // namespace

TEST_CASE("Uneven, narrow and overlapping gaps are evened") {
    CHECK(fixed_by(three(50, 70), "gaps-even") == "Even the gaps");
    CHECK(fixed_by(three(20, 20), "gaps-in-range") == "Even the gaps");
    CHECK(fixed_by(three(-20, 60), "no-overlap") == "Even the gaps");
}

TEST_CASE("Between pieces that hang no gap can be mended") {
    wall::Project project = three(20, 70);
    for (wall::Piece& piece : project.pieces)
        piece.state = wall::PieceState::hung;
    CHECK_FALSE(is_fixable(project, "gaps-even"));
    CHECK_FALSE(is_fixable(project, "gaps-in-range"));
}

TEST_CASE("A group off the centre line is centred") {
    wall::Project project = three(60, 60);
    for (wall::Piece& piece : project.pieces)
        piece.at->y = 1000;
    CHECK(fixed_by(project, "centre-line") == "Centre the group on the centre line");
    project.pieces[1].pinned = true;
    CHECK_FALSE(is_fixable(project, "centre-line"));
}

TEST_CASE("A group too near above the sofa goes up by what is missing") {
    wall::Project project = three(60, 60);
    add_furniture(project, wall::FurnitureType::sofa, {{900, 0}, {2100, 1180}});
    CHECK(fixed_by(project, "clearance-above-furniture") == "Move the group 30 mm up");
}

TEST_CASE("A piece outside the wall comes in by the shortest way") {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {-40, 1300}, {300, 400});
    CHECK(fixed_by(project, "inside-wall") == "Move Kelp 40 mm to the right");
    project.pieces[0].state = wall::PieceState::hung;
    CHECK_FALSE(is_fixable(project, "inside-wall"));
}

TEST_CASE("A piece before a window or between two things moves clear of all") {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    add_fixture(project, wall::FixtureType::window, {{1250, 1000}, {2000, 2000}});
    CHECK(fixed_by(project, "clear-of-furniture-and-fixtures") == "Move Kelp 50 mm to the left");
    add_fixture(project, wall::FixtureType::light_switch, {{980, 1340}, {1060, 1420}});
    fixed_by(project, "clear-of-furniture-and-fixtures");
}

TEST_CASE("A fixing of the person's choice that does not carry gives way to one that does") {
    wall::Project project = one_on_hooks({1000, 1300});
    project.pieces[0].weighed = units::Kilograms{4};
    project.pieces[0].fixing = wall::FixingTypeId{"hook_1"};
    CHECK(fixed_by(project, "weight-within-rating") == "Choose another fixing for Kelp");
    project.pieces[0].fixing = wall::FixingTypeId{"strip_large"};
    CHECK(fixed_by(project, "hanger-fits") == "Choose another fixing for Kelp");
}

TEST_CASE("Where no fixing would carry the piece none is offered") {
    wall::Project project = one_on_hooks({1000, 1300});
    project.pieces[0].weighed = units::Kilograms{400};
    project.pieces[0].fixing = wall::FixingTypeId{"hook_1"};
    CHECK_FALSE(is_fixable(project, "weight-within-rating"));
    project.pieces[0].fixing.reset();
    CHECK_FALSE(is_fixable(project, "weight-within-rating"));
}

TEST_CASE("Strips on wallpaper are for the person to mend, since the hanger is on the frame") {
    wall::Project project = three(60, 60);
    project.room.surface = wall::Surface::wallpaper;
    CHECK_FALSE(is_fixable(project, "surface-fit"));
}

TEST_CASE("A fixing that the wall does not take is chosen anew") {
    wall::Project brick = one_on_hooks({1000, 1300});
    brick.room.core = wall::Core::masonry;
    brick.pieces[0].fixing = wall::FixingTypeId{"hollow_anchor"};
    CHECK(fixed_by(brick, "fixing-suits-wall") == "Choose another fixing for Kelp");
    wall::Project rented = one_on_hooks({1000, 1300});
    rented.room.rail = 2200;
    rented.room.no_holes = true;
    rented.pieces[0].hanger.type = wall::HangerType::two_rings;
    rented.pieces[0].fixing = wall::FixingTypeId{"hook_1"};
    CHECK(fixed_by(rented, "no-holes") == "Choose another fixing for Kelp");
}

TEST_CASE("A mark out of reach or sight is measured from the other corner") {
    CHECK(fixed_by(one_on_hooks({8000, 1300}), "tape-reach") == "Measure from the right corner");
    wall::Project attic = attic_of(4000, 1500, 2500);
    add_piece(attic, "kelp", {2600, 1400}, {300, 400}).hanger.type = wall::HangerType::sawtooth;
    CHECK(fixed_by(attic, "datum-in-sight") == "Measure from the right corner");
}

TEST_CASE("A fix starts from what is kept, not from a preview") {
    Session session(three(50, 70));
    const Finding finding = findings_of(session, "gaps-even").front();
    wall::Project dragged = session.kept();
    dragged.pieces[0].at->y = 1350;
    session.preview(dragged);
    const auto fix = fix_for(session, finding);
    REQUIRE(fix.has_value());
    CHECK(fix->project->pieces[0].at->y == Approx(1300));
}
