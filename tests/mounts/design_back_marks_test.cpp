// The marks on the backs of a mount's boards.
#include "design_cases.h"
#include "mounts/design/back_marks.h"

#include <cmath>

using namespace wallwright;
using namespace wallwright::mounts;
using geometry::Point;
using test::near;
using test::print_of;

namespace {

/// A window off the middle: 40 from the left and 50 from the top as seen from the front.
MountDesign off_centre(wall::WindowEdge edge) {
    wall::Mount mount;
    mount.by_hand = wall::FromCorner{40, 50};
    mount.edge = edge;
    return design_mount(test::frame_for({400, 500}), mount, {print_of("kelp", 210, 310)});
}

}  // namespace

TEST_CASE("What is left on the front is right on the back") {
    const MountDesign design = off_centre(wall::WindowEdge::straight);
    REQUIRE(design.cut == Borders{40, 160, 50, 150});
    const BackMarks marks = back_marks(design);
    CHECK(marks.blank == design.blank);
    const WindowMarks& window = marks.layers.at(0).windows.at(0);
    CHECK(window.from_edges == Borders{160, 40, 50, 150});
    CHECK(window.crosses[0] == Point<Back>{160, 50});
    CHECK(window.crosses[1] == Point<Back>{360, 50});
    CHECK(window.crosses[2] == Point<Back>{360, 350});
    CHECK(window.crosses[3] == Point<Back>{160, 350});
    CHECK(marks.layers[0].bevel == 0);
}

TEST_CASE("The line of a bevel is the smaller opening, one thickness inside the window") {
    const WindowMarks& window =
        back_marks(off_centre(wall::WindowEdge::bevel)).layers.at(0).windows.at(0);
    CHECK(near(window.from_edges, {161.4, 41.4, 51.4, 151.4}));
}

// A right-angled triangle of 3, 4 and 5.
TEST_CASE("Both diagonals are told, of the blank and of the window") {
    wall::Mount mount;
    mount.edge = wall::WindowEdge::straight;
    const BackMarks marks =
        back_marks(design_mount(test::frame_for({300, 400}), mount, {print_of("kelp", 160, 210)}));
    CHECK(marks.layers.at(0).diagonal == Approx(500));
    CHECK(marks.layers[0].windows.at(0).diagonal == Approx(250));
}

TEST_CASE("A blank turned over twice lies as before") {
    rc::prop("with any place on it", [] {
        const double width = test::between(100, 900);
        const Rect<Front> place =
            Rect<Front>::at({test::between(-50, 500), test::between(-50, 500)},
                            {test::between(1, 500), test::between(1, 500)});
        RC_ASSERT(near(mirrored(mirrored(place, width), width), place));
        RC_ASSERT(near(mirrored(place, width).left() + place.right(), width));
        RC_ASSERT(near(mirrored(place, width).top(), place.top()));
    });
}

TEST_CASE("A board cut along its lines and turned over has the windows of the design") {
    rc::prop("of any mount", [] {
        const MountDesign design = test::some_case().design();
        const BackMarks marks = back_marks(design);
        RC_ASSERT(marks.layers.size() == design.layers.size());
        for (std::size_t i = 0; i < marks.layers.size(); ++i) {
            const LayerMarks& layer = marks.layers[i];
            RC_ASSERT(layer.windows.size() == design.prints.size());
            for (std::size_t j = 0; j < layer.windows.size(); ++j) {
                const Borders& from = layer.windows[j].from_edges;
                const Rect<Back> line{
                    {from.left, from.top},
                    {marks.blank.width - from.right, marks.blank.height - from.bottom}};
                RC_ASSERT(near(mirrored(line, marks.blank.width).grown(layer.bevel),
                               design.layers[i].windows[j].face));
            }
        }
    });
}

TEST_CASE("Cuts go once round from cross to cross and never to the edge of the blank") {
    rc::prop("where the frame serves", [] {
        const test::Case one = test::some_case();
        const MountDesign design = one.design();
        RC_PRE(!design.frame_that_serves);
        const Rect<Back> blank = Rect<Back>::at({0, 0}, design.blank);
        for (const LayerMarks& layer : back_marks(design).layers)
            for (const WindowMarks& window : layer.windows)
                for (std::size_t i = 0; i < 4; ++i) {
                    const Cut& cut = window.cuts[i];
                    RC_ASSERT(cut.from == window.crosses[i]);
                    RC_ASSERT(cut.to == window.cuts[(i + 1) % 4].from);
                    RC_ASSERT((cut.from.x == cut.to.x) != (cut.from.y == cut.to.y));
                    RC_ASSERT(blank.grown(-one.mount.border_least).contains(cut.from));
                }
    });
}

TEST_CASE("A print is hung where its window shows it, by two hinges as far from its corners") {
    const MountDesign design = off_centre(wall::WindowEdge::bevel);
    const BackMarks marks = back_marks(design);
    REQUIRE(marks.hinges.size() == 1);
    CHECK(marks.hinges[0].place == Rect<Front>{{35, 45}, {245, 355}});
    CHECK(marks.hinges[0].from_side == Approx(35));
}

TEST_CASE("A floating print needs no marks on the back but a place to hang") {
    wall::Mount mount;
    mount.floats = true;
    const BackMarks marks =
        back_marks(design_mount(test::frame_for({300, 400}), mount, {print_of("kelp", 160, 210)}));
    REQUIRE(marks.layers.size() == 1);
    CHECK(marks.layers[0].windows.empty());
    REQUIRE(marks.hinges.size() == 1);
    CHECK(marks.hinges[0].place == Rect<Front>{{70, 95}, {230, 305}});
}
