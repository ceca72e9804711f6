#include "store/csv_table.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

namespace wallwright::store {

namespace {

using Texts = std::vector<std::vector<std::string>>;

Texts texts(const CsvTable& table) {
    Texts all;
    const auto add = [&all](const CsvRow& row) {
        auto& texts = all.emplace_back();
        for (const CsvCell& cell : row)
            texts.push_back(cell.text);
    };
    add(table.header);
    for (const CsvRow& row : table.rows)
        add(row);
    return all;
}

Texts read(std::string_view text) {
    const auto table = read_csv_table(text, "t.csv");
    INFO((table ? "" : to_text(table.error())));
    REQUIRE(table);
    return texts(*table);
}

std::string complaint(std::string_view text) {
    const auto table = read_csv_table(text, "t.csv");
    return table ? "no complaint" : to_text(table.error());
}

}  // namespace

// The examples of RFC 4180, section 2, rules 1 to 7.
TEST_CASE("Tables are read as RFC 4180 says") {
    CHECK(read("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n") ==
          Texts{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});
    CHECK(read("aaa,bbb,ccc\r\nzzz,yyy,xxx") ==
          Texts{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});
    CHECK(read("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx") ==
          Texts{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});
    CHECK(read("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx") ==
          Texts{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}});
    CHECK(read("\"aaa\",\"b\"\"bb\",\"ccc\"") == Texts{{"aaa", "b\"bb", "ccc"}});
}

TEST_CASE("The separator is the one that the header has most of") {
    CHECK(read("a;b, c;d\n1,5;2;3") == Texts{{"a", "b, c", "d"}, {"1,5", "2", "3"}});
    CHECK(read("a\tb\n1,5\t2;3") == Texts{{"a", "b"}, {"1,5", "2;3"}});
    CHECK(read("a\n1") == Texts{{"a"}, {"1"}});
    CHECK(read("\n\r\na;b\n1;2") == Texts{{"a", "b"}, {"1", "2"}});
}

TEST_CASE("Spaces around cells are not part of them, and lines with nothing on them are left out") {
    CHECK(read(" a , \"b\" \n\n ,\n1 ,\" 2\"\n") == Texts{{"a", "b"}, {"1", "2"}});
}

TEST_CASE("An empty last cell counts as a cell") {
    CHECK(read("a,b\n1,") == Texts{{"a", "b"}, {"1", ""}});
    CHECK(read("a,b\n1,\n") == Texts{{"a", "b"}, {"1", ""}});
}

TEST_CASE("Quotes that do not match are shown where they open or end") {
    CHECK(complaint("a,b\n1,\"two\n3,4") ==
          "t.csv:2: this quote is never closed; close it with \"\n"
          "  1,\"two\n"
          "    ^");
    CHECK(complaint("a,b\n\"one\" two,2") ==
          "t.csv:2: this stands after the closing quote; write a quote inside quotes as \"\"\n"
          "  \"one\" two,2\n"
          "        ^");
}

TEST_CASE("A table in another encoding than UTF-8 is named as such") {
    CHECK(complaint("title\nK\xFCste")
              .starts_with("t.csv:2: this is not UTF-8 text; save the table as CSV in UTF-8\n"));
}

TEST_CASE("A cell in quotes comes back whatever it holds") {
    rc::prop("quoting by RFC 4180 and reading are each other's inverse", [] {
        const auto part =
            rc::gen::element<std::string>("a", "\"", ",", ";", "\n", "\r\n", "é", "\t", "0");
        std::string cell = "x";
        std::string quoted = "\"x";
        for (const std::string& one : *rc::gen::container<std::vector<std::string>>(part)) {
            cell += one;
            quoted += one == "\"" ? "\"\"" : one;
        }
        const auto table = read_csv_table("a,b\n" + quoted + "y\",2\n", "t");
        RC_ASSERT(table);
        RC_ASSERT(texts(*table) == (Texts{{"a", "b"}, {cell + "y", "2"}}));
    });
}

}  // namespace wallwright::store
