#include "hanging/marks.h"

#include "hanging/datum_label.h"
#include "hanging/mark_words.h"
#include "hanging/tape.h"
#include "marked.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

namespace {

using geometry::Point;
using geometry::Wall;
using wall::DatumHeight;
using wall::DatumSide;
using wall::HangerType;
using wall::Project;

}  // namespace

TEST_CASE("Strips are marked by the frame's two top corners") {
    Project project = scenes::wall_of(3600, 2400);
    add(project, "kelp", {1000, 1300}, HangerType::strips);
    const MarksTable table = table_of(project);
    REQUIRE(table.marks.size() == 2);
    CHECK(table.marks[0].what == "top left corner");
    CHECK(table.marks[0].kind == MarkKind::corner);
    CHECK(table.marks[0].at == Point<Wall>{1000, 1800});
    CHECK(table.marks[1].what == "top right corner");
    CHECK(table.marks[1].at == Point<Wall>{1400, 1800});
    REQUIRE(table.checks.size() == 1);
    CHECK(table.checks[0].length == 400);
}

TEST_CASE("Hooks and screws are marked at their bearing points, by name") {
    Project project = scenes::wall_of(3600, 2400);
    add(project, "kelp", {1000, 1300}, HangerType::sawtooth);
    project.pieces.front().fixing = wall::FixingTypeId{"hook_small"};
    CHECK(table_of(project).marks.at(0).what == "hook");
    CHECK(table_of(project).marks.at(0).at == Point<Wall>{1200, 1785});
    project.pieces.front().fixing = wall::FixingTypeId{"screw"};
    CHECK(table_of(project).marks.at(0).what == "screw");
    project.pieces.front().hanger.type = HangerType::two_rings;
    const MarksTable table = table_of(project);
    REQUIRE(table.marks.size() == 2);
    CHECK(table.marks[0].what == "left screw");
    CHECK(table.marks[0].kind == MarkKind::hook);
    CHECK(table.marks[0].at.x == Approx(1040));
    CHECK(table.marks[1].what == "right screw");
    CHECK(table.marks[1].at.x == Approx(1360));
    CHECK(table.marks[1].at.y == Approx(1675));
}

// Apartment Therapy, "How to hang your artwork properly": centre line 57 in, picture 20 in high,
// hanger 2 in below its top: the hook at 65 in.
TEST_CASE("The article's hook is marked 65 in above the floor") {
    const double inch = units::kMmPerInch;
    Project project = scenes::wall_of(3600, 2400);
    wall::Piece& piece =
        scenes::add_piece(project, "kelp", {1000, (57 - 10) * inch}, {16 * inch, 20 * inch});
    piece.hanger.type = HangerType::sawtooth;
    piece.hanger.drop = 2 * inch;
    CHECK(table_of(project).marks.at(0).up / inch == Approx(65));
}

TEST_CASE("Only planned pieces with fixings are marked, numbered in the order of hanging") {
    Project project = scenes::wall_of(4000, 2400);
    add(project, "left", {500, 1300}, HangerType::sawtooth);
    add(project, "middle", {960, 1300}, HangerType::two_rings);
    add(project, "right", {1420, 1300}, HangerType::sawtooth);
    add(project, "hung", {1880, 1300}, HangerType::sawtooth).state = wall::PieceState::hung;
    add(project, "slack", {2340, 1300}, HangerType::sawtooth).hanger.drop = 400;
    scenes::add_waiting(project, "dune", {300, 300});
    const MarksTable table = table_of(project);
    REQUIRE(table.marks.size() == 4);
    const std::vector<std::string> expected{"middle", "middle", "left", "right"};
    for (std::size_t i = 0; i < expected.size(); ++i) {
        CHECK(table.marks[i].number == static_cast<int>(i) + 1);
        CHECK(table.marks[i].piece.text == expected[i]);
    }
}

TEST_CASE("Each mark knows its piece's stage, and an earlier stage is marked first") {
    Project project = scenes::wall_of(3600, 2400);
    add(project, "kelp", {1000, 1300}, HangerType::strips).stage = 2;
    add(project, "dune", {1460, 1300}, HangerType::strips).stage = 1;
    MarksTable table = table_of(project);
    REQUIRE(table.marks.size() == 4);
    CHECK(table.marks[0].piece.text == "dune");
    CHECK(table.marks[0].stage == 1);
    CHECK(table.marks[3].stage == 2);
    CHECK(has_stages(table));
    for (wall::Piece& piece : project.pieces)
        piece.stage = 0;
    table = table_of(project);
    CHECK(table.marks[0].stage == 0);
    CHECK_FALSE(has_stages(table));
}

TEST_CASE("Marks are measured across from the datum's side") {
    Project project = scenes::wall_of(3600, 2400);
    add(project, "kelp", {1000, 1300}, HangerType::sawtooth);
    CHECK(table_of(project).marks.at(0).across == Approx(1200));
    project.datum.side = DatumSide::right;
    CHECK(table_of(project).marks.at(0).across == Approx(2400));
    CHECK(table_of(project).datum == project.datum);
}

TEST_CASE("A wall whose left edge is not at 0 is measured from its own edge") {
    Project project = scenes::wall_of(3600, 2400);
    for (Point<Wall>& corner : project.room.outline.corners)
        corner.x += 200;
    add(project, "kelp", {1000, 1300}, HangerType::sawtooth);
    CHECK(table_of(project).marks.at(0).across == Approx(1000));
}

TEST_CASE("Marks are measured up from the floor, down from the ceiling or from the level line") {
    Project project = scenes::wall_of(3600, 2400);
    add(project, "kelp", {1000, 1300}, HangerType::sawtooth);
    CHECK(table_of(project).marks.at(0).up == Approx(1785));
    project.datum.height = DatumHeight::ceiling;
    CHECK(table_of(project).marks.at(0).up == Approx(615));
    project.datum.height = DatumHeight::level_line;
    project.datum.level_line = 1500;
    CHECK(table_of(project).marks.at(0).up == Approx(285));
    project.datum.level_line = 1900;
    CHECK(table_of(project).marks.at(0).up == Approx(-115));
}

TEST_CASE("Under a sloping ceiling a mark is measured from the ceiling straight above it") {
    Project project = scenes::attic_of(4000, 1600, 3200);
    add(project, "kelp", {1800, 1300}, HangerType::sawtooth);
    project.datum.height = DatumHeight::ceiling;
    // The ceiling at 2000 mm across is half way between 1600 and 3200.
    CHECK(table_of(project).marks.at(0).up == Approx(2400 - 1785));
}

TEST_CASE("Over a stair a mark is measured from the tread below it, and not so from a level line") {
    Project project = scenes::wall_of(4000, 2800);
    project.room.outline = {{{0, 0}, {2000, 0}, {2000, 360}, {4000, 360}, {4000, 2800}, {0, 2800}}};
    add(project, "low", {600, 1300}, HangerType::sawtooth);
    add(project, "high", {2600, 1300}, HangerType::sawtooth);
    const auto ups = [&] {
        const MarksTable table = table_of(project);
        REQUIRE(table.marks.size() == 2);
        return std::pair(table.marks[0].up, table.marks[1].up);
    };
    CHECK(ups().first == Approx(1785));
    CHECK(ups().second == Approx(1785 - 360));
    project.datum.height = DatumHeight::level_line;
    CHECK(ups().first == ups().second);
}

TEST_CASE("Each mark has the error that its tape brings over its own length") {
    Project project = scenes::wall_of(3600, 2400);
    add(project, "kelp", {1000, 1300}, HangerType::sawtooth);
    project.tape = GENERATE(wall::TapeClass::one, wall::TapeClass::three);
    const Mark mark = table_of(project).marks.at(0);
    CHECK(mark.across_error == mark_error(project.tape, 1200));
    CHECK(mark.up_error == mark_error(project.tape, 1785));
}

// Makers' data for a good spirit level: 0.5 mm in a metre. With a tape of class II over 285 mm from
// its end, 0.3 + 0.2 + 0.2 mm, and a stroke of 0.5 mm.
TEST_CASE("From a level line the level counts too, over the way that the line has come") {
    Project project = scenes::wall_of(3600, 2400);
    add(project, "kelp", {1000, 1300}, HangerType::sawtooth);
    project.datum.height = DatumHeight::level_line;
    project.datum.level_line = 1500;
    CHECK(table_of(project).marks.at(0).up_error == Approx(std::hypot(0.7, 0.5, 1.2 * 0.5)));
    project.datum.side = DatumSide::right;
    CHECK(table_of(project).marks.at(0).up_error == Approx(std::hypot(0.7, 0.5, 2.4 * 0.5)));
    project.style.level_error = 0;
    CHECK(table_of(project).marks.at(0).up_error == Approx(std::hypot(0.7, 0.5)));
}

// Between rings 300 mm apart 340 mm of cord rise 80 mm, and 338 mm rise 77.85 mm.
TEST_CASE("Under a cord a mark errs by what two millimetres of cord change its drop, too") {
    Project project = scenes::wall_of(3600, 2600);
    add(project, "low", {1000, 900}, HangerType::cord_one_hook);
    add(project, "high", {1000, 1460}, HangerType::sawtooth);
    wall::Hanger& hanger = project.pieces.front().hanger;
    hanger.drop = 150;
    hanger.ring_spacing = 300;
    hanger.cord_length = 340;
    const double change = 80 - std::sqrt(169.0 * 169 - 150.0 * 150);
    MarksTable table = table_of(project);
    REQUIRE(table.marks.size() == 2);
    CHECK(table.marks[0].at.y == Approx(1400 - 70));
    CHECK(table.marks[0].up_error == Approx(std::hypot(mark_error(project.tape, 1330), change)));
    CHECK(table.marks[0].across_error == mark_error(project.tape, 1200));
    REQUIRE(table.gaps.size() == 1);
    CHECK(table.gaps[0].spread == Approx(std::hypot(mark_error(project.tape, 1330),
                                                    mark_error(project.tape, 1945), change)));
    // Two hooks 100 mm apart leave 240 mm for 200 mm of run, and a flatter cord errs more.
    hanger.type = HangerType::cord_two_hooks;
    hanger.hook_spacing = 100;
    const double flatter =
        (std::sqrt(240.0 * 240 - 200.0 * 200) - std::sqrt(238.0 * 238 - 200.0 * 200)) / 2;
    table = table_of(project);
    REQUIRE(table.marks.size() == 3);
    CHECK(table.marks[0].up_error == Approx(std::hypot(mark_error(project.tape, 1330), flatter)));
}

// 0.45 mm and 5.55 mm of slope are rounded away from each other.
TEST_CASE("Marks level in truth are one row, however a floor off level rounds them") {
    Project project = scenes::wall_of(4000, 2400);
    add(project, "left", {57, 1300}, HangerType::sawtooth);
    add(project, "right", {2971, 1300}, HangerType::sawtooth);
    project.datum.floor = wall::EndHeights{1500, 1507};
    const MarksTable table = table_of(project);
    REQUIRE(table.marks.size() == 2);
    CHECK(table.marks[0].up - 1785 == 0);
    CHECK(table.marks[1].up - 1785 == 6);
    CHECK(table.rows == std::vector<std::vector<int>>{{1, 2}});
}

TEST_CASE("A minus is explained where a mark has one, and there only") {
    Project project = scenes::wall_of(3600, 2400);
    scenes::add_hung(project, "reef", {1000, 1300}, {400, 500}).title = "Reef";
    add(project, "kelp", {1460, 1300}, HangerType::sawtooth);
    CHECK(minus_words(project, table_of(project).marks).empty());
    project.datum.height = DatumHeight::piece;
    project.datum.piece = wall::PieceId{"reef"};
    project.datum.side = DatumSide::right;
    CHECK(minus_words(project, table_of(project).marks) ==
          "A minus is back over Reef, or below its top edge.");
    project.datum = {DatumHeight::level_line, DatumSide::left};
    project.datum.level_line = 1900;
    CHECK(minus_words(project, table_of(project).marks) == "A minus is below the level line.");
    project.datum.level_line = 1500;
    CHECK(minus_words(project, table_of(project).marks).empty());
}

TEST_CASE("A floor that was measured to run off level is followed, so that a row comes out level") {
    Project project = scenes::wall_of(4000, 2400);
    add(project, "left", {800, 1300}, HangerType::sawtooth);
    add(project, "right", {2800, 1300}, HangerType::sawtooth);
    // Twelve more up to the line at the right: the floor is 12 mm lower there, 9 at three quarters.
    project.datum.floor = wall::EndHeights{1500, 1512};
    MarksTable table = table_of(project);
    REQUIRE(table.marks.size() == 2);
    CHECK(table.marks[0].at.y == table.marks[1].at.y);
    CHECK(table.marks[0].up == 1785 + 3);
    CHECK(table.marks[1].up == 1785 + 9);
    CHECK(table.rows == std::vector<std::vector<int>>{{1, 2}});
    CHECK(table.marks[1].up_error > mark_error(project.tape, 1794));
    // A ceiling that is farther above the line at the right gives longer ways down there.
    project.datum = {DatumHeight::ceiling, DatumSide::left};
    project.datum.ceiling = wall::EndHeights{900, 912};
    table = table_of(project);
    CHECK(table.marks[0].up == 615 + 3);
    CHECK(table.marks[1].up == 615 + 9);
}

TEST_CASE("From a piece that hangs marks go away from its side and up or down from its top") {
    Project project = scenes::wall_of(3600, 2400);
    scenes::add_hung(project, "reef", {1000, 1300}, {400, 500});
    add(project, "kelp", {1460, 1300}, HangerType::sawtooth);
    project.datum.height = DatumHeight::piece;
    project.datum.piece = wall::PieceId{"reef"};
    project.datum.side = DatumSide::right;
    CHECK(table_of(project).marks.at(0).across == 260);
    CHECK(table_of(project).marks.at(0).up == -15);
    project.datum.side = DatumSide::left;
    CHECK(table_of(project).marks.at(0).across == -660);
    // Without its place there is only the floor.
    project.pieces.front().at = {};
    project.pieces.front().state = wall::PieceState::waiting;
    CHECK(table_of(project).marks.at(0).across == 1660);
    CHECK(table_of(project).marks.at(0).up == 1785);
}

TEST_CASE("What hangs from a rail is marked on the rail, with how long its cord is") {
    Project project = scenes::wall_of(3600, 2600);
    project.room.rail = 2200;
    add(project, "kelp", {1000, 1300}, HangerType::two_rings);
    Hanging hanging;
    hanging.piece = {"kelp"};
    for (const double x : {1040.0, 1360.0}) {
        Fixing fixing;
        fixing.type = {"rail"};
        fixing.kind = wall::FixingKind::rail_hook;
        fixing.at = {x, 2200};
        fixing.cord = 525.2;
        hanging.fixings.push_back(fixing);
    }
    const MarksTable table = marks_of(project, {hanging});
    REQUIRE(table.marks.size() == 2);
    CHECK(table.marks[0].kind == MarkKind::rail);
    CHECK(table.marks[0].what == "left rail hook");
    CHECK(table.marks[0].across == 1040);
    CHECK(table.marks[0].cord == 525);
    CHECK(table.marks[0].below_top == Approx(125.2));
    CHECK(table.marks[0].up_error == Approx(std::hypot(mark_error(project.tape, 525), 3)));
    REQUIRE(table.checks.size() == 1);
    CHECK(table.checks.front().length == 320);
}

TEST_CASE("Marks are in whole steps of the ruler: millimetres, sixteenths or what the style says") {
    Project project = scenes::wall_of(3600, 2400);
    add(project, "kelp", {1000.4, 1300.3}, HangerType::sawtooth);
    CHECK(table_of(project).step == 1);
    CHECK(table_of(project).marks.at(0).across == 1200);
    CHECK(table_of(project).marks.at(0).at.x == Approx(1200.4));
    project.style.ruler_step = 5;
    CHECK(table_of(project).marks.at(0).up == 1785);
    project.style.ruler_step = 0;
    project.unit = units::LengthUnit::inch;
    CHECK(table_of(project).step == Approx(1.5875));
    CHECK(table_of(project).marks.at(0).across / 1.5875 ==
          Approx(std::round(1200.4 / 1.5875)).margin(1e-9));
}

TEST_CASE("A row of frames that are no whole millimetres wide keeps even gaps") {
    Project project = scenes::wall_of(4000, 2400);
    for (int i = 0; i < 4; ++i)
        add(project, "p" + std::to_string(i), {500 + i * 460.4, 1300}, HangerType::strips);
    const MarksTable table = table_of(project);
    REQUIRE(table.gaps.size() == 3);
    for (const GapForecast& gap : table.gaps)
        CHECK(gap.gap == Approx(table.gaps.front().gap));
    // Each alone would lie at 500, 960, 1421 and 1881: gaps of 60, 61 and 60 mm.
    CHECK(std::abs(table.gaps.front().gap - 60.4) < 1);
}

TEST_CASE("A mark's place is fixed by two earlier ones that are not in line with it") {
    Project project = scenes::wall_of(4000, 2600);
    add(project, "low", {1000, 900}, HangerType::strips);
    add(project, "high", {1000, 1460}, HangerType::strips).stage = 1;
    add(project, "beside", {1460, 1460}, HangerType::strips).stage = 1;
    MarksTable table = table_of(project);
    const auto checks_to = [&table](int number) {
        std::vector<int> from;
        for (const CheckMeasure& check : table.checks)
            if (check.to == number)
                from.push_back(check.from);
        return from;
    };
    REQUIRE(table.marks.size() == 6);
    // The first of a stage has none before it; in one line there is no other.
    CHECK(checks_to(3).empty());
    CHECK(checks_to(4) == std::vector{3});
    CHECK(checks_to(6) == std::vector{5});
    for (wall::Piece& piece : project.pieces)
        piece.stage = 0;
    table = table_of(project);
    CHECK(checks_to(3) == std::vector{2, 1});
    CHECK(checks_to(5).size() == 2);
}

TEST_CASE("Without planned pieces there is nothing to mark") {
    const MarksTable table = table_of(scenes::wall_of(3600, 2400));
    CHECK(table.marks.empty());
    CHECK(table.checks.empty());
}

}  // namespace wallwright::hanging
