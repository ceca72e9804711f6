#include "edits/mounts.h"

#include "edits/prints.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <array>

using namespace wallwright;
using namespace wallwright::wall;

namespace {

const PieceId kKelp{"kelp"};
const PieceId kDune{"dune"};
const PieceId kTide{"tide"};
const MountId kCream{"cream"};

Print print_of(const char* id, double width, double height) {
    Print print;
    print.id = {id};
    print.size = {width, height};
    return print;
}

/// Kelp and Dune share the mount Cream, Kelp with the print Ebb and Dune with Flow; Tide has
/// neither, and Reed is in the drawer.
Project wall_with_mounts() {
    Project project = scenes::wall_of(3600, 2400);
    scenes::add_piece(project, "kelp", {1000, 1300}, {300, 400});
    scenes::add_piece(project, "dune", {1360, 1300}, {500, 400});
    scenes::add_waiting(project, "tide", {400, 300});
    project.prints = {print_of("ebb", 200, 300), print_of("flow", 400, 300),
                      print_of("reed", 100, 150)};
    project.mounts.emplace_back().id = kCream;
    project.mounts.back().overlap = 4;
    project.pieces[0].print = PrintId{"ebb"};
    project.pieces[0].mount = kCream;
    project.pieces[1].print = PrintId{"flow"};
    project.pieces[1].mount = kCream;
    return project;
}

const Mount& mount_of(const Project& project, const PieceId& piece) {
    return *find(project, *find(project, piece)->mount);
}

Project alone() {
    Project project = wall_with_mounts();
    project.pieces[1].mount.reset();
    return project;
}

}  // namespace

TEST_CASE("A mount that is changed everywhere changes for all that share it") {
    const auto changed = edits::change_mount_everywhere(wall_with_mounts(), kCream,
                                                        [](Mount& one) { one.overlap = 7; });
    REQUIRE(changed);
    CHECK(mount_of(*changed, kKelp).overlap == 7);
    CHECK(mount_of(*changed, kDune).overlap == 7);
    CHECK(changed->mounts.size() == 1);
    CHECK_FALSE(edits::change_mount_everywhere(wall_with_mounts(), {"grey"}, [](Mount&) {}));
    CHECK_FALSE(edits::change_mount_everywhere(wall_with_mounts(), kCream,
                                               [](Mount& one) { one.overlap = -1; }));
}

TEST_CASE("A mount of its own leaves the others theirs, and is made once") {
    const auto own = edits::own_mount(wall_with_mounts(), kKelp);
    REQUIRE(own);
    CHECK(mount_of(*own, kKelp).id != mount_of(*own, kDune).id);
    CHECK(mount_of(*own, kKelp).overlap == 4);
    CHECK(edits::own_mount(*own, kKelp).value() == *own);
    CHECK_FALSE(edits::own_mount(wall_with_mounts(), kTide));
}

TEST_CASE("A piece that shares another's mount leaves none behind that nobody has") {
    const Project own = edits::own_mount(wall_with_mounts(), kKelp).value();
    const auto shared = edits::put_mount(own, kKelp, kCream);
    REQUIRE(shared);
    CHECK(*shared == wall_with_mounts());
    CHECK_FALSE(edits::put_mount(own, kKelp, {"grey"}));
}

TEST_CASE("A piece is given a mount as most others have theirs, without their windows") {
    Project project = wall_with_mounts();
    project.mounts[0].by_hand = FromCorner{30, 40};
    project.mounts[0].title = "For the sea";
    const auto given = edits::give_mount(project, kTide);
    REQUIRE(given);
    const Mount& mount = mount_of(*given, kTide);
    CHECK(mount.overlap == 4);
    CHECK_FALSE(mount.by_hand);
    CHECK(mount.title.empty());
    CHECK(given->prints == project.prints);
    CHECK(edits::give_mount(*given, kTide).value() == *given);
}

TEST_CASE("The first mount of a wall has the usual measures") {
    Project project = wall_with_mounts();
    project.mounts.clear();
    for (Piece& piece : project.pieces)
        piece.mount.reset();
    const auto given = edits::give_mount(project, kKelp);
    REQUIRE(given);
    CHECK(mount_of(*given, kKelp).overlap == Mount{}.overlap);
    CHECK(find(*given, kKelp)->print == PrintId{"ebb"});
}

TEST_CASE("A further window names the print of the first, and closing it undoes both") {
    const auto two = edits::add_window(alone(), kKelp, {"reed"}, {});
    REQUIRE(two);
    const auto& openings = mount_of(*two, kKelp).openings;
    REQUIRE(openings.size() == 2);
    CHECK(openings[0].print == PrintId{"ebb"});
    CHECK(openings[1].print == PrintId{"reed"});
    CHECK(edits::remove_window(*two, kCream, {"reed"}).value() == alone());
    const auto other = edits::remove_window(*two, kCream, {"ebb"});
    REQUIRE(other);
    CHECK(find(*other, kKelp)->print == PrintId{"reed"});
    CHECK(mount_of(*other, kKelp).openings.empty());
    CHECK_FALSE(edits::remove_window(*two, kCream, {"flow"}));
    CHECK_FALSE(edits::add_window(*two, kKelp, {"reed"}, {}));
    CHECK_FALSE(edits::add_window(alone(), kTide, {"reed"}, {}));
}

TEST_CASE("The last window of a mount that is shared keeps its name") {
    const Project two = edits::add_window(wall_with_mounts(), kKelp, {"reed"}, {}).value();
    const Project one = edits::remove_window(two, kCream, {"ebb"}).value();
    CHECK(mount_of(one, kKelp).openings.size() == 1);
    CHECK(find(one, kKelp)->print == PrintId{"ebb"});
}

TEST_CASE("A single window is placed by hand and released again") {
    const std::array at{FromCorner{31.004, 40}};
    const auto placed = edits::place_windows(alone(), kCream, at);
    REQUIRE(placed);
    CHECK(mount_of(*placed, kKelp).by_hand == FromCorner{31, 40});
    CHECK(edits::release_windows(*placed, kCream, WindowOrder::row).value() == alone());
    const std::array outside{FromCorner{-3, 40}};
    CHECK_FALSE(edits::place_windows(alone(), kCream, outside));
    CHECK_FALSE(edits::place_windows(alone(), kCream, {}));
}

TEST_CASE("Several windows are placed by hand each, and one more of them has a place too") {
    const Project two = edits::add_window(alone(), kKelp, {"reed"}, {}).value();
    const std::array at{FromCorner{20, 30}, FromCorner{150, 60}};
    const auto placed = edits::place_windows(two, kCream, at);
    REQUIRE(placed);
    CHECK(mount_of(*placed, kKelp).order == WindowOrder::by_hand);
    CHECK(mount_of(*placed, kKelp).openings[1].at == FromCorner{150, 60});
    const auto three = edits::add_window(*placed, kKelp, {"flow"}, {200, 90});
    REQUIRE(three);
    CHECK(mount_of(*three, kKelp).openings[2].at == FromCorner{200, 90});
    const auto column = edits::release_windows(*placed, kCream, WindowOrder::column);
    REQUIRE(column);
    CHECK_FALSE(mount_of(*column, kKelp).openings[0].at);
}

TEST_CASE("The rule of the borders takes the place of the hand and of the other rule") {
    const std::array at{FromCorner{30, 40}};
    const Project placed = edits::place_windows(alone(), kCream, at).value();
    const auto wider = edits::set_base(placed, kCream, edits::BaseRule::wider_by, 12);
    REQUIRE(wider);
    CHECK_FALSE(mount_of(*wider, kKelp).by_hand);
    CHECK(mount_of(*wider, kKelp).base_extra == 12);
    const auto ratio = edits::set_base(*wider, kCream, edits::BaseRule::by_ratio, 1.2);
    REQUIRE(ratio);
    CHECK(mount_of(*ratio, kKelp).base_extra == 0);
    CHECK(mount_of(*ratio, kKelp).base_ratio == 1.2);
    CHECK(edits::set_base(*ratio, kCream, edits::BaseRule::even, 0).value() == alone());
    CHECK_FALSE(edits::set_base(alone(), kCream, edits::BaseRule::by_ratio, 7));
}

TEST_CASE("A mount that becomes another is to be cut again; one that stays as it was is not") {
    Project project = alone();
    project.pieces[0].mount_cut = true;
    const auto is_cut = [](const Result<Project>& changed) {
        return find(changed.value(), kKelp)->mount_cut;
    };
    CHECK(is_cut(edits::change_mount_everywhere(project, kCream, [](Mount&) {})));
    CHECK_FALSE(is_cut(
        edits::change_mount_everywhere(project, kCream, [](Mount& mount) { mount.overlap = 6; })));
    CHECK_FALSE(
        is_cut(edits::change_mount(project, kKelp, [](Mount& mount) { mount.border_least = 10; })));
    const FromCorner at[] = {{40, 50}};
    CHECK_FALSE(is_cut(edits::place_windows(project, kCream, at)));
    CHECK_FALSE(is_cut(edits::add_window(project, kKelp, PrintId{"reed"}, {})));
    CHECK(is_cut(edits::put_print(project, kKelp, PrintId{"ebb"})));
    CHECK_FALSE(is_cut(edits::put_print(project, kKelp, PrintId{"reed"})));
    CHECK_FALSE(is_cut(edits::without_mount(project, kKelp)));
    const PieceId ids[] = {kKelp};
    CHECK_FALSE(is_cut(edits::turn(project, ids)));
    CHECK_FALSE(is_cut(edits::remove_print(project, PrintId{"ebb"})));
    CHECK(is_cut(edits::remove_print(project, PrintId{"reed"})));
}

TEST_CASE("A mount is to be cut again when its print or its frame becomes another size") {
    Project project = alone();
    project.pieces[0].mount_cut = true;
    const auto is_cut = [](const Result<Project>& changed) {
        return find(changed.value(), kKelp)->mount_cut;
    };
    const auto wider = [](auto& one) { one.size.width += 10; };
    const auto renamed = [](auto& one) { one.title = "Flood"; };
    CHECK_FALSE(is_cut(edits::change_print(project, kKelp, wider)));
    CHECK(is_cut(edits::change_print(project, kKelp, renamed)));
    CHECK_FALSE(is_cut(edits::change_print_everywhere(project, PrintId{"ebb"}, wider)));
    CHECK(is_cut(edits::change_print_everywhere(project, PrintId{"ebb"}, renamed)));
    CHECK(is_cut(edits::change_frame(project, kKelp, renamed)));
    CHECK_FALSE(
        is_cut(edits::change_frame(project, kKelp, [](Frame& frame) { frame.rebate_width = 8; })));
}
