// What is said about a mount before it is cut.
#include "design_cases.h"
#include "mounts/design/remarks.h"

#include <algorithm>

using namespace wallwright;
using namespace wallwright::mounts;
using geometry::Size;
using test::frame_for;
using test::print_of;
using wall::Severity;

namespace {

using Prints = std::vector<wall::Print>;

std::vector<Remark> remarks(const wall::Frame& frame, const wall::Mount& mount,
                            const Prints& prints) {
    return remarks_on(design_mount(frame, mount, prints), mount, units::LengthUnit::mm);
}

/// The only remark, which is about this.
Remark only(const std::vector<Remark>& all, Trouble trouble) {
    REQUIRE(all.size() == 1);
    CHECK(wall::name_of(all[0].trouble) == wall::name_of(trouble));
    CHECK(all[0].text.back() == '.');
    return all[0];
}

bool has(const std::vector<Remark>& all, Trouble trouble) {
    return std::ranges::find(all, trouble, &Remark::trouble) != all.end();
}

const Prints kOne{print_of("kelp", 210, 297)};

}  // namespace

TEST_CASE("Nothing is said of a usual mount") {
    wall::Mount mount;
    mount.under.push_back(test::under_by(4));
    CHECK(remarks(frame_for({300, 400}), mount, kOne).empty());
    CHECK(remarks(frame_around({300, 400}), mount, kOne).empty());
}

TEST_CASE("A frame too small is named with the one that serves") {
    const Remark remark = only(remarks(frame_for({220, 400}), {}, kOne), Trouble::frame_too_small);
    // The most overlap leaves a window of 190: 15 as cut, 10 seen. It takes 250, one of 200 takes
    // 260.
    CHECK(remark.severity == Severity::mind);
    CHECK(remark.measured.value() == Approx(10));
    CHECK(remark.wanted.value() == Approx(25));
    CHECK(remark.text ==
          "This frame leaves 10 mm of the border seen on the left and 25 mm is wanted; the least "
          "frame that serves measures 280 x 430 mm outside, of the same moulding, with an overlap "
          "of up to 10 mm, and 290 x 430 mm keeps the overlap at 5 mm.");
}

TEST_CASE("A frame whose lip reaches the window cannot be used at all") {
    const auto all = remarks(frame_for({200, 400}), {}, kOne);
    REQUIRE(has(all, Trouble::frame_too_small));
    CHECK(all.front().severity == Severity::stop);
}

TEST_CASE("A mount without a frame is told the blank that serves") {
    const auto all = remarks(frame_around({220, 400}), {}, kOne);
    REQUIRE(has(all, Trouble::frame_too_small));
    CHECK(all.front().text.find("the least blank that serves measures 240 x 400 mm, with") !=
          std::string::npos);
    wall::Mount mount;
    mount.overlap_most = mount.overlap;
    CHECK(remarks(frame_around({220, 400}), mount, kOne)
              .front()
              .text.find("the least blank that serves measures 250 x 400 mm.") !=
          std::string::npos);
}

TEST_CASE("A print cropped for its borders is noted with how much") {
    const Remark remark = only(remarks(frame_for({252, 400}), {}, kOne), Trouble::overlap_grew);
    CHECK(remark.severity == Severity::note);
    CHECK(remark.measured.value() == Approx(9));
    CHECK(remark.text.find("grows from 5 mm to 9 mm at the sides and 5 mm above") !=
          std::string::npos);
}

TEST_CASE("A window placed too near an edge is said to be") {
    wall::Mount mount;
    mount.by_hand = wall::FromCorner{20, 60};
    const Remark remark = only(remarks(frame_for({300, 400}), mount, kOne), Trouble::border_thin);
    CHECK(remark.measured.value() == Approx(15));
    CHECK(remark.text.find("on the left is 15 mm seen and 25 mm is wanted") != std::string::npos);
}

TEST_CASE("Windows placed by hand may meet, leave the blank or leave a thin bar") {
    const Prints prints{print_of("kelp", 90, 120), print_of("reef", 90, 120)};
    wall::Mount mount = test::mount_for(prints, wall::WindowOrder::by_hand);
    mount.openings[0].at = wall::FromCorner{40, 60};
    const auto with_second_at = [&](double left, double top) {
        mount.openings[1].at = wall::FromCorner{left, top};
        return remarks(frame_for({300, 400}), mount, prints);
    };
    CHECK(with_second_at(160, 60).empty());
    CHECK(has(with_second_at(100, 60), Trouble::windows_meet));
    CHECK(has(with_second_at(120, 60), Trouble::windows_meet));
    const auto thin = with_second_at(128, 60);
    CHECK(has(thin, Trouble::bar_thin));
    CHECK(has(thin, Trouble::prints_meet));
    CHECK_FALSE(has(with_second_at(130, 60), Trouble::bar_thin));
    const auto outside = with_second_at(160, 350);
    REQUIRE(has(outside, Trouble::window_leaves_blank));
    CHECK(std::ranges::any_of(outside, [](const Remark& remark) {
        return remark.text.find("reef reaches 60 mm past the edge") != std::string::npos;
    }));
}

TEST_CASE("A print is to be covered by 3 mm at least") {
    wall::Mount mount;
    mount.overlap = 2;
    const Remark remark =
        only(remarks(frame_for({300, 400}), mount, kOne), Trouble::print_uncovered);
    CHECK(remark.severity == Severity::mind);
    mount.overlap = 0;
    CHECK(remarks(frame_for({300, 400}), mount, kOne).front().severity == Severity::stop);
    mount.overlap = 3;
    CHECK(remarks(frame_for({300, 400}), mount, kOne).empty());
}

TEST_CASE("An overlap that closes the window is stopped") {
    wall::Mount mount;
    mount.overlap = 20;
    CHECK(has(remarks(frame_for({300, 400}), mount, {print_of("stamp", 40, 60)}),
              Trouble::window_closed));
}

TEST_CASE("A paper larger than the blank has to be trimmed") {
    wall::Mount mount;
    mount.overlap = 40;
    mount.overlap_most = 40;
    const Remark remark = only(remarks(frame_for({300, 400}), mount, {print_of("kelp", 310, 300)}),
                               Trouble::print_leaves_blank);
    CHECK(remark.measured.value() == Approx(-5));
}

TEST_CASE("Layers deeper than the rebate are added up") {
    wall::Frame frame = frame_for({300, 400});
    frame.rebate_depth = 6;
    wall::Mount mount;
    mount.under.push_back(test::under_by(4));
    // Glass 2, two boards of 1.4, paper of 250 g/m2 and a backing of 2.5.
    const Remark remark = only(remarks(frame, mount, kOne), Trouble::too_deep);
    CHECK(remark.measured.value() == Approx(2 + 2.8 + 0.3125 + 2.5));
    CHECK(remark.wanted.value() == Approx(6));
}

// Fine Art Trade Guild (UK), framing standards: 1100 micron.
TEST_CASE("Board under 1.1 mm is thinner than the trade's least") {
    wall::Mount mount;
    mount.card.thickness = 1;
    CHECK(only(remarks(frame_for({300, 400}), mount, kOne), Trouble::board_thin).wanted.value() ==
          Approx(1.1));
    mount.card.thickness = 1.1;
    CHECK(remarks(frame_for({300, 400}), mount, kOne).empty());
}

// J. Price, 4Walls trade magazine, issue 40: 3 mm; Westfall Framing, printed Framing Guide: 1/4 in.
TEST_CASE("Reveals of 3 mm to a quarter inch are usual") {
    const auto with_reveal = [](double reveal) {
        wall::Mount mount;
        mount.under.push_back(test::under_by(reveal));
        return remarks(frame_for({300, 400}), mount, kOne);
    };
    CHECK(with_reveal(3).empty());
    CHECK(with_reveal(6.35).empty());
    CHECK(only(with_reveal(2), Trouble::reveal_unusual).text.find("0.6 mm show its colour") !=
          std::string::npos);
    CHECK(only(with_reveal(2), Trouble::reveal_unusual).severity == Severity::note);
    CHECK(only(with_reveal(8), Trouble::reveal_unusual).wanted.value() == Approx(6.35));
}

TEST_CASE("A back board smaller than what the moulding leaves open would fall through") {
    wall::Frame frame = frame_for({300, 400});
    frame.back_board = Size{288, 400};
    const auto all = remarks(frame, {}, {print_of("kelp", 180, 297)});
    CHECK(only(all, Trouble::blank_falls_through).severity == Severity::stop);
}

TEST_CASE("A reveal of which no colour shows is minded") {
    wall::Frame frame = frame_for({300, 400});
    frame.rebate_depth = 20;
    wall::Mount mount;
    mount.under.push_back(test::under_by(1.4));
    const Remark remark = only(remarks(frame, mount, kOne), Trouble::reveal_unusual);
    CHECK(remark.severity == Severity::mind);
    CHECK(remark.text.find("nothing of its colour shows") != std::string::npos);
    mount.card.thickness = 4;
    mount.under.front().reveal = 4;
    CHECK(only(remarks(frame, mount, kOne), Trouble::reveal_unusual).severity == Severity::mind);
    mount.edge = wall::WindowEdge::straight;
    CHECK(remarks(frame, mount, kOne).empty());
}

// frame_for() has a moulding of 20 and a rebate of 6, of which the clearance takes 1.
TEST_CASE("A lip that covers less than 1 mm does not hold the blank, and one of none stops") {
    const auto with_rebate = [](double width) {
        wall::Frame frame = frame_for({300, 400});
        frame.rebate_width = width;
        return remarks(frame, {}, {print_of("kelp", 180, 297)});
    };
    const Remark flush = only(with_rebate(1), Trouble::blank_falls_through);
    CHECK(flush.severity == Severity::stop);
    CHECK(flush.text.find("as large as the opening of the frame") != std::string::npos);
    const Remark narrow = only(with_rebate(1.9), Trouble::blank_falls_through);
    CHECK(narrow.severity == Severity::mind);
    CHECK(narrow.measured.value() == Approx(0.9));
    CHECK(with_rebate(2).empty());
}

TEST_CASE("A rebate too shallow for the board that the print is hung on is noted") {
    wall::Frame frame = frame_for({300, 400});
    frame.rebate_depth = 7;
    // Glass 2, a board of 1.4, paper of 250 g/m2 and a backing of 2.5, and another board.
    const Remark remark = only(remarks(frame, {}, kOne), Trouble::undermount_too_deep);
    CHECK(remark.severity == Severity::note);
    CHECK(remark.measured.value() == Approx(2 + 1.4 + 0.3125 + 2.5 + 1.4));
    frame.rebate_depth = 7.7;
    CHECK(remarks(frame, {}, kOne).empty());
}

TEST_CASE("Boards are told in mm whatever the unit") {
    wall::Frame frame = frame_for({300, 400});
    frame.rebate_depth = 6;
    const auto all = remarks_on(design_mount(frame, {}, kOne), {}, units::LengthUnit::inch);
    CHECK(only(all, Trouble::too_deep).text.find("card 1.4 mm") != std::string::npos);
}

TEST_CASE("Layers behind a floating print are said not to be used") {
    wall::Mount mount;
    mount.floats = true;
    mount.under.push_back(test::under_by(4));
    wall::Frame frame = frame_for({300, 400});
    frame.glazing.thickness = 0;
    CHECK(only(remarks(frame, mount, kOne), Trouble::layers_unused).severity == Severity::note);
}

TEST_CASE("A floating print is kept off the glazing and told a thin border") {
    wall::Mount mount;
    mount.floats = true;
    wall::Frame frame = frame_for({300, 400});
    CHECK(has(remarks(frame, mount, kOne), Trouble::touches_glazing));
    frame.glazing.thickness = 0;
    CHECK(remarks(frame, mount, kOne).empty());
    CHECK(only(remarks(frame, mount, {print_of("kelp", 260, 300)}), Trouble::border_thin)
              .measured.value() == Approx(15));
    CHECK(only(remarks(frame, mount, {print_of("kelp", 288, 300)}), Trouble::frame_too_small)
              .wanted.value() == Approx(3));
}
