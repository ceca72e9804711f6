#include "store/csv.h"

#include "store/catalogue.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

namespace wallwright::store {

namespace {

using units::LengthUnit;
using wall::PieceState;

std::vector<FrameRow> frames(std::string_view text, LengthUnit bare = LengthUnit::mm) {
    auto read = read_frames_csv(text, "frames.csv", bare, built_in_catalogue().sizes);
    INFO((read ? "" : to_text(read.error())));
    REQUIRE(read);
    return *read;
}

FrameRow frame(std::string_view text, LengthUnit bare = LengthUnit::mm) {
    const auto all = frames(text, bare);
    REQUIRE(all.size() == 1);
    return all.front();
}

void check_size(const FrameRow& frame, geometry::Size size) {
    CHECK(frame.outside.width == Approx(size.width));
    CHECK(frame.outside.height == Approx(size.height));
}

std::string complaint(std::string_view text) {
    const auto read =
        read_frames_csv(text, "frames.csv", LengthUnit::mm, built_in_catalogue().sizes);
    return read ? "no complaint" : to_text(read.error());
}

}  // namespace

TEST_CASE("Frames come with all that the table says of them") {
    const FrameRow kelp = frame(
        "title,width,height,weight,depth,hanger,status,x,y\n"
        "Kelp,400,500,1.2,22,two rings,hung,900,1300\n");
    CHECK(kelp.title == "Kelp");
    check_size(kelp, {400, 500});
    CHECK(kelp.weighed == wall::Kilograms{1.2});
    CHECK(kelp.depth == 22);
    CHECK(kelp.hanger == wall::HangerType::two_rings);
    CHECK(kelp.state == PieceState::hung);
    CHECK(kelp.at == geometry::Point<geometry::Wall>{900, 1300});
}

TEST_CASE("Only title, width and height are needed, in any order and either case") {
    const FrameRow kelp = frame("HEIGHT,Title,Width\n500,Kelp,400");
    check_size(kelp, {400, 500});
    CHECK_FALSE(kelp.weighed);
    CHECK_FALSE(kelp.depth);
    CHECK(kelp.hanger == wall::HangerType::strips);
    CHECK(kelp.state == PieceState::waiting);
    CHECK_FALSE(kelp.at);
}

TEST_CASE("A unit stands in the cell, in the header, or is the one asked for") {
    for (const char* header :
         {"title,width (cm),height_cm", "title,width [cm],height cm", "title,Width (CM),height.cm"})
        check_size(frame(std::string(header) + "\nKelp,40,50"), {400, 500});
    check_size(frame("title,width,height\nKelp,40 cm,0.5 m"), {400, 500});
    check_size(frame("title,width_mm,height_mm\nKelp,400,50 cm", LengthUnit::inch), {400, 500});
    check_size(frame("title,width,height\nKelp,40,50", LengthUnit::cm), {400, 500});
    check_size(frame("title,width,height\nKelp,16 1/2,20", LengthUnit::inch), {419.1, 508});
}

TEST_CASE("An inch sign is no quote, inside quotes or without them") {
    check_size(frame("title,width,height\nKelp,16.5\",20\""), {419.1, 508});
    check_size(frame("title,width,height\nKelp,\"16.5\"\"\",\"20 in\""), {419.1, 508});
}

TEST_CASE("Weights are read in kilograms, grams or pounds and ounces") {
    const auto weight = [](std::string_view header, std::string_view cell) {
        return frame("title,width,height," + std::string(header) + "\nKelp,400,500," +
                     std::string(cell))
            .weighed->value;
    };
    CHECK(weight("weight", "850 g") == Approx(0.85));
    CHECK(weight("weight [g]", "850") == Approx(0.85));
    CHECK(weight("weight_kg", "1.25") == Approx(1.25));
    CHECK(weight("weight (lb)", "2") == Approx(2 * units::kKgPerPound));
    CHECK(weight("weight (lb)", "14 oz") == Approx(14 * units::kKgPerPound / 16));
    CHECK(weight("weight", "2 lb 6 oz") == Approx(2.375 * units::kKgPerPound));
}

TEST_CASE("Semicolons come with decimal commas, and tabs with either sign") {
    check_size(frame("title;width (cm);height (cm);weight\nKelp;31,5;40,25;1,2 kg"), {315, 402.5});
    check_size(frame("title\twidth\theight\nKelp, left\t31,5\t40.25"), {31.5, 40.25});
}

TEST_CASE(
    "What spreadsheets add does no harm: byte order mark, CRLF, blank lines, empty columns at the "
    "end") {
    const auto all = frames(
        "\xEF\xBB\xBFtitle,width,height,,\r\n\r\nKelp,400,500,,\r\n,,,,\r\n\"Dunes, "
        "late\",300,400,,\r\n");
    REQUIRE(all.size() == 2);
    CHECK(all[0].title == "Kelp");
    CHECK(all[1].title == "Dunes, late");
    check_size(all[1], {300, 400});
}

TEST_CASE("A size may be written in one cell, or be the name of one in the catalogue") {
    check_size(frame("title,size\nKelp,30x40 cm"), {300, 400});
    check_size(frame("title,size (in)\nKelp,12 x 16"), {304.8, 406.4});
    check_size(frame("title,size\nKelp,A4"), {210, 297});
    check_size(frame("title,size\nKelp,50x70cm"), {500, 700});
}

TEST_CASE("A frame with a place and no status is planned") {
    CHECK(frame("title,width,height,x,y\nKelp,400,500,0,1200").state == PieceState::planned);
}

TEST_CASE("A bad cell is named with its line, its column and a caret") {
    CHECK(complaint("title,width,height\nKelp,400,500\nDunes,wide,400\n") ==
          "frames.csv:3, column 2 (width): " +
              units::parse_size("wide", LengthUnit::mm).error().what + "; " +
              units::parse_size("wide", LengthUnit::mm).error().remedy +
              "\n  Dunes,wide,400\n"
              "        ^");
    CHECK(complaint("title,width,height,weight\nKelp,400,500,850") ==
          "frames.csv:2, column 4 (weight): \"850\" without a unit would be kilograms; write 850 "
          "g, or 850 kg if it is so\n"
          "  Kelp,400,500,850\n"
          "               ^");
    CHECK(complaint("title,width,height,status\nKelp,400,500,up") ==
          "frames.csv:2, column 4 (status): \"up\" is not a status; write one of hung, planned, "
          "waiting\n"
          "  Kelp,400,500,up\n"
          "               ^");
    CHECK(complaint("title,width,height\nKelp,,500") ==
          "frames.csv:2, column 2 (width): this cell is empty; every frame needs a title and its "
          "size over the moulding\n"
          "  Kelp,,500\n"
          "       ^");
}

TEST_CASE(
    "The caret stands right after a byte order mark and after letters of more than one byte") {
    CHECK(complaint("\xEF\xBB\xBFtitle,breadth,height\n")
              .ends_with("\n  title,breadth,height\n        ^"));
    CHECK(complaint("title,width,height\nKüste,0,500").ends_with("\n  Küste,0,500\n        ^"));
}

TEST_CASE("A column that is unknown, missing or there twice is a problem") {
    CHECK(complaint("title,breadth,height\nKelp,400,500") ==
          "frames.csv:1, column 2 (breadth): \"breadth\" is not a column of frames; use title, "
          "width, height, size, weight, "
          "depth, hanger, status, x, y, or leave it out\n"
          "  title,breadth,height\n"
          "        ^");
    CHECK(complaint("title,width (px),height\nKelp,400,500")
              .starts_with("frames.csv:1, column 2 (width (px)): \"px\" is not a unit that width "
                           "can be in; use mm, cm or in"));
    CHECK(complaint("title,width (kg),height\nKelp,400,500").starts_with("frames.csv:1, column 2"));
    CHECK(complaint("title (cm),width,height\nKelp,400,500").starts_with("frames.csv:1, column 1"));
    CHECK(complaint("width,height\n400,500") ==
          "frames.csv:1: there is no column title; name the columns in the first line: title, "
          "width, height");
    CHECK(complaint("title,width\nKelp,400") ==
          "frames.csv:1: the size of a frame is width and height, or size; give the two columns "
          "width and height, or the "
          "one column size");
    CHECK(complaint("title,size,width\nKelp,a4,400")
              .starts_with("frames.csv:1: the size of a frame"));
    CHECK(complaint("title,width,height,width_cm\nKelp,400,500,40") ==
          "frames.csv:1: there are two columns width; leave one of them out");
}

TEST_CASE(
    "A line with more or fewer cells than the header is a problem, as an unquoted comma makes it") {
    CHECK(complaint("title,width,height\nDunes, late,400,500") ==
          "frames.csv:2, column 4: the line has 4 cells, the header 3; give each column its cell, "
          "and put a cell that holds "
          "the separator in quotes\n"
          "  Dunes, late,400,500\n"
          "                  ^");
    CHECK(complaint("title,width,height\nKelp,400")
              .starts_with("frames.csv:2, column 2 (width): the line has 2 cells"));
}

TEST_CASE("Place and status must agree") {
    const auto said = [](std::string_view cells) {
        return complaint("title,width,height,status,x,y\nKelp,400,500," + std::string(cells));
    };
    CHECK(said("hung,,").starts_with(
        "frames.csv:2, column 1 (title): a frame that is hung needs a place"));
    CHECK(said("waiting,1,2")
              .starts_with("frames.csv:2, column 1 (title): a frame that waits has no place"));
    CHECK(said("planned,1,")
              .starts_with("frames.csv:2, column 1 (title): x without y; give both, or neither"));
    CHECK(said("planned,,1")
              .starts_with("frames.csv:2, column 1 (title): y without x; give both, or neither"));
    CHECK(said("planned,-1,2") == "no complaint");
}

TEST_CASE("A frame weighs more than nothing and has a size") {
    CHECK(complaint("title,width,height,weight\nKelp,400,500,0 g")
              .starts_with("frames.csv:2, column 4 (weight): a frame weighs"));
    CHECK(complaint("title,width,height\nKelp,0,500")
              .starts_with("frames.csv:2, column 2 (width): "));
    CHECK(complaint("title,width,height,depth\nKelp,400,500,-3")
              .starts_with("frames.csv:2, column 4 (depth): "));
}

TEST_CASE("A table without frames says so") {
    CHECK(
        complaint("") ==
        "frames.csv: the table is empty; name its columns in the first line: title, width, height");
    CHECK(complaint("title,width,height\n\n") ==
          "frames.csv: there is no frame below the header; write one frame a line");
}

TEST_CASE(
    "Whatever the text, a table gives frames with sizes or a problem that says what is wrong") {
    rc::prop("no table is read wrongly in silence", [] {
        const auto cell = rc::gen::element<std::string>("Kelp", "400", "40 cm", "", "\"",
                                                        "\"a\"\"b\"", "1,5", "hung", "\xFC", "-1",
                                                        "1e9", "a4", "2 lb 3 oz", "\r", "0");
        std::string text = *rc::gen::element<std::string>("title,width,height,weight,status,x,y\n",
                                                          "title;size;depth\n", "");
        for (const std::string& one : *rc::gen::container<std::vector<std::string>>(cell))
            text += one + *rc::gen::element<std::string>(",", ";", "\n", "\t");
        const auto read = read_frames_csv(text, "f", LengthUnit::mm, built_in_catalogue().sizes);
        if (!read)
            RC_ASSERT(!read.error().what.empty());
        else
            for (const FrameRow& row : *read) {
                RC_ASSERT(!row.title.empty());
                RC_ASSERT(row.outside.width > 0 && row.outside.height > 0);
                RC_ASSERT(row.at.has_value() == (row.state != PieceState::waiting));
            }
    });
}

}  // namespace wallwright::store
