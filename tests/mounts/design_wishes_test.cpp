// Windows placed by hand, prints that do not fit, prints that float, measured back boards, pieces.
#include "design_cases.h"

using namespace wallwright;
using namespace wallwright::mounts;
using geometry::Size;
using test::frame_for;
using test::print_of;

TEST_CASE("An upright print in a lying frame keeps upright") {
    const MountDesign design =
        design_mount(frame_for({500, 400}), {}, {print_of("kelp", 180, 240)});
    const Rect<Front>& window = design.layers[0].windows.at(0).face;
    CHECK(window.width() == Approx(170));
    CHECK(window.height() == Approx(230));
    CHECK(design.cut.left == Approx(165));
    CHECK(design.cut.top == Approx(85));
    CHECK(design.seen.top == Approx(80));
}

TEST_CASE("A window placed by hand stays there, whatever the base") {
    wall::Mount mount;
    mount.by_hand = wall::FromCorner{40, 50};
    mount.base_ratio = 1.5;
    const MountDesign design =
        design_mount(frame_for({400, 500}), mount, {print_of("kelp", 210, 310)});
    CHECK(design.cut == Borders{40, 160, 50, 150});
}

TEST_CASE("Windows placed by hand lie each where it was put") {
    const std::vector<wall::Print> prints{print_of("kelp", 110, 160), print_of("reef", 90, 90)};
    wall::Mount mount = test::mount_for(prints, wall::WindowOrder::by_hand);
    mount.openings[0].at = wall::FromCorner{50, 60};
    mount.openings[1].at = wall::FromCorner{230, 300};
    const MountDesign design = design_mount(frame_for({400, 500}), mount, prints);
    CHECK(design.layers[0].windows.at(0).face == Rect<Front>{{50, 60}, {150, 210}});
    CHECK(design.layers[0].windows.at(1).face == Rect<Front>{{230, 300}, {310, 380}});
    CHECK(design.cut == Borders{50, 90, 60, 120});
}

TEST_CASE("A row of prints is placed as one block, its base below the highest") {
    const std::vector<wall::Print> prints{print_of("kelp", 110, 160), print_of("reef", 110, 90)};
    wall::Mount mount = test::mount_for(prints, wall::WindowOrder::row);
    mount.base_extra = 20;
    const MountDesign design = design_mount(frame_for({400, 300}), mount, prints);
    // 100 + 30 + 100 across; the higher is 150, so 150 are left for the borders: 65 and 85.
    CHECK(design.layers[0].windows.at(0).face == Rect<Front>{{85, 65}, {185, 215}});
    CHECK(design.layers[0].windows.at(1).face == Rect<Front>{{215, 100}, {315, 180}});
}

TEST_CASE("A print too wide loses more at its sides and no more above and below") {
    // The lip hides 5 and 25 are to be seen, so that 340 of 400 are left for the window.
    const MountDesign design =
        design_mount(frame_for({400, 500}), {}, {print_of("kelp", 356, 300)});
    CHECK_FALSE(design.frame_that_serves);
    CHECK(design.prints[0].across == Approx(8));
    CHECK(design.prints[0].down == Approx(5));
    CHECK(design.seen.left == Approx(25));
    CHECK(design.prints[0].out_of_sight.left == Approx(9.4));
}

TEST_CASE("A print too wide even for the most overlap names the frame it would take") {
    const wall::Frame frame = frame_for({400, 500});
    const MountDesign design = design_mount(frame, {}, {print_of("kelp", 366.5, 300)});
    // The most overlap leaves a window of 346.5, which with 60 of borders is 406.5; as wanted it is
    // 356.5. The frame is 30 larger than its blank.
    REQUIRE(design.frame_that_serves);
    CHECK(*design.frame_that_serves == Size{437, 530});
    REQUIRE(design.frame_as_wanted);
    CHECK(*design.frame_as_wanted == Size{447, 530});
    CHECK(design.prints[0].across == Approx(10));
    CHECK(design.seen.left == Approx(21.75));
}

TEST_CASE("A small print has a small window and wide borders") {
    const MountDesign design = design_mount(frame_for({400, 500}), {}, {print_of("kelp", 60, 80)});
    CHECK(design.layers[0].windows.at(0).face.size() == Size{50, 70});
    CHECK(design.cut == Borders{175, 175, 215, 215});
}

TEST_CASE(
    "A measured back board is the blank, and the lip covers what it is larger than the sight") {
    wall::Frame frame = frame_for({400, 500});
    frame.back_board = Size{398, 499};
    const MountDesign design = design_mount(frame, {}, {print_of("kelp", 210, 310)});
    CHECK(design.blank == Size{398, 499});
    CHECK(design.lip == Borders{4, 4, 4.5, 4.5});
    CHECK(design.seen.left == Approx(95));
    CHECK(design.seen.top == Approx(95));
}

TEST_CASE("A floating print lies whole on one card, placed as its window would be") {
    wall::Mount mount;
    mount.floats = true;
    mount.base_extra = 20;
    mount.under.push_back(test::under_by(4));
    const MountDesign design =
        design_mount(frame_for({400, 500}), mount, {print_of("kelp", 210, 310)});
    REQUIRE(design.layers.size() == 1);
    CHECK(design.layers[0].windows.empty());
    CHECK(design.prints[0].place == Rect<Front>{{95, 85}, {305, 395}});
    CHECK(design.cut == Borders{95, 95, 85, 105});
    CHECK(design.prints[0].out_of_sight == Borders{});
    CHECK(design.depth.layers == Approx(1.4));
}

TEST_CASE("A floating print keeps 3 mm from the lip, or a larger frame is named") {
    wall::Mount mount;
    mount.floats = true;
    const wall::Frame frame = frame_for({400, 500});
    CHECK_FALSE(design_mount(frame, mount, {print_of("kelp", 384, 300)}).frame_that_serves);
    const auto named = design_mount(frame, mount, {print_of("kelp", 386, 300)}).frame_that_serves;
    REQUIRE(named);
    CHECK(*named == Size{432, 530});
}

TEST_CASE("Behind glazing a floating print takes the depth of the spacers that keep it off") {
    wall::Mount mount;
    mount.floats = true;
    wall::Frame frame = frame_for({400, 500});
    const std::vector<wall::Print> prints{print_of("kelp", 300, 300)};
    // Glass 2, spacers 3, board 1.4, paper of 250 g/m2 and a backing of 2.5.
    CHECK(design_mount(frame, mount, prints).depth.total() == Approx(2 + 3 + 1.4 + 0.3125 + 2.5));
    CHECK(undermount_thickness(design_mount(frame, mount, prints)) == 0);
    frame.glazing.thickness = 0;
    CHECK(design_mount(frame, mount, prints).depth.spacer == 0);
    mount.floats = false;
    CHECK(design_mount(frame, mount, prints).depth.spacer == 0);
    CHECK(undermount_thickness(design_mount(frame, mount, prints)) == Approx(1.4));
}

TEST_CASE("Paper of 240 grams is 0.3 mm thick") {
    CHECK(paper_thickness(240) == Approx(0.3));
}

TEST_CASE("A piece of a project is designed as it hangs") {
    wall::Project project;
    wall::Frame& frame = project.frames.emplace_back(frame_for({400, 500}));
    frame.id = {"oak"};
    project.mounts.emplace_back().id = {"cream"};
    project.prints.push_back(print_of("kelp", 310, 210));
    wall::Piece& piece = project.pieces.emplace_back();
    piece.frame = frame.id;
    piece.turned = true;
    CHECK_FALSE(design_of(project, piece));
    piece.mount = wall::MountId{"cream"};
    CHECK_FALSE(design_of(project, piece));
    piece.print = wall::PrintId{"kelp"};
    const auto design = design_of(project, piece);
    REQUIRE(design);
    CHECK(design->blank == Size{500, 400});
    CHECK(design->cut == Borders{100, 100, 100, 100});
    CHECK(design->prints[0].title == "kelp");
}

TEST_CASE("A mount with openings takes their prints, not the piece's") {
    wall::Project project;
    project.frames.emplace_back(frame_for({400, 300})).id = {"oak"};
    project.prints = {print_of("kelp", 110, 110), print_of("reef", 90, 90)};
    wall::Mount& mount =
        project.mounts.emplace_back(test::mount_for(project.prints, wall::WindowOrder::row));
    mount.id = {"two"};
    wall::Piece& piece = project.pieces.emplace_back();
    piece.frame = {"oak"};
    piece.mount = mount.id;
    const auto design = design_of(project, piece);
    REQUIRE(design);
    REQUIRE(design->prints.size() == 2);
    CHECK(design->prints[1].id.text == "reef");
}
