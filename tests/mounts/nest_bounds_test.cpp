#include "mounts/nest/bounds.h"
#include "mounts/nest_cases.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::mounts;

namespace {

std::size_t bound_of(const NestTask& task) {
    return sheet_bound(stock_of(task));
}

}  // namespace

TEST_CASE("No bound is above the best known plan of a public instance", "[nest]") {
    // tests/data/cutting/README.md
    for (std::size_t i = 0; const tests::NestCase& one : tests::all_cases()) {
        if (i++ % 4 != 0)
            continue;
        INFO(one.name);
        CHECK(bound_of(one.task) <= one.best_turned);
        CHECK(bound_of(tests::without_turning(one.task)) <= one.best_fixed);
    }
}

TEST_CASE("On the small public instances the bounds are as close as a second calculation",
          "[nest]") {
    // Sums of dff_lb_rotated and dff_lb_oriented in tests/data/cutting/cutting_2bp_instances.csv,
    // and of area_lb.
    std::size_t turned = 0;
    std::size_t fixed = 0;
    std::size_t area = 0;
    for (const tests::NestCase& one : tests::small_cases()) {
        turned += bound_of(one.task);
        fixed += bound_of(tests::without_turning(one.task));
        area += area_bound(stock_of(one.task));
    }
    CHECK(turned >= 315);
    CHECK(fixed >= 329);
    CHECK(area == 275);
}

TEST_CASE("Blanks just over half of a sheet each way need one each, unless they turn", "[nest]") {
    NestTask task{.blanks = {}, .sheets = {{.id = "s", .size = {1000, 800}}}};
    for (int i = 0; i < 5; ++i)
        task.blanks.push_back({.id = "b", .size = {501, 401}, .may_turn = false});
    CHECK(area_bound(stock_of(task)) == 2);
    CHECK(bound_of(task) == 5);
    // Turned, one lies beside another: 401 + 501 < 1000.
    for (NestBlank& blank : task.blanks)
        blank.may_turn = true;
    CHECK(bound_of(task) == 3);
    for (NestBlank& blank : task.blanks)
        blank.size = {500, 400};
    CHECK(bound_of(task) == 2);
}

TEST_CASE("Of sheets of several sizes the largest count first in the bound", "[nest]") {
    NestTask task{
        .blanks = {{.id = "a", .size = {500, 400}}, {.id = "b", .size = {100, 100}}},
        .sheets = {{.id = "s", .size = {500, 400}, .count = 1}, {.id = "t", .size = {100, 100}}}};
    CHECK(bound_of(task) == 2);
    task.sheets.push_back({.id = "u", .size = {600, 500}, .to_buy = true});
    CHECK(bound_of(task) == 1);
}

TEST_CASE("What a drop-out holds needs no sheet", "[nest]") {
    const NestTask task{
        .blanks = {{.id = "a", .size = {500, 400}}, {.id = "b", .size = {300, 200}}},
        .sheets = {{.id = "s", .size = {500, 400}},
                   {.id = "d", .size = {300, 200}, .drop_out_of = 0}}};
    CHECK(bound_of(task) == 1);
}
