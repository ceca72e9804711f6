#include "edits/stock.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::wall;

namespace {

const FixingTypeId kHook{"hook_1"};

}  // namespace

TEST_CASE("What is in the drawer is counted anew, and none takes it out") {
    const Project bare = scenes::wall_of(3600, 2400);
    const Project some = edits::set_stock(bare, kHook, 4).value();
    CHECK(some.stock == std::vector<Stock>{{kHook, 4}});
    CHECK(edits::set_stock(some, kHook, 7)->stock == std::vector<Stock>{{kHook, 7}});
    CHECK(edits::set_stock(some, kHook, 0).value() == bare);
    CHECK(edits::set_stock(bare, kHook, 0).value() == bare);
    CHECK_FALSE(edits::set_stock(bare, kHook, -1));
}

TEST_CASE(
    "What the shop asks for a pack stays when the drawer is empty, and goes when it is taken "
    "back") {
    const Project bare = scenes::wall_of(3600, 2400);
    const Project priced = edits::set_pack(bare, kHook, 10, 3.5).value();
    CHECK(priced.stock == std::vector<Stock>{{kHook, 0, 10, 3.5, {}}});
    const Project counted = edits::set_stock(priced, kHook, 4).value();
    CHECK(counted.stock == std::vector<Stock>{{kHook, 4, 10, 3.5, {}}});
    CHECK(edits::set_stock(counted, kHook, 0)->stock == priced.stock);
    CHECK(edits::set_pack(priced, kHook, {}, {}).value() == bare);
    CHECK_FALSE(edits::set_pack(bare, kHook, 0, {}));
    CHECK_FALSE(edits::set_pack(bare, kHook, {}, -1.0));
}

TEST_CASE("Of two lines of one type the first has them all") {
    Project project = scenes::wall_of(3600, 2400);
    project.stock = {{kHook, 4}, {{"screw"}, 5}, {kHook, 2}};
    CHECK(edits::set_stock(project, kHook, 3)->stock ==
          std::vector<Stock>{{kHook, 3}, {{"screw"}, 5}});
    CHECK(edits::set_stock(project, kHook, 0)->stock == std::vector<Stock>{{{"screw"}, 5}});
}
