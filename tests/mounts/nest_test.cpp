#include "mounts/nest/nest.h"

#include "mounts/nest_cases.h"
#include "mounts/nest_replay.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::mounts;
using tests::replay;

namespace {

NestPlan nested(const NestTask& task, std::uint64_t rounds, std::uint64_t seed = 1) {
    return nest(task, {.seconds = 0, .seed = seed, .rounds = rounds}, [] { return true; });
}

NestTask any_task() {
    NestTask task;
    const int blanks = *rc::gen::inRange(0, 14);
    for (int i = 0; i < blanks; ++i)
        task.blanks.push_back(
            {.id = std::to_string(i),
             .size = {*rc::gen::inRange(1, 30) * 23.7, *rc::gen::inRange(1, 30) * 31.1},
             .may_turn = *rc::gen::arbitrary<bool>()});
    const int sheets = *rc::gen::inRange(1, 4);
    for (int i = 0; i < sheets; ++i) {
        NestSheet sheet{
            .id = std::to_string(i),
            .size = {*rc::gen::inRange(200, 1200) * 1.0, *rc::gen::inRange(200, 1200) * 1.0}};
        if (*rc::gen::arbitrary<bool>())
            sheet.count = *rc::gen::inRange<std::size_t>(0, 4);
        sheet.to_buy = *rc::gen::arbitrary<bool>();
        sheet.has_grain = *rc::gen::arbitrary<bool>();
        sheet.margin = *rc::gen::element(0.0, 3.3, 20.0, 150.0);
        task.sheets.push_back(sheet);
    }
    for (std::size_t i = 0; i < task.blanks.size(); i += 3)
        task.sheets.push_back(
            {.id = "drop-out",
             .size = {task.blanks[i].size.width * 0.7, task.blanks[i].size.height * 0.8},
             .drop_out_of = i});
    return task;
}

NestTask sheets_of(std::vector<NestSheet> sheets, std::vector<geometry::Size> blanks) {
    NestTask task{.blanks = {}, .sheets = std::move(sheets)};
    for (const geometry::Size size : blanks)
        task.blanks.push_back({.id = std::to_string(task.blanks.size()), .size = size});
    return task;
}

std::ptrdiff_t bought(const NestTask& task, const NestPlan& plan) {
    return std::count_if(plan.sheets.begin(), plan.sheets.end(), [&task](const CutSheet& sheet) {
        return task.sheets[sheet.sheet].to_buy;
    });
}

}  // namespace

TEST_CASE("Every plan can be cut as it says, whatever is asked", "[nest]") {
    rc::prop("laws of nesting", [] {
        const NestTask task = any_task();
        const NestPlan plan = nested(task, 6, *rc::gen::inRange<std::uint64_t>(0, 1000));
        RC_ASSERT(replay(task, plan) == "");
        if (plan.proved)
            RC_ASSERT(plan.count == plan.bound);
    });
}

TEST_CASE("The same seed and rounds give the same plan", "[nest]") {
    rc::prop("determinism", [] {
        const NestTask task = any_task();
        RC_ASSERT(nested(task, 5, 7) == nested(task, 5, 7));
    });
}

TEST_CASE("Public instances are nested in the best known number of sheets", "[nest]") {
    // tests/data/cutting/README.md; a share of them, as bench_mounts runs all.
    std::size_t shown = 0;
    for (std::size_t i = 0; const tests::NestCase& one : tests::small_cases()) {
        if (i++ % 4 != 0)
            continue;
        const NestPlan plan = nested(one.task, 60);
        INFO(one.name);
        CHECK(replay(one.task, plan).empty());
        CHECK(plan.count <= one.best_turned);
        const NestTask fixed = tests::without_turning(one.task);
        const NestPlan unturned = nested(fixed, 60);
        CHECK(replay(fixed, unturned).empty());
        CHECK(unturned.count <= one.best_fixed + 1);
        ++shown;
    }
    CHECK(shown == 13);
}

TEST_CASE("Mount blanks on sheets of card take no more sheets than the best known plan", "[nest]") {
    for (const tests::NestCase& one : tests::mount_cases()) {
        if (one.task.blanks.size() > 20)
            continue;
        const NestPlan plan = nested(one.task, 60);
        INFO(one.name);
        CHECK(replay(one.task, plan).empty());
        CHECK(plan.count <= one.best_turned);
    }
}

TEST_CASE("Blanks that fill sheets to the last mm are placed, and proved", "[nest]") {
    const NestTask task = sheets_of({{.id = "s", .size = {1000, 800}}},
                                    {{500, 400}, {500, 400}, {500, 400}, {500, 400}, {800, 1000}});
    const NestPlan plan = nested(task, 20);
    CHECK(replay(task, plan).empty());
    CHECK(plan.count == 2);
    CHECK(plan.proved);
    CHECK(plan.waste == Approx(0).margin(1e-12));
    CHECK(largest_offcut(plan) == 0);
}

TEST_CASE("At the least number of sheets what is left is one large offcut", "[nest]") {
    // Four blanks of 250 x 200 leave half of 1000 x 400 in one piece when they stand together.
    const NestTask task = sheets_of({{.id = "s", .size = {1000, 400}}},
                                    {{250, 200}, {250, 200}, {250, 200}, {250, 200}});
    const NestPlan plan = nested(task, 40);
    CHECK(replay(task, plan).empty());
    CHECK(largest_offcut(plan) == Approx(200000));
    CHECK(plan.sheets[0].offcuts.size() == 1);
}

TEST_CASE("Sheets at hand are used before any is bought, and then the fewest", "[nest]") {
    const std::vector<NestSheet> sheets = {
        {.id = "new", .size = {1120, 815}, .to_buy = true, .price = 9},
        {.id = "offcut", .size = {520, 420}, .count = 2}};
    const NestTask needs_none = sheets_of(sheets, {{500, 400}, {400, 500}});
    const NestPlan from_offcuts = nested(needs_none, 20);
    CHECK(replay(needs_none, from_offcuts).empty());
    CHECK(bought(needs_none, from_offcuts) == 0);
    CHECK(from_offcuts.count == 2);
    // One sheet of more than 500 x 400 must be bought; what fits beside comes from it too.
    const NestTask needs_one = sheets_of(sheets, {{500, 400}, {500, 400}, {500, 700}});
    const NestPlan from_new = nested(needs_one, 20);
    CHECK(replay(needs_one, from_new).empty());
    CHECK(bought(needs_one, from_new) == 1);
    CHECK(from_new.count == 1);
    // And where nothing fits beside, the rest comes from what is at hand.
    const NestTask needs_all = sheets_of(sheets, {{500, 400}, {500, 400}, {1000, 800}});
    const NestPlan from_all = nested(needs_all, 20);
    CHECK(replay(needs_all, from_all).empty());
    CHECK(bought(needs_all, from_all) == 1);
    CHECK(from_all.count == 3);
}

TEST_CASE("Of equal sheets to buy the cheaper is taken", "[nest]") {
    const NestTask task =
        sheets_of({{.id = "dear", .size = {800, 600}, .to_buy = true, .price = 9},
                   {.id = "fair", .size = {800, 600}, .to_buy = true, .price = 5}},
                  {{700, 500}});
    const NestPlan plan = nested(task, 4);
    CHECK(replay(task, plan).empty());
    REQUIRE(plan.count == 1);
    CHECK(plan.sheets[0].sheet == 1);
}

TEST_CASE("Of two sheets that would do, the one with less waste is taken", "[nest]") {
    const NestTask task =
        sheets_of({{.id = "large", .size = {1630, 1120}}, {.id = "small", .size = {1120, 815}}},
                  {{500, 400}, {500, 400}, {300, 400}});
    const NestPlan plan = nested(task, 20);
    CHECK(replay(task, plan).empty());
    REQUIRE(plan.count == 1);
    CHECK(plan.sheets[0].sheet == 1);
    CHECK(plan.proved);
}

TEST_CASE("Grain keeps blanks unturned", "[nest]") {
    NestTask task = sheets_of({{.id = "s", .size = {600, 400}}}, {{400, 600}});
    CHECK(nested(task, 2).count == 1);
    task.sheets[0].has_grain = true;
    const NestPlan plan = nested(task, 2);
    CHECK(plan.count == 0);
    CHECK(plan.left_out == std::vector<std::size_t>{0});
}

TEST_CASE("What drops out of a window serves for a smaller blank once it is there", "[nest]") {
    NestTask task =
        sheets_of({{.id = "s", .size = {600, 800}, .count = 1}}, {{150, 200}, {600, 800}});
    CHECK(nested(task, 4).left_out.size() == 1);
    task.sheets.push_back({.id = "window", .size = {400, 600}, .margin = 5, .drop_out_of = 1});
    const NestPlan plan = nested(task, 4);
    CHECK(replay(task, plan).empty());
    CHECK(plan.left_out.empty());
    CHECK(plan.count == 1);
    CHECK(plan.proved);
    REQUIRE(plan.sheets.size() == 2);
    CHECK(plan.sheets[1].sheet == 1);
}

TEST_CASE("Nothing is cut from the window of a blank that no sheet holds", "[nest]") {
    NestTask task =
        sheets_of({{.id = "s", .size = {600, 800}, .count = 1}}, {{150, 200}, {900, 900}});
    task.sheets.push_back({.id = "window", .size = {400, 600}, .drop_out_of = 1});
    const NestPlan plan = nested(task, 4);
    CHECK(replay(task, plan).empty());
    CHECK(plan.left_out == std::vector<std::size_t>{1});
    CHECK(plan.proved);
}

TEST_CASE("Part of a sheet that is taken costs nothing, and what is left of it is an offcut",
          "[nest]") {
    NestTask task = sheets_of({{.id = "s", .size = {600, 800}}}, {{150, 200}});
    task.sheets.push_back({.id = "part", .size = {160, 200}, .taken = true});
    const NestPlan plan = nested(task, 4);
    CHECK(plan.count == 0);
    CHECK(plan.bound == 0);
    CHECK(plan.proved);
    CHECK(largest_offcut(plan) == Approx(10 * 200));
}

TEST_CASE("Patience ends a search that finds nothing better", "[nest]") {
    const NestTask task = sheets_of({{.id = "s", .size = {1000, 400}}}, {{250, 200}, {250, 200}});
    std::uint64_t asked = 0;
    const NestPlan plan = nest(task, {.seconds = 0, .rounds = 1000000, .patience = 10}, [&asked] {
        ++asked;
        return true;
    });
    CHECK(replay(task, plan).empty());
    CHECK(asked < 1000);
}

TEST_CASE("Too few sheets leave out blanks, and this is not called proved", "[nest]") {
    const NestTask task = sheets_of({{.id = "s", .size = {500, 400}, .count = 1}},
                                    {{500, 400}, {500, 400}, {900, 900}});
    const NestPlan plan = nested(task, 4);
    CHECK(replay(task, plan).empty());
    CHECK(plan.left_out.size() == 2);
    CHECK(plan.bound == 2);
    CHECK_FALSE(plan.proved);
}

TEST_CASE("Nesting can be stopped at once and still gives a plan", "[nest]") {
    const NestTask task = tests::small_cases()[10].task;
    int asked = 0;
    const NestPlan plan = nest(task, {.seconds = 0, .rounds = 1000000}, [&asked] {
        ++asked;
        return false;
    });
    CHECK(asked >= 1);
    CHECK(replay(task, plan).empty());
    CHECK(plan.left_out.empty());
}

TEST_CASE("No blanks need no sheet, and no sheet holds no blank", "[nest]") {
    CHECK(nested({.blanks = {}, .sheets = {{.id = "s", .size = {500, 400}}}}, 2).sheets.empty());
    const NestPlan plan = nested(sheets_of({}, {{100, 100}}), 2);
    CHECK(plan.sheets.empty());
    CHECK(plan.left_out.size() == 1);
}
