#include "arrange/salon.h"

#include "arrange/mixed_wall.h"
#include "arrange/packed.h"
#include "arrange/score.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::arrange;

TEST_CASE("A salon's best is allowed, holds every piece once and leaves what hangs where it is") {
    rc::prop("salon laws", [] {
        const auto seed = *rc::gen::arbitrary<std::uint64_t>();
        const auto hung = *rc::gen::inRange<std::size_t>(0, 4);
        const Task task = task_for(mixed_wall_with_hung(8, hung, seed));
        Salon salon(task, seed);
        salon.run(30);
        RC_ASSERT(salon.left_out() == 0U);
        RC_ASSERT(is_allowed(task, salon.best()));
        std::vector<int> times(task.items.size(), 0);
        for (const Spot& spot : salon.best()) {
            ++times[spot.item];
            const Item& item = task.items[spot.item];
            RC_ASSERT(spot.place.width() == Approx(item.size.width));
            RC_ASSERT(spot.place.height() == Approx(item.size.height));
            if (item.fixed)
                RC_ASSERT(spot.place.min == *item.fixed);
        }
        RC_ASSERT(times == std::vector<int>(task.items.size(), 1));
        RC_ASSERT(salon.total() == total_of(View(task, salon.best())));
    });
}

TEST_CASE("The same seed walks the same way, and a longer walk is never worse") {
    rc::prop("salon is seeded and anytime", [] {
        const auto seed = *rc::gen::arbitrary<std::uint64_t>();
        const Task task = task_for(mixed_wall(7, seed));
        Salon one(task, seed);
        Salon other(task, seed);
        one.run(25);
        other.run(10);
        const double before = other.total();
        other.run(15);
        RC_ASSERT(one.best() == other.best());
        RC_ASSERT(other.total() >= before);
    });
}

TEST_CASE("Pieces for which there is no room are left out, not squeezed in") {
    wall::Project project = mixed_wall(12, 5);
    project.room.outline.corners = {{0, 0}, {5000, 0}, {5000, 1400}, {0, 1400}};
    const Task task = task_for(project);
    Salon salon(task, 1);
    salon.run(20);
    CHECK(salon.left_out() + salon.best().size() == 12);
    CHECK(is_allowed(task, salon.best()));
}

TEST_CASE("A packed start is allowed, holds every piece and keeps what hangs") {
    rc::prop("packed laws", [] {
        const auto seed = *rc::gen::arbitrary<std::uint64_t>();
        const auto hung = *rc::gen::inRange<std::size_t>(0, 3);
        const Task task = task_for(mixed_wall_with_hung(6, hung, seed));
        wallwright::Random random(seed);
        const std::optional<Layout> layout = packed(task, random);
        RC_PRE(layout.has_value());
        RC_ASSERT(layout->size() == task.items.size());
        RC_ASSERT(is_allowed(task, *layout));
        const Layout fixed = fixed_part(task);
        RC_ASSERT(std::equal(fixed.begin(), fixed.end(), layout->begin()));
    });
}
