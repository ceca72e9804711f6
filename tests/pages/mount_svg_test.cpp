#include "pages/mount_svg.h"

#include "mounts/design/back_marks.h"
#include "support/command.h"
#include "support/mount_scenes.h"
#include "wall/find_in.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <cstdio>
#include <set>
#include <sstream>

using namespace wallwright;
using namespace wallwright::pages;

namespace {

/// All paths of the file in their order, as rectangles.
std::vector<geometry::Rect<mounts::Back>> paths_in(const std::string& svg) {
    std::vector<geometry::Rect<mounts::Back>> found;
    std::istringstream lines(svg);
    for (std::string line; std::getline(lines, line);) {
        const auto at = line.find(" d=\"");
        geometry::Rect<mounts::Back> rect;
        if (at != std::string::npos &&
            std::sscanf(line.c_str() + at, " d=\"M %lf %lf H %lf V %lf H %*f Z", &rect.min.x,
                        &rect.min.y, &rect.max.x, &rect.max.y) == 4)
            found.push_back(rect);
    }
    return found;
}

mounts::MountDesign design_of(const std::string& id) {
    const wall::Project project = scenes::mounts_to_cut();
    return *mounts::design_of(project, *wall::find(project, wall::PieceId{id}));
}

}  // namespace

TEST_CASE("The machine's file has each window's line as marked on the back, then the blank") {
    for (const std::string id : {"kelp", "shells", "stamp", "wreck"}) {
        INFO(id);
        const mounts::MountDesign design = design_of(id);
        const mounts::BackMarks marks = mounts::back_marks(design);
        const auto boards = mount_svgs(design, id, "Title");
        REQUIRE(boards.size() == design.layers.size());
        for (std::size_t layer = 0; layer < boards.size(); ++layer) {
            const auto paths = paths_in(boards[layer].svg);
            REQUIRE(paths.size() == marks.layers[layer].windows.size() + 1);
            for (std::size_t i = 0; i + 1 < paths.size(); ++i) {
                const auto& line = marks.layers[layer].windows[i].line;
                CHECK(paths[i].min.x == Approx(line.min.x).margin(0.001));
                CHECK(paths[i].max.y == Approx(line.max.y).margin(0.001));
            }
            CHECK(paths.back().size() == design.blank);
        }
    }
}

TEST_CASE("There is a file for each board of what is to be cut, and its name stays in the folder") {
    wall::Project project = scenes::mounts_to_cut();
    project.pieces[1].state = wall::PieceState::hung;
    const auto boards = mount_svgs(project);
    REQUIRE(boards.size() == 2 + 1 + 3 + 1 + 1 + 1);
    CHECK(boards[0].name == "kelp-layer-1.svg");
    CHECK(boards[1].name == "kelp-layer-2.svg");
    CHECK(mount_svgs(design_of("stamp"), "../../etc", "x").front().name == "------etc-layer-1.svg");
}

TEST_CASE("Pieces whose ids a file name cannot tell apart have files of their own") {
    wall::Project project = scenes::mounts_to_cut();
    project.pieces[0].id = {"sea kelp"};
    project.pieces[1].id = {"sea-kelp"};
    std::set<std::string> names;
    for (const BoardSvg& board : mount_svgs(project))
        CHECK(names.insert(board.name).second);
    CHECK(names.contains("sea-kelp-2-layer-1.svg"));
}

TEST_CASE("What cannot be cut so is not given to a machine") {
    wall::Project project = scenes::mounts_to_cut();
    const std::size_t before = mount_svgs(project).size();
    wall::find_in(project.mounts, wall::MountId{"stamp"})->by_hand = wall::FromCorner{-30, 10};
    CHECK(mount_svgs(project).size() == before - 1);
}

TEST_CASE("The title says which side is up and stays text, whatever a piece is called") {
    const std::string svg = mount_svgs(design_of("kelp"), "kelp", "Salt & <Sea>").front().svg;
    CHECK(svg.find("<title>Salt &amp; &lt;Sea&gt;: layer 1 of 2, back up; window lines are the "
                   "openings at the back of a bevel of 45 degrees through 1.4 mm</title>") !=
          std::string::npos);
    CHECK(mount_svgs(design_of("stamp"), "s", "Stamp")
              .front()
              .svg.find("Stamp: mount, back up, for straight cuts") != std::string::npos);
    CHECK(svg.find("fill=\"none\"") != std::string::npos);
}

// librsvg reads it as any other program would.
TEST_CASE("A board's file is sound XML and as large as its blank to librsvg") {
    const test::ScratchFolder scratch;
    const mounts::MountDesign design = design_of("kelp");
    test::write_whole(scratch.file("b.svg"), mount_svgs(design, "b", "Kelp").front().svg);
    // at 254 dots an inch a mm is ten dots
    REQUIRE(test::run(fmt::format("rsvg-convert -d 254 -p 254 {} -o {}", scratch.file("b.svg"),
                                  scratch.file("b.png")))
                .status == 0);
    const std::string png = test::read_whole(scratch.file("b.png"));
    const auto number_at = [&png](std::size_t at) {
        int value = 0;
        for (std::size_t i = 0; i < 4; ++i)
            value = value * 256 + static_cast<unsigned char>(png.at(at + i));
        return value;
    };
    CHECK(number_at(16) == 10 * static_cast<int>(design.blank.width));
    CHECK(number_at(20) == 10 * static_cast<int>(design.blank.height));
}
