#include "pages/marks_csv.h"

#include "pages/csv_line.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::pages;

TEST_CASE("CSV fields are quoted when they have to be") {
    CHECK(csv_line({"kelp", "a, b", "say \"hm\"", ""}) == "kelp,\"a, b\",\"say \"\"hm\"\"\",\r\n");
    CHECK(csv_line({"", "x"}) == ",x\r\n");
}

TEST_CASE("Each mark is a line with its piece's title and its place in mm") {
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_piece(project, "kelp", {1000, 1400}, {300, 400}).title = "Kelp, lino";
    hanging::Mark screw;
    screw.number = 1;
    screw.piece = wall::PieceId{"kelp"};
    screw.what = "screw";
    screw.across = 1150;
    screw.up = 1732.456;
    screw.across_error = 1.5;
    screw.up_error = 2;
    hanging::Mark other;
    other.number = 2;
    other.piece = wall::PieceId{"gone"};
    other.what = "left hook";
    hanging::MarksTable table;
    table.marks = {screw, other};
    CHECK(marks_csv(project, table) ==
          "mark,piece,what,across_mm,up_mm,across_error_mm,up_error_mm\r\n"
          "1,\"Kelp, lino\",screw,1150.00,1732.46,1.50,2.00\r\n"
          "2,gone,left hook,0.00,0.00,0.00,0.00\r\n");
}

TEST_CASE("On a wall that grows each line ends with the stage") {
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_piece(project, "kelp", {1000, 1400}, {300, 400});
    scenes::add_piece(project, "dune", {1400, 1400}, {300, 400}).wished = true;
    hanging::MarksTable table;
    table.marks.resize(2);
    table.marks[0].piece = wall::PieceId{"kelp"};
    table.marks[1].piece = wall::PieceId{"dune"};
    table.marks[1].stage = 2;
    CHECK(marks_csv(project, table) ==
          "mark,piece,what,across_mm,up_mm,across_error_mm,up_error_mm,stage\r\n"
          "0,Kelp,,0.00,0.00,0.00,0.00,\r\n"
          "0,Dune (not bought yet),,0.00,0.00,0.00,0.00,2\r\n");
}

TEST_CASE("Where something hangs from a rail each line says how long its cord is") {
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_piece(project, "kelp", {1000, 1400}, {300, 400});
    hanging::MarksTable table;
    table.marks.resize(2);
    table.marks[0].piece = table.marks[1].piece = wall::PieceId{"kelp"};
    table.marks[1].kind = hanging::MarkKind::rail;
    table.marks[1].cord = 525;
    CHECK(marks_csv(project, table) ==
          "mark,piece,what,across_mm,up_mm,across_error_mm,up_error_mm,cord_mm\r\n"
          "0,Kelp,,0.00,0.00,0.00,0.00,\r\n"
          "0,Kelp,,0.00,0.00,0.00,0.00,525.00\r\n");
}
