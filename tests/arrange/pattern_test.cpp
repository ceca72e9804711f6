#include "arrange/pattern.h"

#include "arrange/settle.h"
#include "random_task.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <set>

using namespace wallwright;
using namespace wallwright::arrange;
using test::add_item;
using test::any_plan;
using test::any_task;

namespace {

constexpr Pattern kBanded[] = {Pattern::row, Pattern::spine, Pattern::columns};

std::vector<std::uint32_t> pieces_of(const Plan& plan) {
    std::vector<std::uint32_t> pieces;
    for (const auto& row : plan.rows)
        pieces.insert(pieces.end(), row.begin(), row.end());
    std::ranges::sort(pieces);
    return pieces;
}

bool has_empty_row(const Plan& plan) {
    return std::ranges::any_of(plan.rows, &std::vector<std::uint32_t>::empty);
}

void check_whole(const Task& task, const Layout& block) {
    std::vector<std::uint32_t> items;
    for (const Spot& spot : block) {
        items.push_back(spot.item);
        CHECK(spot.place.width() == Approx(task.items[spot.item].size.width));
        CHECK(spot.place.height() == Approx(task.items[spot.item].size.height));
    }
    std::ranges::sort(items);
    CHECK(items == free_items(task));
}

bool keeps_the_gap(const Task& task, const Layout& block) {
    for (std::size_t i = 0; i < block.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (!clear_of_each_other(task, block[i].place, block[j].place))
                return false;
    return true;
}

WallRect place_in(const Layout& block, std::uint32_t item) {
    return std::ranges::find(block, item, &Spot::item)->place;
}

std::size_t count(const std::vector<Plan>& plans, Pattern pattern) {
    return static_cast<std::size_t>(std::ranges::count(plans, pattern, &Plan::pattern));
}

/// 2100 mm of sofa before a wall of 4 m, and pieces of many sizes.
Task over_a_sofa(std::size_t pieces) {
    constexpr geometry::Size kSizes[] = {{500, 700}, {400, 500}, {300, 400}, {210, 297},
                                         {600, 400}, {250, 250}, {330, 430}, {430, 330},
                                         {700, 500}, {297, 210}, {400, 300}, {240, 300}};
    Task task = test::wall_task({4000, 2500});
    task.beneath = Beneath{"Sofa", {{950, 0}, {3050, 850}}, 150, 255, 0.6, 0.75};
    task.keep_out.push_back(task.beneath->place);
    for (std::size_t i = 0; i < pieces; ++i)
        add_item(task, kSizes[i % std::size(kSizes)]);
    return task;
}

Task of_equal(std::size_t pieces) {
    Task task = test::wall_task({4000, 2500});
    for (std::size_t i = 0; i < pieces; ++i)
        add_item(task, {300, 400});
    return task;
}

}  // namespace

TEST_CASE("A spine has its upper row standing on the gap line and its lower row hanging from it") {
    Task task = test::wall_task({4000, 2500});
    for (const geometry::Size size : {geometry::Size{300, 400}, {200, 300}, {600, 250}, {100, 100}})
        add_item(task, size);
    // The upper row is 300 + 60 + 200 = 560 wide, the lower 600 + 60 + 100 = 760.
    const Layout block = lay_out(task, {Pattern::spine, RowLine::centre, {{0, 1}, {2, 3}}}).value();
    CHECK(place_in(block, 2) == WallRect::at({0, 0}, {600, 250}));
    CHECK(place_in(block, 3) == WallRect::at({660, 150}, {100, 100}));
    CHECK(place_in(block, 0) == WallRect::at({100, 310}, {300, 400}));
    CHECK(place_in(block, 1) == WallRect::at({460, 310}, {200, 300}));
    const Layout right = lay_out(task, {Pattern::spine, RowLine::high, {{0, 1}, {2, 3}}}).value();
    CHECK(place_in(right, 1).right() == Approx(760));
}

TEST_CASE("Two columns turn their flush edges to the upright gap between them") {
    Task task = test::wall_task({4000, 2500});
    for (const geometry::Size size : {geometry::Size{300, 400}, {200, 300}, {600, 250}, {100, 100}})
        add_item(task, size);
    const Layout block = lay_out(task, {Pattern::columns, RowLine::low, {{0, 1}, {2, 3}}}).value();
    CHECK(place_in(block, 1) == WallRect::at({100, 0}, {200, 300}));
    CHECK(place_in(block, 0) == WallRect::at({0, 360}, {300, 400}));
    CHECK(place_in(block, 3) == WallRect::at({360, 0}, {100, 100}));
    CHECK(place_in(block, 2) == WallRect::at({360, 160}, {600, 250}));
}

TEST_CASE("A row lies on its line") {
    Task task = test::wall_task({4000, 2500});
    add_item(task, {300, 400});
    add_item(task, {300, 200});
    const auto second = [&task](RowLine line) {
        return place_in(lay_out(task, {Pattern::row, line, {{0, 1}}}).value(), 1).bottom();
    };
    CHECK(second(RowLine::low) == 0);
    CHECK(second(RowLine::centre) == 100);
    CHECK(second(RowLine::high) == 200);
}

TEST_CASE("Every plan of rows or columns gives each piece a place, none nearer than the gap") {
    rc::prop("for any pieces in any rows", [](std::uint64_t seed) {
        Random random(seed);
        const std::size_t pieces = 1 + random.below(14);
        const Task task = any_task(random, pieces);
        const Pattern pattern = kBanded[random.below(3)];
        const std::size_t least = pattern == Pattern::spine ? 2 : 1;
        RC_PRE(pieces >= least);
        const std::size_t rows = least + random.below(pieces - least + 1);
        const Plan plan = any_plan(task, pattern, rows, random);
        const Layout block = lay_out(task, plan).value();
        check_whole(task, block);
        RC_ASSERT(keeps_the_gap(task, block));
        RC_ASSERT(std::abs(bounds_of(block).left()) < 1e-9);
        RC_ASSERT(std::abs(bounds_of(block).bottom()) < 1e-9);
        RC_ASSERT(lay_out(task, plan).value() == block);
    });
}

TEST_CASE("One row, two rows about a spine and two columns have even gaps whatever the sizes") {
    rc::prop("for any pieces", [](std::uint64_t seed) {
        Random random(seed);
        const Task task = any_task(random, 2 + random.below(12));
        const Pattern pattern = kBanded[random.below(3)];
        const std::size_t rows = pattern == Pattern::row ? 1 : 2;
        RC_ASSERT(uneven_gaps(task, *lay_out(task, any_plan(task, pattern, rows, random))) == 0);
    });
}

TEST_CASE("Three rows have even gaps when the middle one is of one height") {
    rc::prop("for any outer rows", [](std::uint64_t seed) {
        Random random(seed);
        Task task = any_task(random, 4 + random.below(6));
        Plan plan = any_plan(task, Pattern::spine, 2, random);
        std::vector<std::uint32_t> middle;
        for (int i = 0; i < 4; ++i)
            middle.push_back(add_item(task, {random.uniform(200, 600), 350}));
        plan.rows.insert(plan.rows.begin() + 1, middle);
        RC_ASSERT(uneven_gaps(task, *lay_out(task, plan)) == 0);
    });
}

TEST_CASE("Rows read backward are the layout in a mirror") {
    rc::prop("for rows and spines", [](std::uint64_t seed) {
        Random random(seed);
        const Task task = any_task(random, 4 + random.below(9));
        const Pattern pattern = random.below(2) == 0 ? Pattern::row : Pattern::spine;
        const Plan plan = any_plan(task, pattern, 2 + random.below(3), random);
        Plan backward = plan;
        for (auto& row : backward.rows)
            std::ranges::reverse(row);
        if (pattern == Pattern::spine)
            backward.line = static_cast<RowLine>(2 - static_cast<int>(plan.line));
        const Layout block = lay_out(task, plan).value();
        const Layout mirrored = lay_out(task, backward).value();
        const double width = bounds_of(block).width();
        for (const Spot& spot : block) {
            const WallRect other = place_in(mirrored, spot.item);
            RC_ASSERT(std::abs(spot.place.left() - (width - other.right())) < 1e-6);
            RC_ASSERT(std::abs(spot.place.bottom() - other.bottom()) < 1e-6);
        }
    });
}

TEST_CASE("A grid takes rows of one height and columns of one width, and a short last row") {
    Task task = test::wall_task({4000, 2500});
    for (const geometry::Size size : {geometry::Size{300, 400}, {500, 400}, {300, 200}, {500, 200}})
        add_item(task, size);
    const Plan plan{Pattern::grid, RowLine::centre, {{0, 1}, {2, 3}}};
    REQUIRE(lay_out(task, plan));
    CHECK(uneven_gaps(task, *lay_out(task, plan)) == 0);
    CHECK(place_in(*lay_out(task, plan), 3) == WallRect::at({360, 0}, {500, 200}));
    CHECK_FALSE(lay_out(task, {Pattern::grid, RowLine::centre, {{0, 1}, {3, 2}}}));
    CHECK_FALSE(lay_out(task, {Pattern::grid, RowLine::centre, {{0, 2}, {1, 3}}}));
    const Layout short_row = lay_out(task, {Pattern::grid, RowLine::centre, {{0, 1}, {3}}}).value();
    CHECK(place_in(short_row, 3) == WallRect::at({180, 0}, {500, 200}));
    CHECK_FALSE(lay_out(task, {Pattern::grid, RowLine::centre, {{0}, {2, 3}}}));
    CHECK_FALSE(lay_out(task, {Pattern::salon, RowLine::centre, {{0, 1}, {2, 3}}}));
}

TEST_CASE("Twelve equal pieces are offered in grids of three, four and six columns") {
    std::set<std::size_t> columns;
    for (const Plan& plan : first_plans(of_equal(12)))
        if (plan.pattern == Pattern::grid)
            columns.insert(plan.rows.front().size());
    for (const std::size_t wanted : {std::size_t{3}, std::size_t{4}, std::size_t{6}})
        CHECK(columns.contains(wanted));
}

TEST_CASE("Pieces of few sizes are put into a grid whose edges all line up") {
    Task task = test::wall_task({4000, 2500});
    for (int i = 0; i < 2; ++i)
        for (const geometry::Size size :
             {geometry::Size{300, 400}, {500, 400}, {300, 200}, {500, 200}})
            add_item(task, size);
    CHECK(count(first_plans(task), Pattern::grid) > 0);
}

TEST_CASE("First plans can hang, hold each free piece once and are the same every time") {
    rc::prop("for any pieces", [](std::uint64_t seed) {
        Random random(seed);
        const Task task = any_task(random, 1 + random.below(12));
        const std::vector<Plan> plans = first_plans(task);
        RC_ASSERT(!plans.empty());
        RC_ASSERT(plans == first_plans(task));
        for (const Plan& plan : plans) {
            RC_ASSERT(pieces_of(plan) == free_items(task));
            const Layout block = lay_out(task, plan).value();
            const Layout there = settle(task, block).value();
            RC_ASSERT(is_allowed(task, there));
        }
    });
}

TEST_CASE("First plans with uneven gaps are at most two of a pattern") {
    const Task task = over_a_sofa(12);
    std::array<int, 5> uneven{};
    for (const Plan& plan : first_plans(task))
        if (uneven_gaps(task, *lay_out(task, plan)) > 0)
            ++uneven[static_cast<std::size_t>(plan.pattern)];
    CHECK(*std::ranges::max_element(uneven) <= 2);
}

TEST_CASE("Five mixed pieces over a sofa have five even first plans or more, of three patterns") {
    for (const std::size_t pieces : {std::size_t{5}, std::size_t{8}}) {
        const Task task = over_a_sofa(pieces);
        std::vector<Plan> plans = first_plans(task);
        std::erase_if(plans, [&task](const Plan& plan) {
            return uneven_gaps(task, *lay_out(task, plan)) > 0;
        });
        CHECK(plans.size() >= 5);
        CHECK(count(plans, Pattern::row) > 0);
        CHECK(count(plans, Pattern::spine) > 0);
        CHECK(count(plans, Pattern::columns) > 0);
    }
}

TEST_CASE("Rows about a spine come out equally long where the pieces allow it") {
    Task task = test::wall_task({5000, 2500});
    for (const double width : {200, 250, 300, 350, 400, 450, 500, 550})
        add_item(task, {width, 300 + width / 10});
    double least = 5000;
    for (const Plan& plan : first_plans(task)) {
        if (plan.pattern != Pattern::spine || plan.rows.size() != 2)
            continue;
        const auto length = [&task](const std::vector<std::uint32_t>& row) {
            double sum = 0;
            for (const std::uint32_t item : row)
                sum += task.items[item].size.width + task.gap;
            return sum;
        };
        least = std::min(least, std::abs(length(plan.rows[0]) - length(plan.rows[1])));
    }
    CHECK(least < 1e-6);
}

TEST_CASE("A row falls away from its middle to both ends") {
    Task task = test::wall_task({5000, 2500});
    for (const double height : {200, 300, 400, 500, 600})
        add_item(task, {300, height});
    const std::vector<Plan> plans = first_plans(task);
    const auto row = std::ranges::find(plans, Pattern::row, &Plan::pattern);
    REQUIRE(row != plans.end());
    std::vector<double> heights;
    for (const std::uint32_t item : row->rows.front())
        heights.push_back(task.items[item].size.height);
    REQUIRE(heights.size() == 5);
    CHECK(heights[2] == 600);
    CHECK(std::is_sorted(heights.begin(), heights.begin() + 3));
    CHECK(std::is_sorted(heights.rbegin(), heights.rbegin() + 3));
}

TEST_CASE("First plans keep wishes where swapping pieces can keep them") {
    Task task = over_a_sofa(9);
    task.wishes.push_back({wall::WishKind::side_by_side, 0, 3});
    task.wishes.push_back({wall::WishKind::middle, 5, 5});
    const Measure* wishes = find_measure("wishes");
    REQUIRE(wishes != nullptr);
    std::size_t kept = 0;
    const std::vector<Plan> plans = first_plans(task);
    for (const Plan& plan : plans)
        kept += wishes->value(View(task, *lay_out(task, plan))) == 1 ? 1 : 0;
    CHECK(2 * kept > plans.size());
}

TEST_CASE("Over a sofa no first plan of rows or columns is hung beside where the others hang") {
    const Task task = over_a_sofa(8);
    for (const Plan& plan : first_plans(task)) {
        const Layout there = settle(task, *lay_out(task, plan)).value();
        CHECK(bounds_of(there).centre().x == Approx(2000).margin(120));
    }
}

TEST_CASE("Nothing to place has no plans, and what is too large for the wall has none either") {
    Task task = test::wall_task({1000, 1000});
    CHECK(first_plans(task).empty());
    add_item(task, {1200, 300});
    CHECK(first_plans(task).empty());
}

TEST_CASE("A changed plan has the same pieces in as many rows and is another") {
    rc::prop("for any plan", [](std::uint64_t seed) {
        Random random(seed);
        const Task task = any_task(random, 2 + random.below(10));
        const Pattern pattern = static_cast<Pattern>(random.below(4));
        const Plan plan = any_plan(task, pattern, 1 + random.below(task.items.size()), random);
        Random again = random;
        const Plan other = changed(plan, random);
        RC_ASSERT(other == changed(plan, again));
        RC_ASSERT(other != plan);
        RC_ASSERT(pieces_of(other) == pieces_of(plan));
        RC_ASSERT(other.rows.size() == plan.rows.size());
        RC_ASSERT(!has_empty_row(other));
        RC_ASSERT(other.pattern == pattern);
    });
}

TEST_CASE("A changed grid keeps its places") {
    const Plan plan{Pattern::grid, RowLine::centre, {{0, 1, 2}, {3, 4}}};
    Random random(7);
    for (int i = 0; i < 200; ++i) {
        const Plan other = changed(plan, random);
        CHECK(other.line == plan.line);
        CHECK(other.rows[0].size() == 3);
    }
}
