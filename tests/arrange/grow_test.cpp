#include "arrange/grow.h"

#include "growing.h"
#include "support/scenes.h"
#include "wall/validity.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <set>

using namespace wallwright;
using namespace wallwright::arrange;

namespace {

constexpr double kNoHurry = 1e6;  // s: the rounds end the search, never the clock

const auto kGoOn = [](double) { return true; };

GrowOptions rounds(std::uint64_t count, std::size_t per_stage = 1) {
    GrowOptions options;
    options.per_stage = per_stage;
    options.seconds = kNoHurry;
    options.rounds = count;
    return options;
}

Task task_for(const wall::Project& project) {
    return task_of(project, scenes::small_catalogue(), Free::waiting_alone);
}

WallRect lamp_of(const wall::Project& project) {
    return place_of(project.room, wall::FurnitureId{"lamp"}).value();
}

/// A wall by chance: a row of what hangs, what waits, and a point to grow toward.
struct Chance {
    wall::Project project;
    WallRect target;
    std::size_t per_stage = 1;
    std::uint64_t seed = 1;
};

Chance any_chance() {
    Chance chance{scenes::wall_of(3600, 2500), {}, 1, 1};
    const auto side = [] { return 10.0 * *rc::gen::inRange(18, 60); };
    double left = 600;
    const int hung = *rc::gen::inRange(1, 4);
    for (int i = 0; i < hung; ++i) {
        const geometry::Size size{side(), side()};
        scenes::add_hung(chance.project, "h" + std::to_string(i), {left, 1500 - size.height / 2},
                         size);
        left += size.width + 60;
    }
    const int waiting = *rc::gen::inRange(1, 6);
    for (int i = 0; i < waiting; ++i)
        scenes::add_waiting(chance.project, "w" + std::to_string(i), {side(), side()});
    if (*rc::gen::arbitrary<bool>())
        scenes::add_fixture(chance.project, wall::FixtureType::window,
                            WallRect::at({2700, 1000}, {600, 800}));
    const WallPoint point{10.0 * *rc::gen::inRange(0, 360), 10.0 * *rc::gen::inRange(0, 250)};
    chance.target = {point, point};
    chance.per_stage = *rc::gen::inRange<std::size_t>(1, 4);
    chance.seed = *rc::gen::inRange<std::uint64_t>(1, 1000);
    return chance;
}

/// Three hang on a wide wall; so many wait, no two of a size.
wall::Project many_sizes(int waiting) {
    wall::Project project = scenes::wall_of(12000, 5000);
    for (int i = 0; i < 3; ++i)
        scenes::add_hung(project, "h" + std::to_string(i), {1000 + 360.0 * i, 1500}, {300, 400});
    for (int i = 0; i < waiting; ++i)
        scenes::add_waiting(project, "w" + std::to_string(i),
                            {180.0 + 2 * i, 150.0 + 2 * (i * 37 % 150)});
    return project;
}

Growth grown(const Chance& chance, std::uint64_t round_count) {
    GrowOptions options = rounds(round_count, chance.per_stage);
    options.seed = chance.seed;
    return grow(task_for(chance.project), chance.target, options, kGoOn);
}

void check_layout(const Task& task, const Growth& growth) {
    Layout before = fixed_part(task);
    for (const Stage& stage : growth.stages) {
        RC_ASSERT(is_allowed(task, stage.layout));
        RC_ASSERT(stage.layout.size() == before.size() + stage.adds.size());
        RC_ASSERT(std::equal(before.begin(), before.end(), stage.layout.begin()));
        for (std::size_t i = before.size(); i < stage.layout.size(); ++i) {
            const Spot& added = stage.layout[i];
            RC_ASSERT(task.items[added.item].id == stage.adds[i - before.size()]);
            RC_ASSERT(std::any_of(stage.layout.begin(),
                                  stage.layout.begin() + static_cast<std::ptrdiff_t>(i),
                                  [&](const Spot& earlier) {
                                      return growing::at_the_gap(task, earlier.place, added.place);
                                  }));
        }
        before = stage.layout;
    }
}

}  // namespace

TEST_CASE("Every stage is allowed, keeps what was there and touches it at the gap, by law") {
    rc::prop("stages", [] {
        const Chance chance = any_chance();
        const Task task = task_for(chance.project);
        const Growth growth = grown(chance, 2);
        check_layout(task, growth);
        for (std::size_t i = 0; i < growth.stages.size(); ++i) {
            const Stage& stage = growth.stages[i];
            RC_ASSERT(i + 1 == growth.stages.size() || stage.adds.size() == chance.per_stage);
            RC_ASSERT(stage.adds.size() >= 1 && stage.adds.size() <= chance.per_stage);
            RC_ASSERT(stage.finished && *stage.finished > 0 && *stage.finished <= 1);
        }
    });
}

TEST_CASE("Every waiting piece goes up in one stage or is left out, by law") {
    rc::prop("pieces", [] {
        const Chance chance = any_chance();
        const Growth growth = grown(chance, 1);
        std::multiset<std::string> named;
        for (const Stage& stage : growth.stages)
            for (const wall::PieceId& id : stage.adds)
                named.insert(id.text);
        for (const wall::PieceId& id : growth.left_out)
            named.insert(id.text);
        std::multiset<std::string> waiting;
        for (const wall::Piece& piece : chance.project.pieces)
            if (piece.state == wall::PieceState::waiting)
                waiting.insert(piece.id.text);
        RC_ASSERT(named == waiting);
    });
}

TEST_CASE("The same seed grows the same, and more rounds never a worse growth, by law") {
    rc::prop("rounds", [] {
        const Chance chance = any_chance();
        const Growth one = grown(chance, 1);
        const Growth again = grown(chance, 1);
        const Growth more = grown(chance, 4);
        RC_ASSERT(one.stages.size() == again.stages.size());
        for (std::size_t i = 0; i < one.stages.size(); ++i) {
            RC_ASSERT(one.stages[i].layout == again.stages[i].layout);
            RC_ASSERT(one.stages[i].finished == again.stages[i].finished);
        }
        RC_ASSERT(more.left_out.size() <= one.left_out.size());
        if (more.left_out.size() == one.left_out.size())
            RC_ASSERT(more.points >= one.points);
    });
}

TEST_CASE("The way to the target is measured from the nearest piece, by law") {
    rc::prop("distance", [] {
        const Chance chance = any_chance();
        for (const Stage& stage : grown(chance, 1).stages) {
            double least = 1e9;
            for (const Spot& spot : stage.layout) {
                const WallPoint at = chance.target.min;
                const double x = at.x - std::clamp(at.x, spot.place.left(), spot.place.right());
                const double y = at.y - std::clamp(at.y, spot.place.bottom(), spot.place.top());
                least = std::min(least, std::hypot(x, y));
            }
            RC_ASSERT(std::abs(stage.to_target - least) < 1e-6);
        }
    });
}

TEST_CASE("A group grows toward the lamp until it is there") {
    const wall::Project project = growing::row_over_sofa(8);
    const Task task = task_for(project);
    const Growth growth = grow(task, lamp_of(project), rounds(3, 2), kGoOn);
    REQUIRE(growth.stages.size() == 4);
    CHECK(growth.left_out.empty());
    double before = 4000 - 2220;
    for (const Stage& stage : growth.stages) {
        CHECK(stage.to_target <= before);
        before = stage.to_target;
    }
    CHECK(before < 1000);
}

TEST_CASE("A target that the group covers is reached") {
    const wall::Project project = growing::row_over_sofa(2);
    const WallRect inside = WallRect::at({1400, 1350}, {50, 50});
    for (const Stage& stage : grow(task_for(project), inside, rounds(2), kGoOn).stages)
        CHECK(stage.to_target == 0);
}

TEST_CASE("A piece that finds no place is left out and the rest goes up") {
    wall::Project project = growing::row_over_sofa(2);
    scenes::add_waiting(project, "sail", {3000, 2590});
    const Growth growth = grow(task_for(project), lamp_of(project), rounds(2), kGoOn);
    REQUIRE(growth.left_out.size() == 1);
    CHECK(growth.left_out.front().text == "sail");
    CHECK(growth.stages.size() == 2);
}

TEST_CASE("With nothing that waits there are no stages") {
    const wall::Project project = growing::row_over_sofa(0);
    CHECK(grow(task_for(project), lamp_of(project), rounds(2), kGoOn).stages.empty());
}

TEST_CASE("However little time there is, all pieces have a place") {
    const wall::Project project = growing::row_over_sofa(6);
    GrowOptions options;
    options.seconds = 0;
    const Growth growth = grow(task_for(project), lamp_of(project), options, [](double done) {
        CHECK(done == 1);
        return true;
    });
    CHECK(growth.stages.size() == 6);
    CHECK(growth.left_out.empty());
}

TEST_CASE("How finished a stage looks is said of none that nothing was compared with") {
    const wall::Project project = growing::row_over_sofa(3);
    GrowOptions options;
    options.seconds = 0;
    for (const Stage& stage : grow(task_for(project), lamp_of(project), options, kGoOn).stages)
        CHECK_FALSE(stage.finished);
    std::uint64_t asked = 0;
    const auto count = [&](double) { return ++asked > 0; };
    for (const Stage& stage : grow(task_for(project), lamp_of(project), rounds(1), count).stages)
        CHECK(stage.finished);
    std::uint64_t left = asked - 1;  // the last question is one of the last comparison
    const auto stop = [&](double) { return left-- > 1; };
    const Growth stopped = grow(task_for(project), lamp_of(project), rounds(1), stop);
    REQUIRE(stopped.stages.size() == 3);
    CHECK(stopped.stages.front().finished);
    CHECK_FALSE(stopped.stages.back().finished);
}

TEST_CASE(
    "Who stops the search is asked no more, and gets what is up by then, one piece at least") {
    const wall::Project project = growing::row_over_sofa(6);
    const Task task = task_for(project);
    std::size_t before = 1;
    for (const int last : {1, 4, 12, 40, 400}) {
        int asked = 0;
        const Growth growth =
            grow(task, lamp_of(project), rounds(50), [&](double) { return ++asked < last; });
        CHECK(asked == last);
        CHECK(growth.stages.size() >= before);
        CHECK(growth.stages.size() + growth.left_out.size() == 6);
        CHECK(growth.cut_short == !growth.left_out.empty());
        REQUIRE_FALSE(growth.stages.empty());
        CHECK(is_allowed(task, growth.stages.back().layout));
        before = growth.stages.size();
    }
    CHECK(before == 6);
}

TEST_CASE("Among 150 pieces of as many sizes a search that is not to go on looks at few") {
    const wall::Project project = many_sizes(150);
    const Task task = task_for(project);
    const WallRect target = WallRect::at({11000, 1500}, {0, 0});
    for (const std::size_t per_stage : {1U, 4U}) {
        int asked = 0;
        const Growth growth = grow(task, target, rounds(9, per_stage), [&](double) {
            ++asked;
            return false;
        });
        CHECK(asked == 1);
        REQUIRE(growth.stages.size() == 1);
        CHECK(growth.stages[0].adds.size() == 1);
        CHECK(growth.stages[0].layout.size() == 4);
        CHECK(is_allowed(task, growth.stages[0].layout));
        CHECK(growth.left_out.size() == 149);
        CHECK(growth.cut_short);
    }
}

TEST_CASE("The search asks at every piece that it looks at, from the first round on") {
    constexpr int kPieces = 12;
    const wall::Project project = many_sizes(kPieces);
    int asked = 0;
    const Growth growth = grow(task_for(project), WallRect::at({11000, 1500}, {0, 0}), rounds(1),
                               [&](double) { return ++asked > 0; });
    REQUIRE(growth.stages.size() == kPieces);
    CHECK_FALSE(growth.cut_short);
    CHECK(asked >= kPieces * (kPieces + 1) / 2);  // all, all but one, ..., the last
}

TEST_CASE("A search that is stopped looks on for a piece that has a place") {
    wall::Project project = growing::row_over_sofa(0);
    scenes::add_waiting(project, "sail", {3000, 2590});
    scenes::add_waiting(project, "kite", {300, 300});
    const Growth growth =
        grow(task_for(project), lamp_of(project), rounds(2), [](double) { return false; });
    REQUIRE(growth.stages.size() == 1);
    CHECK(growth.stages[0].adds == std::vector<wall::PieceId>{{"kite"}});
}

TEST_CASE("How much is done only grows") {
    const wall::Project project = growing::row_over_sofa(3);
    double last = 0;
    grow(task_for(project), lamp_of(project), rounds(3), [&](double done) {
        CHECK(done >= last);
        CHECK(done <= 1);
        last = done;
        return true;
    });
    CHECK(last > 0);
}

TEST_CASE("Nothing goes up where it is to keep clear") {
    const wall::Project project = growing::row_over_sofa(8);
    const GrowOptions options = rounds(2);
    const Task task = task_for(project);
    const WallRect beyond{{4900, 1400}, {4900, 1400}};
    const Growth growth = grow(task, beyond, options, kGoOn);
    REQUIRE(growth.stages.size() == 8);
    for (const Spot& spot : growth.stages.back().layout)
        CHECK_FALSE(geometry::overlaps(spot.place, lamp_of(project)));
}

TEST_CASE("A small group that hangs aside does not grow in place of the large one") {
    wall::Project project = growing::row_over_sofa(2);
    for (int i = 0; i < 2; ++i)
        scenes::add_hung(project, "more" + std::to_string(i), {1000 + 360.0 * i, 1760}, {300, 300});
    scenes::add_hung(project, "aside", {3500, 2000}, {200, 200});
    const Task task = task_for(project);
    const Growth growth = grow(task, lamp_of(project), rounds(2), kGoOn);
    REQUIRE(growth.stages.size() == 2);
    for (const Spot& spot : growth.stages.back().layout)
        if (!task.items[spot.item].fixed)
            CHECK(spot.place.right() < 3100);  // 2220 and two more with their gaps
}
