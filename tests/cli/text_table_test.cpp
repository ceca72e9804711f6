#include "cli/text_table.h"

#include <catch2/catch.hpp>

using namespace wallwright::cli;

TEST_CASE("Columns are as wide as their widest cell, and lines end without spaces") {
    CHECK(text_table({{"piece"}, {"mm", Side::right}}, {{"kelp", "300"}, {"dune at dusk", "40"}}) ==
          "piece          mm\n"
          "------------  ---\n"
          "kelp          300\n"
          "dune at dusk   40\n");
    CHECK(text_table({{"a"}, {"b"}}, {{"x", ""}}) == "a  b\n-  -\nx\n");
}

TEST_CASE("Letters beyond ASCII keep the columns straight") {
    CHECK(columns_of("Ålesund") == 7);
    CHECK(columns_of("海の絵") == 6);
    CHECK(columns_of("e\xCC\x81") == 1);
    CHECK(columns_of("\xFF\xC3") == 2);
}
