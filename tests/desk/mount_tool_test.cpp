#include "mounted.h"
#include "wall/validity.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::desk;

namespace {

MountHand one_window() {
    return {Session(wall_with_mount())};
}

std::optional<MountPart> under(const MountHand& hand, MountHand::At at, double reach = 7) {
    return part_at(hand.design(), at, reach);
}

}  // namespace

TEST_CASE("The hand takes the window, or the edge that it is near") {
    const MountHand hand = one_window();
    CHECK(under(hand, {185, 235}) == MountPart{0, 0, 0});
    CHECK(under(hand, {84, 235}) == MountPart{0, -1, 0});
    CHECK(under(hand, {287, 235}) == MountPart{0, 1, 0});
    CHECK(under(hand, {185, 90}) == MountPart{0, 0, -1});
    CHECK(under(hand, {185, 380}) == MountPart{0, 0, 1});
    CHECK_FALSE(under(hand, {40, 235}));
    // However near one looks from afar, the middle of the window is the window's.
    CHECK(under(hand, {185, 235}, 500) == MountPart{0, 0, 0});
}

TEST_CASE("A print that floats is taken as a whole and has no edges") {
    wall::Project project = wall_with_mount();
    project.mounts.front().floats = true;
    const MountHand hand{Session(project)};
    CHECK(under(hand, {80, 235}) == MountPart{0, 0, 0});
    CHECK_FALSE(under(hand, {79, 235}));
}

TEST_CASE("A window goes where the hand drags it, to whole millimetres of border, as one step") {
    MountHand hand = one_window();
    hand.drag({185, 235}, {150.3, 200.2});
    REQUIRE(hand.mount().by_hand);
    const mounts::Borders seen = hand.design().seen;
    CHECK(seen.left == Approx(45));
    CHECK(seen.top == Approx(52));
    CHECK(hand.session.history().undo_label() == "Move the window of Kelp");
    hand.session.undo();
    CHECK(hand.session.kept() == wall_with_mount());
    CHECK_FALSE(hand.session.history().can_undo());
}

TEST_CASE("In inches a window rests on sixteenths, and Alt frees it") {
    wall::Project project = wall_with_mount();
    project.unit = units::LengthUnit::inch;
    MountHand hand{Session(project)};
    hand.drag({185, 235}, {150.3, 200.2});
    const double sixteenths = hand.design().seen.left / (units::kMmPerInch / 16);
    CHECK(sixteenths == Approx(std::round(sixteenths)).margin(0.01));
    MountHand free = one_window();
    free.alt = true;
    free.drag({185, 235}, {150.3, 200.2});
    CHECK(free.design().cut.left == Approx(85 - 34.7));
}

TEST_CASE("A window comes to rest in the middle, and one border as wide as another, with guides") {
    MountHand hand = one_window();
    hand.tool.press(hand.session, kOnBench, hand.at({185, 235}));
    hand.tool.move(hand.session, kOnBench, hand.at({188, 208}));
    hand.tool.move(hand.session, kOnBench, hand.at({188, 234}));
    REQUIRE(hand.tool.showing().guides.size() == 2);
    CHECK(hand.tool.showing().guides[0].words == "in the middle");
    CHECK(hand.tool.showing().words == "Seen: 80 left, 80 right, 86.5 above, 86.5 mm below");
    hand.tool.move(hand.session, kOnBench, hand.at({188, 230}));
    hand.tool.move(hand.session, kOnBench, hand.at({188, 229}));
    CHECK(hand.design().seen.top == Approx(80));
    CHECK(hand.tool.showing().guides[1].words == "as wide as at the side");
    hand.tool.release(hand.session, hand.at({188, 229}));
    CHECK(hand.design().cut.left == Approx(85));
}

TEST_CASE("An edge that is dragged changes the overlap, and the borders follow") {
    MountHand hand = one_window();
    hand.drag({85, 235}, {90.2, 235});
    CHECK(hand.mount().overlap == 10);
    CHECK(hand.design().seen.left == Approx(85));
    CHECK(hand.session.history().undo_label() == "Change the overlap of Kelp");
    hand.drag({185, 96.5}, {185, 60});
    CHECK(hand.mount().overlap == 0);
    hand.drag({185, 235}, {150, 200});
    const auto middle = hand.design().layers.front().windows.front().face.centre();
    const double right = hand.design().layers.front().windows.front().face.max.x;
    hand.drag({right, middle.y}, {right - 6, middle.y});
    CHECK(hand.mount().overlap == 6);
    CHECK(hand.design().layers.front().windows.front().face.centre().x == Approx(middle.x));
    CHECK(hand.design().layers.front().windows.front().face.centre().y == Approx(middle.y));
}

TEST_CASE("Windows placed by hand keep their middles where the overlap grew on one axis alone") {
    wall::Project project = wall_with_mount();
    wall::Mount& mount = project.mounts.front();
    mount.border_least = 86;
    mount.overlap_most = 20;
    mount.by_hand = wall::FromCorner{100, 91.5};
    MountHand hand{Session(project)};
    const auto before = window_at(hand.design(), 0);
    // For want of borders at the sides the window is 12 mm narrower than its rule has it.
    REQUIRE(hand.design().prints.front().across == Approx(11));
    REQUIRE(hand.design().prints.front().down == Approx(5));
    const auto middle = before.centre();
    const auto is_about_middle = [&] {
        return geometry::distance(window_at(hand.design(), 0).centre(), middle) < 0.05;
    };
    SECTION("as the edge of the grown one is dragged") {
        hand.drag({before.max.x, middle.y}, {before.max.x - 6, middle.y});
        CHECK(hand.mount().overlap == 17);
        CHECK(window_at(hand.design(), 0).width() == Approx(before.width() - 12));
        CHECK(is_about_middle());
    }
    SECTION("as the edge of the other is dragged") {
        hand.drag({middle.x, before.max.y}, {middle.x, before.max.y - 5});
        CHECK(hand.mount().overlap == 10);
        CHECK(window_at(hand.design(), 0).width() == Approx(before.width()));
        CHECK(is_about_middle());
    }
}

TEST_CASE("A window that is opened until its borders are the least grows about its middle too") {
    wall::Project project = wall_with_mount();
    wall::Mount& mount = project.mounts.front();
    mount.border_least = 86;
    mount.overlap = 20;
    mount.overlap_most = 20;
    mount.by_hand = wall::FromCorner{120, 100};
    MountHand hand{Session(project)};
    const auto before = window_at(hand.design(), 0);
    const auto middle = before.centre();
    hand.drag({middle.x, before.min.y}, {middle.x, before.min.y - 15});
    CHECK(hand.mount().overlap == 5);
    CHECK(hand.design().prints.front().across == Approx(11));
    CHECK(geometry::distance(window_at(hand.design(), 0).centre(), middle) < 0.05);
}

TEST_CASE("The edge between two windows in a row changes the bar, an outer one the overlap") {
    MountHand hand{Session(wall_with_two_windows())};
    const auto first = window_at(hand.design(), 0);
    CHECK(first.max.x == Approx(170));
    hand.drag({170, 235}, {165, 235});
    CHECK(hand.mount().bar == 40);
    CHECK(window_at(hand.design(), 0).max.x == Approx(165));
    CHECK(hand.session.history().undo_label() == "Change the bars of Kelp");
    const double left = window_at(hand.design(), 0).min.x;
    hand.drag({left, 235}, {left - 4, 235});
    CHECK(hand.mount().overlap == 3);
    CHECK(window_at(hand.design(), 0).min.x == Approx(left - 4));
}

TEST_CASE("One of several windows that is dragged places all of them by hand, where they were") {
    MountHand hand{Session(wall_with_two_windows())};
    const auto before = window_at(hand.design(), 1);
    hand.drag({115, 235}, {90, 190});
    CHECK(hand.mount().order == wall::WindowOrder::by_hand);
    CHECK(window_at(hand.design(), 1) == before);
    CHECK(window_at(hand.design(), 0).min.x == Approx(35));
}

TEST_CASE("Windows rest in line with each other and a bar apart") {
    WindowWish wish;
    wish.blank = {370, 470};
    wish.lip = {5, 5, 5, 5};
    wish.others = {geometry::Rect<mounts::Front>::at({40, 100}, {110, 170})};
    wish.place = geometry::Rect<mounts::Front>::at({178, 103}, {110, 170});
    wish.bar = 30;
    wish.reach = 6;
    const WindowRest rest = rest_of(wish);
    CHECK(rest.place.min.x == 180);
    CHECK(rest.place.min.y == 100);
    REQUIRE(rest.guides.size() == 2);
    CHECK(rest.guides[0].words == "one bar apart");
    CHECK(rest.guides[1].words == "in line");
}

TEST_CASE("Escape gives the drag up, and nothing has changed") {
    MountHand hand = one_window();
    hand.tool.press(hand.session, kOnBench, hand.at({185, 235}));
    hand.tool.move(hand.session, kOnBench, hand.at({150, 200}));
    CHECK(hand.session.has_preview());
    hand.tool.cancel(hand.session);
    CHECK_FALSE(hand.session.has_preview());
    CHECK_FALSE(hand.tool.is_busy());
    CHECK(hand.session.kept() == wall_with_mount());
}

TEST_CASE("A press that hardly moves changes nothing, nor does one beside the window") {
    MountHand hand = one_window();
    hand.drag({185, 235}, {187, 237});
    hand.drag({30, 30}, {90, 90});
    CHECK_FALSE(hand.session.history().can_undo());
}

TEST_CASE("Windows placed by hand go back to their rule, in the order in which they lie") {
    MountHand hand{Session(wall_with_two_windows())};
    centre_windows(hand.session, kOnBench);
    CHECK_FALSE(hand.session.history().can_undo());
    hand.drag({115, 235}, {90, 190});
    centre_windows(hand.session, kOnBench);
    CHECK(hand.session.kept() == wall_with_two_windows());
    CHECK(hand.session.history().undo_label() == "Centre the window of Kelp");
}

TEST_CASE("Of a piece without a mount nothing can be taken") {
    wall::Project project = wall_with_mount();
    project.pieces.front().mount.reset();
    MountHand hand{Session(project)};
    hand.drag({185, 235}, {150, 200});
    CHECK_FALSE(hand.session.history().can_undo());
    CHECK_FALSE(hand.tool.showing().part);
}

TEST_CASE("However parts of a mount are dragged, the project stays sound") {
    rc::check([](bool two, bool ratio) {
        wall::Project project = two ? wall_with_two_windows() : wall_with_mount();
        if (ratio)
            project.mounts.front().base_ratio = 1.3;
        MountHand hand{Session(project)};
        for (int i = 0; i < 4; ++i) {
            const auto any = [] { return *rc::gen::inRange(-50, 500) + 0.37; };
            hand.alt = *rc::gen::arbitrary<bool>();
            hand.drag({any(), any()}, {any(), any()});
            RC_ASSERT(wall::faults(hand.session.kept()).empty());
        }
    });
}

TEST_CASE("Wherever a window is dragged, it stays on its blank") {
    rc::check([](bool free) {
        MountHand hand = one_window();
        hand.alt = free;
        const auto blank = geometry::Rect<mounts::Front>::at({0, 0}, hand.design().blank);
        const MountHand::At to{static_cast<double>(*rc::gen::inRange(-900, 900)),
                               static_cast<double>(*rc::gen::inRange(-900, 900))};
        hand.drag(window_at(hand.design(), 0).centre(), to);
        RC_ASSERT(hull(blank, window_at(hand.design(), 0)) == blank);
    });
}
