#include "hanging/marks.h"
#include "hanging/tape.h"
#include "marked.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

namespace {

using wall::DatumHeight;
using wall::HangerType;
using wall::Project;

}  // namespace

TEST_CASE("Only neighbours with a mark have a forecast, and what hangs brings no error") {
    Project project = scenes::wall_of(4000, 2400);
    add(project, "old", {500, 1300}, HangerType::sawtooth).state = wall::PieceState::hung;
    add(project, "older", {40, 1300}, HangerType::sawtooth).state = wall::PieceState::hung;
    add(project, "new", {960, 1300}, HangerType::sawtooth);
    add(project, "next", {1420, 1300}, HangerType::sawtooth);
    add(project, "far", {3400, 1300}, HangerType::sawtooth);
    const MarksTable table = table_of(project);
    REQUIRE(table.gaps.size() == 2);
    CHECK(table.gaps[1].first.text == "old");
    CHECK(table.gaps[1].spread == Approx(mark_error(project.tape, 1160)));
    CHECK(table.gaps[1].gap == 60);
    CHECK(table.gaps[0].spread ==
          Approx(std::hypot(mark_error(project.tape, 1160), mark_error(project.tape, 1620))));
}

TEST_CASE("Between stacked pieces the level line's tilt is none of the gap's error") {
    Project project = scenes::wall_of(6000, 3000);
    add(project, "low", {5000, 800}, HangerType::sawtooth);
    add(project, "high", {5000, 1360}, HangerType::sawtooth);
    project.datum.height = DatumHeight::level_line;
    project.datum.level_line = 1300;
    project.style.level_error = 2;
    const MarksTable table = table_of(project);
    REQUIRE(table.gaps.size() == 1);
    CHECK_FALSE(table.gaps.front().across);
    CHECK(table.gaps.front().spread ==
          Approx(std::hypot(mark_error(project.tape, 15), mark_error(project.tape, 545))));
}

TEST_CASE("A longer row measured in a chain errs more than from the datum") {
    Project project = scenes::wall_of(6000, 2400);
    for (int i = 0; i < 6; ++i)
        add(project, "p" + std::to_string(i), {500 + i * 460.0, 1300}, HangerType::sawtooth);
    add(project, "alone", {4000, 1500}, HangerType::sawtooth);
    const MarksTable table = table_of(project);
    REQUIRE(table.rows.size() == 1);
    CHECK(table.rows.front().size() == 6);
    CHECK(table.chain.marks == 6);
    // From the left corner 700 mm, then five links of 460 mm.
    CHECK(table.chain.from_datum == Approx(mark_error(project.tape, 3000)));
    CHECK(table.chain.chain_worst == Approx(6 * mark_error(project.tape, 460)));
    CHECK(table.chain.chain_likely == Approx(std::sqrt(6) * mark_error(project.tape, 460)));
    CHECK(table.chain.from_datum < table.chain.chain_likely);
}

TEST_CASE("A chain to both sides of a piece that hangs begins at that piece on each side") {
    Project project = scenes::wall_of(6000, 2400);
    scenes::add_hung(project, "old", {2800, 1300}, {400, 500});
    project.datum.height = DatumHeight::piece;
    project.datum.piece = wall::PieceId{"old"};
    for (int i = 1; i <= 2; ++i) {
        add(project, "right" + std::to_string(i), {2800.0 + 500 * i, 1300}, HangerType::sawtooth);
        add(project, "left" + std::to_string(i), {2800.0 - 500 * i, 1300}, HangerType::sawtooth);
    }
    const ChainCompared chain = table_of(project).chain;
    CHECK(chain.marks == 4);
    // Two links of up to a metre on the longer side, no matter what is on the other.
    const double link = mark_error(wall::TapeClass::two, 900);
    CHECK(chain.chain_worst == Approx(2 * link));
    CHECK(chain.chain_likely == Approx(std::sqrt(2.0) * link));
}

}  // namespace wallwright::hanging
