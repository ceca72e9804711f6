#include "arrange/hand_laid.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::hand_laid;
using wall::WishKind;

namespace {

Task with_wishes(std::size_t pieces, std::vector<arrange::ItemWish> wishes) {
    Task task = task_of(std::vector<Size>(pieces, Size{300, 400}));
    task.wishes = std::move(wishes);
    return task;
}

}  // namespace

TEST_CASE("Without a wish there is nothing to break") {
    const Task task = with_wishes(3, {});
    CHECK(value("wishes", task, row(task)) == 1);
    CHECK(says("wishes", task, row(task)) == "Nothing was wished of these pieces.");
}

TEST_CASE("Two that are wished side by side are to face each other, and nearer is better") {
    const Task near = with_wishes(4, {{WishKind::side_by_side, 0, 1}});
    const Task farther = with_wishes(4, {{WishKind::side_by_side, 0, 2}});
    const Task farthest = with_wishes(4, {{WishKind::side_by_side, 0, 3}});
    CHECK(value("wishes", near, row(near)) == 1);
    CHECK(value("wishes", farther, row(farther)) < 0.6);
    CHECK(value("wishes", farthest, row(farthest)) < value("wishes", farther, row(farther)));
    CHECK(says("wishes", farther, row(farther)) == "0 of 1 wish is kept: p0 is not beside p2.");
    CHECK(says("wishes", near, row(near)) == "The wish is kept.");
}

TEST_CASE("Two that are wished apart are not to face each other") {
    const Task task = with_wishes(4, {{WishKind::apart, 0, 1}, {WishKind::apart, 0, 2}});
    CHECK(value("wishes", task, row(task)) == 0.5);
    CHECK(says("wishes", task, row(task)) == "1 of 2 wishes are kept: p0 is beside p1.");
}

TEST_CASE("A piece wished in the middle is to hold the group's middle") {
    const auto of = [](std::uint32_t piece) {
        const Task task = with_wishes(5, {{WishKind::middle, piece, piece}});
        return value("wishes", task, row(task));
    };
    CHECK(of(2) == 1);
    CHECK(of(1) < 0.6);
    CHECK(of(0) < of(1));
    CHECK(of(4) == Approx(of(0)));
}

TEST_CASE("A piece wished low has none below it, one wished high none above") {
    const auto of = [](WishKind kind, std::uint32_t piece) {
        const Task task = with_wishes(6, {{kind, piece, piece}});
        return value("wishes", task, grid(task, 2));  // Three rows, the first on top.
    };
    CHECK(of(WishKind::low, 5) == 1);
    CHECK(of(WishKind::low, 2) < 0.6);
    CHECK(of(WishKind::low, 0) < of(WishKind::low, 2));
    CHECK(of(WishKind::high, 0) == 1);
    CHECK(of(WishKind::high, 2) < 0.6);
    CHECK(of(WishKind::high, 5) < of(WishKind::high, 2));
    const Task flat = with_wishes(3, {{WishKind::low, 0, 0}});
    CHECK(value("wishes", flat, row(flat)) == 1);
}

TEST_CASE("A piece that the layout leaves out is not judged, one that hangs elsewhere is") {
    Task task = with_wishes(3, {{WishKind::side_by_side, 0, 2}});
    const Layout two = at(task, {{1000, 1300}, {1360, 1300}});
    CHECK(value("wishes", task, two) == 1);
    task.items[2].fixed = WallPoint{3000, 1300};
    Layout three = two;
    three.push_back({2, WallRect::at({3000, 1300}, {300, 400})});
    CHECK(value("wishes", task, three) == 0);
    task.wishes = {{WishKind::apart, 0, 2}};
    CHECK(value("wishes", task, three) == 1);
}
