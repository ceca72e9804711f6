#include "arrange/spots.h"

#include "arrange/mixed_wall.h"
#include "base/random.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::arrange;

namespace {

bool faces_at_the_gap(const Task& task, const WallRect& a, const WallRect& b) {
    const double x = geometry::overlap_x(a, b);
    const double y = geometry::overlap_y(a, b);
    return (y > 0 && std::abs(x + task.gap) < 1e-6) || (x > 0 && std::abs(y + task.gap) < 1e-6);
}

bool has(const std::vector<WallRect>& spots, double x, double y) {
    return std::ranges::any_of(spots, [&](const WallRect& spot) {
        return std::abs(spot.min.x - x) < 1e-6 && std::abs(spot.min.y - y) < 1e-6;
    });
}

/// A layout grown by taking random spots.
Layout random_group(const Task& task, wallwright::Random& random) {
    Layout layout = fixed_part(task);
    std::vector<WallRect> spots;
    for (const std::uint32_t item : free_items(task)) {
        touching_spots(task, layout, item, spots);
        if (!spots.empty())
            layout.push_back({item, spots[random.below(spots.size())]});
    }
    return layout;
}

}  // namespace

TEST_CASE("Every spot touches the group at the gap and is clear of all") {
    rc::prop("spots touch", [] {
        const auto seed = *rc::gen::arbitrary<std::uint64_t>();
        const Task task = task_for(mixed_wall_with_hung(8, 1, seed));
        wallwright::Random random(seed);
        Layout layout = random_group(task, random);
        RC_PRE(layout.size() > 1);
        const Spot last = layout.back();
        layout.pop_back();
        std::vector<WallRect> spots;
        touching_spots(task, layout, last.item, spots);
        for (const WallRect& spot : spots) {
            Layout with = layout;
            with.push_back({last.item, spot});
            RC_ASSERT(is_allowed(task, with));
            RC_ASSERT(std::ranges::any_of(layout, [&](const Spot& other) {
                return faces_at_the_gap(task, other.place, spot);
            }));
        }
        RC_ASSERT(has(spots, last.place.min.x, last.place.min.y));
    });
}

TEST_CASE("Beside one piece the spots line up at its edges and middle, on all four sides") {
    Task task = task_for(mixed_wall_with_hung(2, 1, 3));
    task.items[0].size = {400, 500};
    task.items[1].size = {200, 300};
    const Layout layout = fixed_part(task);
    const WallRect one = layout[0].place;
    std::vector<WallRect> spots;
    touching_spots(task, layout, 1, spots);
    for (const double x : {one.right() + 60, one.left() - 60 - 200})
        for (const double y : {one.bottom(), one.bottom() + 100, one.top() - 300})
            CHECK(has(spots, x, y));
    for (const double y : {one.top() + 60})
        for (const double x : {one.left(), one.left() + 100, one.right() - 200})
            CHECK(has(spots, x, y));
}

TEST_CASE("A corner between two pieces is filled at the gap from both") {
    Task task = task_for(mixed_wall_with_hung(3, 2, 3));
    task.items[0].size = {400, 500};
    task.items[1].size = {400, 200};
    task.items[2].size = {250, 150};
    const WallPoint corner = *task.items[0].fixed;
    task.items[1].fixed = {corner.x + 460, corner.y};
    std::vector<WallRect> spots;
    touching_spots(task, fixed_part(task), 2, spots);
    CHECK(has(spots, corner.x + 460, corner.y + 260));
}
