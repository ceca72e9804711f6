#include "hanging/marks.h"

#include "hanging/tape.h"
#include "support/scenes.h"

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

wall::Piece& add(Project& project, const std::string& id, Point<Wall> at, HangerType hanger) {
    wall::Piece& piece = scenes::add_piece(project, id, at, {400, 500});
    piece.hanger.type = hanger;
    piece.weighed = Kilograms{1};
    return piece;
}

MarksTable table_of(const Project& project) {
    return marks_of(project, hang_all(project, scenes::small_catalogue()));
}

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

TEST_CASE("Without planned pieces there is nothing to mark") {
    const MarksTable table = table_of(scenes::wall_of(3600, 2400));
    CHECK(table.marks.empty());
    CHECK(table.checks.empty());
}

TEST_CASE("Measuring each mark back from its datum finds the bearing point on the piece") {
    rc::prop("for any wall under a slope", [] {
        const auto length = [](int low, int high) {
            return *rc::gen::inRange(10 * low, 10 * high) / 10.0;
        };
        const double width = 5000;
        const double left = length(1800, 3000);
        const double right = length(1800, 3000);
        Project project = scenes::attic_of(width, left, right);
        const int count = *rc::gen::inRange(1, 7);
        for (int i = 0; i < count; ++i)
            add(project, "p" + std::to_string(i), {length(0, 4600), length(0, 1300)},
                *rc::gen::element(HangerType::strips, HangerType::sawtooth, HangerType::two_rings,
                                  HangerType::cord_one_hook, HangerType::cord_two_hooks));
        project.datum = {
            *rc::gen::element(DatumHeight::floor, DatumHeight::ceiling, DatumHeight::level_line),
            *rc::gen::element(DatumSide::left, DatumSide::right), length(500, 2000)};
        const auto hangings = hang_all(project, scenes::small_catalogue());
        const MarksTable table = marks_of(project, hangings);

        const auto near = [](double a, double b) { return std::abs(a - b) < 1e-6; };
        for (const Mark& mark : table.marks) {
            // With tape and pencil, from the datum alone.
            const double x =
                project.datum.side == DatumSide::left ? mark.across : width - mark.across;
            double y = mark.up;
            if (project.datum.height == DatumHeight::ceiling)
                y = left + (right - left) * x / width - mark.up;
            if (project.datum.height == DatumHeight::level_line)
                y = project.datum.level_line + mark.up;
            RC_ASSERT(near(x, mark.at.x));
            RC_ASSERT(near(y, mark.at.y));

            const wall::Piece& piece = *find(project, mark.piece);
            const double top = piece.at->y + 500;
            if (mark.kind == MarkKind::corner) {
                RC_ASSERT(near(y, top));
                RC_ASSERT(near(x, piece.at->x) || near(x, piece.at->x + 400));
                continue;
            }
            // Unmeasured hangers of a frame of 400 x 500 mm: rings 125 mm down and 320 mm apart, a
            // cord that rests 50 mm down, a sawtooth 15 mm down.
            const bool rings = piece.hanger.type == HangerType::two_rings;
            const bool sawtooth = piece.hanger.type == HangerType::sawtooth;
            RC_ASSERT(near(top - y, rings ? 125 : sawtooth ? 15 : 62.5 - 12.5));
            const double off = std::abs(x - (piece.at->x + 200));
            RC_ASSERT(near(off, rings                                             ? 160
                                : piece.hanger.type == HangerType::cord_two_hooks ? 320.0 / 6
                                                                                  : 0));
        }
        RC_ASSERT(table.checks.size() + 1 == table.marks.size() || table.marks.empty());
        for (const CheckMeasure& check : table.checks) {
            const Mark& from = table.marks.at(static_cast<std::size_t>(check.from - 1));
            const Mark& to = table.marks.at(static_cast<std::size_t>(check.to - 1));
            RC_ASSERT(to.number == from.number + 1);
            RC_ASSERT(near(check.length * check.length,
                           std::pow(from.at.x - to.at.x, 2) + std::pow(from.at.y - to.at.y, 2)));
        }
    });
}

}  // namespace wallwright::hanging
