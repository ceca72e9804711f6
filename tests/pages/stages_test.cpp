// A wall that grows: one is not to mark all of it today, nor what nobody has bought.
#include "pages/looking.h"
#include "pages/piece_list.h"
#include "pages/sheet_loads.h"
#include "pages/sheet_marks.h"
#include "support/gallery.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

using namespace wallwright;
using namespace wallwright::pages;

namespace {

/// Six pieces: two for today, three of the first stage, one of the second that is not bought yet.
wall::Project growing() {
    wall::Project project = scenes::salon_of(6);
    for (std::size_t i = 2; i < 6; ++i)
        project.pieces[i].stage = i < 5 ? 1 : 2;
    project.pieces[5].wished = true;
    return project;
}

template <class Sheets>
std::string words_of(Sheets sheets_of, const wall::Project& project) {
    std::string words;
    const rules::Assessment assessment = rules::assess(project, scenes::small_catalogue());
    for (const draw::PageDrawing& sheet : sheets_of(project, assessment, SheetOptions{}))
        words += test::words_in(sheet.shapes);
    return words;
}

bool has(const std::string& text, const std::string& words) {
    return text.find(words) != std::string::npos;
}

std::vector<std::string> heads_of(const Table& table) {
    std::vector<std::string> heads;
    for (const Column& column : table.columns)
        heads.push_back(column.head);
    return heads;
}

}  // namespace

TEST_CASE("The marks of each stage stand under its number, those for today first") {
    const std::string words = words_of(mark_sheets, growing());
    const std::size_t today = words.find("\nBefore the first stage\n");
    const std::size_t first = words.find("\nStage 1\n");
    const std::size_t second = words.find("\nStage 2\n");
    REQUIRE(second != std::string::npos);
    CHECK(today < first);
    CHECK(first < second);
    CHECK(words.find("\nStage 1\n", first + 1) == std::string::npos);
    CHECK(has(words, "mark and hang one stage"));
}

TEST_CASE("A wall without stages says nothing of them") {
    const wall::Project project = scenes::salon_of(6);
    CHECK_FALSE(has(words_of(mark_sheets, project), "tage"));
    CHECK_FALSE(has(words_of(load_sheets, project), "Stage"));
    CHECK(heads_of(piece_list(project, PieceListWidth::names)).size() == 2);
}

TEST_CASE("The list of pieces tells each one's stage where there are any") {
    const wall::Project project = growing();
    const Table list = piece_list(project, PieceListWidth::sizes);
    CHECK(heads_of(list) == std::vector<std::string>{"", "Piece", "Stage", "Outside"});
    CHECK(std::get<Words>(list.rows[0].cells[2]).text.empty());
    CHECK(std::get<Words>(list.rows[4].cells[2]).text == "1");
    CHECK(std::get<Words>(list.rows[5].cells[2]).text == "2");
    CHECK(least_width(project, PieceListWidth::sizes) >
          least_width(scenes::salon_of(6), PieceListWidth::sizes));
}

TEST_CASE("A frame that is not bought yet says so wherever it is listed, with fixings of its own") {
    wall::Project project = growing();
    CHECK(has(words_of(mark_sheets, project), "bought yet"));
    const std::string loads = words_of(load_sheets, project);
    CHECK(has(loads, "bought yet)"));
    CHECK(has(loads, "For later stages and frames not bought yet"));
    CHECK(has(std::get<Words>(piece_list(project, PieceListWidth::names).rows[5].cells[1]).text,
              "(not bought yet)"));
    project.pieces[5].wished = false;
    CHECK_FALSE(has(words_of(load_sheets, project), "bought yet)"));
}

TEST_CASE("A heading in a table is not left alone at the end of a sheet") {
    Table table;
    table.columns = {{"Piece"}};
    for (int i = 0; i < 200; ++i) {
        table.rows.push_back({{}, false, fmt::format("Stage {}", i)});
        table.rows.push_back({{Words{fmt::format("Piece {}", i)}}});
    }
    Flow flow({Paper::a4, false, "Wall", "Marks", {}});
    add_table(flow, table);
    const std::vector<draw::PageDrawing> made = flow.take();
    REQUIRE(made.size() > 1);
    for (const draw::PageDrawing& sheet : made)
        for (int i = 0; i < 200; ++i) {
            INFO(i);
            CHECK(test::has_text(sheet.shapes, fmt::format("Stage {}", i)) ==
                  test::has_text(sheet.shapes, fmt::format("Piece {}", i)));
        }
}
