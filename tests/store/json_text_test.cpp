#include "store/json_text.h"

#include <catch2/catch.hpp>

namespace wallwright::store {

namespace {

std::string complaint(std::string_view text) {
    const auto value = parse_json(text, "wall.json");
    return value ? "no complaint" : to_text(value.error());
}

}  // namespace

TEST_CASE("Text that is not JSON is shown with its line and a caret") {
    CHECK(complaint("{\n  \"a\": 1,\n  \"b\": tru,\n  \"c\": 3\n}") ==
          "wall.json:3: the text is not JSON from here on; mend this line or the end of the one "
          "before\n"
          "    \"b\": tru,\n"
          "            ^");
    CHECK(complaint("{\"a\": 1,}") ==
          "wall.json:1: the text is not JSON from here on; mend this line or the end of the one "
          "before\n"
          "  {\"a\": 1,}\n"
          "          ^");
}

TEST_CASE("A file that ends too early is said to lack its end") {
    CHECK(complaint("{\"a\": [1, 2") ==
          "wall.json:1: the text ends before its JSON does; part of the file is missing; go back "
          "to an earlier copy\n"
          "  {\"a\": [1, 2\n"
          "             ^");
    CHECK(complaint("").starts_with("wall.json:1: the text ends before its JSON does"));
}

TEST_CASE("A key that stands twice in one object is refused, since one value would be lost") {
    CHECK(complaint("{\"a\": {\"x\": 1},\n \"b\": {\"x\": 1, \"y\": 2, \"x\": 3}}") ==
          "wall.json:2: \"x\" stands twice in the same object; keep one of the two\n"
          "   \"b\": {\"x\": 1, \"y\": 2, \"x\": 3}}\n"
          "                           ^");
    CHECK(complaint("[{\"x\": 1}, {\"x\": 2}]") == "no complaint");
}

TEST_CASE("A number beyond the range of a double is refused") {
    CHECK(
        complaint("{\"a\": 1e999}")
            .starts_with("wall.json:1: this number is beyond all measure; write a smaller one\n"));
}

TEST_CASE("Nesting that no project needs is refused, however deep it goes") {
    const std::string said = complaint(std::string(200000, '[') + std::string(200000, ']'));
    CHECK(said.starts_with("wall.json:1: brackets within brackets, more than 64 deep"));
    CHECK(complaint(std::string(64, '[') + std::string(64, ']')) == "no complaint");
}

TEST_CASE("Text in another encoding than UTF-8 is named as such") {
    CHECK(complaint("{\"title\": \"K\xFCste\"}") ==
          "wall.json:1: this is not UTF-8 text; save the file as UTF-8\n"
          "  {\"title\": \"K?ste\"}\n"
          "              ^");
}

TEST_CASE("A byte order mark before the text does no harm") {
    CHECK(parse_json("\xEF\xBB\xBF[1]", "f").value() == Json::parse("[1]"));
}

TEST_CASE("JSON is written one key a line, with short lists on one line") {
    const Json value =
        Json::parse(R"({"b":[[0,0],[1.5,2]],"a":{"list":[{"x":"é"},{}],"none":[]},"last":null})");
    CHECK(to_json_text(value) == R"({
  "b": [[0, 0], [1.5, 2]],
  "a": {
    "list": [
      {
        "x": "é"
      },
      {}
    ],
    "none": []
  },
  "last": null
}
)");
}

TEST_CASE("Text that is not UTF-8 is written with a mark in its place, not thrown over") {
    CHECK(to_json_text(Json("K\xFCste")) == "\"K\xEF\xBF\xBDste\"\n");
}

}  // namespace wallwright::store
