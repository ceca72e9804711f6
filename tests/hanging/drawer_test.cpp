#include "hanging/drawer.h"

#include <catch2/catch.hpp>

namespace wallwright::hanging {

namespace {

wall::Stock some(const std::string& type, int count) {
    return {{type}, count, {}};
}

}  // namespace

TEST_CASE("A drawer gives what it has and no more") {
    Drawer drawer({some("hook_small", 3)});
    CHECK(drawer.take({"hook_small"}, 2) == 2);
    CHECK(drawer.left({"hook_small"}) == 1);
    CHECK(drawer.take({"hook_small"}, 2) == 1);
    CHECK(drawer.take({"hook_small"}, 2) == 0);
    CHECK(drawer.left({"hook_small"}) == 0);
}

TEST_CASE("Two lines of one kind of fixing are added up") {
    const Drawer drawer({some("screw", 3), some("hook_small", 1), some("screw", 4)});
    CHECK(drawer.left({"screw"}) == 7);
}

TEST_CASE("A drawer has none of what it was not told of") {
    Drawer drawer({});
    CHECK(drawer.left({"screw"}) == 0);
    CHECK(drawer.take({"screw"}, 1) == 0);
}

}  // namespace wallwright::hanging
