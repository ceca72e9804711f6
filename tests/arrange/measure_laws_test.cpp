// What must hold for any task and layout, tried on random ones.
#include "arrange/hand_laid.h"
#include "spacing/group.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>

using namespace wallwright;
using namespace wallwright::arrange;

namespace {

constexpr double kWidth = 4000;

struct Scene {
    Task task;
    Layout layout;
};

double whole_mm(int least, int below) {
    return *rc::gen::inRange(least, below);
}

std::uint32_t below(std::size_t count) {
    return *rc::gen::inRange<std::uint32_t>(0, static_cast<std::uint32_t>(count));
}

wall::Colour random_colour() {
    return *rc::gen::element(wall::Colour{30, 30, 30}, wall::Colour{40, 35, 30},
                             wall::Colour{200, 160, 110}, wall::Colour{250, 250, 245});
}

/// Anywhere, overlapping or not, or in cells at the gap with a few of them off.
WallPoint random_place(const Task& task, std::size_t number, bool in_cells) {
    if (!in_cells)
        return {whole_mm(0, 3400), whole_mm(0, 2000)};
    const double off = *rc::gen::element(0, 0, 0, 20, 60);
    return {1000 + off + static_cast<double>(number % 3) * (300 + task.gap),
            900 + static_cast<double>(number / 3) * (300 + task.gap)};
}

void add_pieces(Scene& scene) {
    const auto count = static_cast<std::size_t>(*rc::gen::inRange(1, 11));
    const bool in_cells = *rc::gen::arbitrary<bool>();
    for (std::size_t i = 0; i < count; ++i) {
        Item item;
        item.id = {"p" + std::to_string(i)};
        item.size = {whole_mm(80, 301), whole_mm(80, 301)};
        item.frame = random_colour();
        item.picture = random_colour();
        const WallPoint at = random_place(scene.task, i, in_cells);
        if (*rc::gen::inRange(0, 5) == 0)
            item.fixed = at;
        scene.layout.push_back({static_cast<std::uint32_t>(i), WallRect::at(at, item.size)});
        scene.task.items.push_back(std::move(item));
    }
}

void add_wishes(Task& task) {
    const int count = *rc::gen::inRange(0, 4);
    for (int i = 0; i < count && task.items.size() > 1; ++i) {
        const auto kind =
            *rc::gen::element(wall::WishKind::side_by_side, wall::WishKind::apart,
                              wall::WishKind::middle, wall::WishKind::low, wall::WishKind::high);
        const std::uint32_t first = below(task.items.size());
        const auto other = static_cast<std::uint32_t>((first + 1 + below(task.items.size() - 1)) %
                                                      task.items.size());
        task.wishes.push_back({kind, first, wall::is_about_two(kind) ? other : first});
    }
}

Scene random_scene() {
    Scene scene;
    scene.task.gap = *rc::gen::element(5.0, 40.0, 60.0, 100.0);
    scene.task.reach = spacing::group_reach(scene.task.gap);
    scene.task.wall = WallRect::at({0, 0}, {kWidth, 2600});
    scene.task.centre_height = whole_mm(1200, 1700);
    scene.task.centre_tolerance = whole_mm(1, 100);
    if (*rc::gen::arbitrary<bool>())
        scene.task.beneath = Beneath{
            "Sofa",
            WallRect::at({whole_mm(0, 2000), 0}, {whole_mm(300, 2000), whole_mm(300, 1200)}),
            150,
            255,
            0.60,
            0.75};
    for (std::size_t i = 0; i < all_measures().size(); ++i)
        scene.task.weights.push_back(whole_mm(0, 11));
    add_pieces(scene);
    add_wishes(scene.task);
    return scene;
}

/// The scene with every rectangle as `place` gives it.
template <class Place>
Scene with_places(Scene scene, const Place& place) {
    scene.task.wall = place(scene.task.wall);
    if (scene.task.beneath)
        scene.task.beneath->place = place(scene.task.beneath->place);
    for (Spot& spot : scene.layout) {
        spot.place = place(spot.place);
        if (Item& item = scene.task.items[spot.item]; item.fixed)
            item.fixed = spot.place.min;
    }
    return scene;
}

Scene mirrored(const Scene& scene) {
    return with_places(scene, [](const WallRect& place) {
        return WallRect{{kWidth - place.max.x, place.min.y}, {kWidth - place.min.x, place.max.y}};
    });
}

/// Nothing when all measures say the same of both, else the name of the first that does not.
std::string_view first_that_differs(const Scene& one, const Scene& other) {
    const View a(one.task, one.layout);
    const View b(other.task, other.layout);
    for (const Measure& measure : all_measures())
        if (std::abs(measure.value(a) - measure.value(b)) > 1e-9)
            return measure.name;
    return {};
}

}  // namespace

TEST_CASE("Every measure is between 0 and 1 and says one sentence") {
    rc::prop("of any layout", [] {
        const Scene scene = random_scene();
        const View view(scene.task, scene.layout);
        for (const Measure& measure : all_measures()) {
            const double value = measure.value(view);
            RC_LOG() << measure.name << " is " << value;
            RC_ASSERT(value >= 0 && value <= 1);
            const std::string said = measure.says(view, units::LengthUnit::inch);
            RC_ASSERT(!said.empty() && said.back() == '.');
        }
    });
}

TEST_CASE("A mirrored wall and its mirrored layout measure the same") {
    rc::prop("every measure", [] {
        const Scene scene = random_scene();
        RC_ASSERT(first_that_differs(scene, mirrored(scene)) == "");
    });
}

TEST_CASE("Where on the plane a wall is drawn changes no measure") {
    rc::prop("every measure", [] {
        const Scene scene = random_scene();
        const WallVec by{whole_mm(-5000, 5000), whole_mm(-5000, 5000)};
        Scene there = with_places(scene, [by](const WallRect& place) { return place.moved(by); });
        there.task.centre_height += by.y;
        RC_ASSERT(first_that_differs(scene, there) == "");
    });
}

TEST_CASE("The order in which a layout lists its pieces changes no measure") {
    rc::prop("every measure", [] {
        const Scene scene = random_scene();
        Scene other = scene;
        std::ranges::reverse(other.layout);
        RC_ASSERT(first_that_differs(scene, other) == "");
    });
}

TEST_CASE("The short total is the score's, to the last bit") {
    rc::prop("of any layout", [] {
        const Scene scene = random_scene();
        const View view(scene.task, scene.layout);
        const Score score = score_of(view);
        RC_ASSERT(total_of(view) == score.total);
        RC_ASSERT(total_with(score, scene.task.weights) == score.total);
        RC_ASSERT(score.total >= 0 && score.total <= 100);
    });
}

TEST_CASE("More weight on what a layout is good at never lowers its total") {
    rc::prop("on any measure over the total", [] {
        const Scene scene = random_scene();
        const Score score = score_of(View(scene.task, scene.layout));
        const std::size_t which = below(score.parts.size());
        std::vector<double> weights = scene.task.weights;
        weights[which] += whole_mm(1, 10);
        const double after = total_with(score, weights);
        const double value = 100 * score.parts[which].value;
        RC_ASSERT(after >= std::min(value, score.total) - 1e-9);
        RC_ASSERT(after <= std::max(value, score.total) + 1e-9);
        if (value >= score.total)
            RC_ASSERT(after >= score.total - 1e-9);
    });
}
