// What holds for the design of any mount.
#include "design_cases.h"

#include <algorithm>

using namespace wallwright;
using namespace wallwright::mounts;
using test::Case;
using test::near;

namespace {

double thinnest(const Borders& borders) {
    return std::min({borders.left, borders.right, borders.top, borders.bottom});
}

bool inside(const Rect<Front>& outer, const Rect<Front>& inner) {
    return inner.min.x > outer.min.x && inner.min.y > outer.min.y && inner.max.x < outer.max.x &&
           inner.max.y < outer.max.y;
}

Rect<Front> turned(const Rect<Front>& place) {
    return {{place.min.y, place.min.x}, {place.max.y, place.max.x}};
}

Case turned(Case one) {
    one.frame = as_hung(one.frame, true);
    for (wall::Print& print : one.prints)
        print.size = print.size.turned();
    one.mount.order = one.mount.order == wall::WindowOrder::row ? wall::WindowOrder::column
                                                                : wall::WindowOrder::row;
    return one;
}

bool grew(const Case& one, const MountDesign& design) {
    return std::ranges::any_of(design.prints, [&one](const LaidPrint& print) {
        return std::max(print.across, print.down) > one.mount.overlap + 1e-9;
    });
}

}  // namespace

TEST_CASE("Where a frame serves, windows are inside the blank and each border is kept") {
    rc::prop("whatever the layers, the prints and the base", [] {
        const Case one = test::some_case();
        const MountDesign design = one.design();
        RC_PRE(!design.frame_that_serves);
        RC_ASSERT(thinnest(design.seen) > one.mount.border_least - 1e-5);
        const Rect<Front> blank = Rect<Front>::at({0, 0}, design.blank);
        for (const CutLayer& layer : design.layers)
            for (const Window& window : layer.windows)
                RC_ASSERT(inside(blank, window.face));
    });
}

TEST_CASE("Borders and windows make up the blank, and seen is cut less lip") {
    rc::prop("whether the frame serves or not", [] {
        const Case one = test::some_case();
        const MountDesign design = one.design();
        const std::vector<Window>& top = design.layers.front().windows;
        RC_ASSERT(top.size() == one.prints.size());
        Rect<Front> all = top.front().face;
        for (const Window& window : top)
            all = hull(all, window.face);
        RC_ASSERT(near(design.cut.left, all.left()));
        RC_ASSERT(near(design.cut.top, all.top()));
        RC_ASSERT(near(design.cut.left + all.width() + design.cut.right, design.blank.width));
        RC_ASSERT(near(design.cut.top + all.height() + design.cut.bottom, design.blank.height));
        const double lip = one.frame.rebate_width - kRebateClearance / 2;
        RC_ASSERT(near(design.seen, {design.cut.left - lip, design.cut.right - lip,
                                     design.cut.top - lip, design.cut.bottom - lip}));
    });
}

TEST_CASE("The base is as wide as wanted, and the sides are equal") {
    rc::prop("by ratio or by amount", [] {
        const Case one = test::some_case();
        const MountDesign design = one.design();
        RC_ASSERT(near(design.cut.left, design.cut.right));
        if (one.mount.base_ratio)
            RC_ASSERT(near(design.cut.bottom, design.cut.top * *one.mount.base_ratio));
        else
            RC_ASSERT(near(design.cut.bottom, design.cut.top + one.mount.base_extra));
    });
}

TEST_CASE("Each print is covered on every side by the overlap at least") {
    rc::prop("at the face of the lowest layer, and by the bevel more where that touches it", [] {
        const Case one = test::some_case();
        const MountDesign design = one.design();
        const double bevel =
            one.mount.edge == wall::WindowEdge::bevel ? design.layers.back().card.thickness : 0;
        const double most = std::max(one.mount.overlap, one.mount.overlap_most);
        for (std::size_t i = 0; i < design.prints.size(); ++i) {
            const LaidPrint& print = design.prints[i];
            RC_ASSERT(near(print.place.width(), one.prints[i].size.width));
            RC_ASSERT(near(print.place.height(), one.prints[i].size.height));
            const Rect<Front>& lowest = design.layers.back().windows[i].face;
            RC_ASSERT(near(print.covered.left, lowest.left() - print.place.left()));
            RC_ASSERT(near(print.covered.bottom, print.place.bottom() - lowest.bottom()));
            RC_ASSERT(near(print.covered, {print.across, print.across, print.down, print.down}));
            RC_ASSERT(thinnest(print.covered) > one.mount.overlap - 1e-9);
            RC_ASSERT(std::max(print.across, print.down) < most + 1e-9);
            RC_ASSERT(near(thinnest(print.out_of_sight), thinnest(print.covered) + bevel));
        }
    });
}

TEST_CASE("Each under-layer's windows lie in those before them by the reveal on each side") {
    rc::prop("face in face", [] {
        const Case one = test::some_case();
        const MountDesign design = one.design();
        RC_ASSERT(design.layers.size() == 1 + one.mount.under.size());
        for (std::size_t layer = 1; layer < design.layers.size(); ++layer)
            for (std::size_t i = 0; i < design.prints.size(); ++i)
                RC_ASSERT(near(design.layers[layer].windows[i].face,
                               design.layers[layer - 1].windows[i].face.grown(
                                   -one.mount.under[layer - 1].reveal)));
    });
}

TEST_CASE("The bars between windows are even") {
    rc::prop("in rows and columns", [] {
        const Case one = test::some_case();
        const MountDesign design = one.design();
        const bool row = one.mount.order == wall::WindowOrder::row;
        const std::vector<Window>& top = design.layers.front().windows;
        for (std::size_t i = 1; i < top.size(); ++i) {
            const Rect<Front>& before = top[i - 1].face;
            const Rect<Front>& after = top[i].face;
            RC_ASSERT(near(row ? after.left() - before.right() : after.top() - before.bottom(),
                           one.mount.bar));
            RC_ASSERT(near(row ? after.centre().y : after.centre().x,
                           row ? before.centre().y : before.centre().x));
        }
    });
}

TEST_CASE("Turning frame and prints turns the design") {
    rc::prop("where the base is no wider than the top", [] {
        Case one = test::some_case();
        one.mount.base_extra = 0;
        one.mount.base_ratio.reset();
        if (*rc::gen::inRange(0, 2) == 1)
            one.frame.back_board = geometry::Size{one.frame.outside.width - test::between(10, 40),
                                                  one.frame.outside.height - test::between(10, 40)};
        const MountDesign upright = one.design();
        const MountDesign lying = turned(one).design();
        RC_ASSERT(geometry::is_same_size(lying.blank, upright.blank.turned()));
        RC_ASSERT(near(lying.seen, {upright.seen.top, upright.seen.bottom, upright.seen.left,
                                    upright.seen.right}));
        for (std::size_t layer = 0; layer < upright.layers.size(); ++layer)
            for (std::size_t i = 0; i < upright.prints.size(); ++i)
                RC_ASSERT(near(lying.layers[layer].windows[i].back,
                               turned(upright.layers[layer].windows[i].back)));
        RC_ASSERT(lying.frame_that_serves.has_value() == upright.frame_that_serves.has_value());
    });
}

TEST_CASE("The frame named in place of one that cannot serve does serve, and no smaller one") {
    rc::prop("with the most overlap; and one that keeps it as wanted", [] {
        Case one = test::some_case();
        one.prints.front().size = {test::between(300, 1600), test::between(300, 1600)};
        const MountDesign design = one.design();
        RC_PRE(design.frame_that_serves.has_value());
        const geometry::Size before = one.frame.outside;
        const geometry::Size named = *design.frame_that_serves;
        one.frame.outside = named;
        const MountDesign better = one.design();
        RC_ASSERT(!better.frame_that_serves);
        one.frame.outside = *design.frame_as_wanted;
        RC_ASSERT(!grew(one, one.design()));
        RC_ASSERT(!one.design().frame_that_serves);
        for (const bool across : {true, false}) {
            if ((across ? named.width - before.width : named.height - before.height) < 1)
                continue;
            one.frame.outside = named;
            (across ? one.frame.outside.width : one.frame.outside.height) -= 1.001;
            const MountDesign smaller = one.design();
            RC_ASSERT(smaller.frame_that_serves.has_value());
            one.frame.outside = *design.frame_as_wanted;
            (across ? one.frame.outside.width : one.frame.outside.height) -= 1.001;
            RC_ASSERT((one.design().frame_that_serves.has_value() || grew(one, one.design())));
        }
    });
}

TEST_CASE("The overlap grows only where a border would be too thin, and no more than that asks") {
    rc::prop("of a single print", [] {
        Case one = test::some_case();
        one.prints.resize(1);
        one.mount.openings.clear();
        const MountDesign design = one.design();
        const LaidPrint& print = design.prints.front();
        if (print.across > one.mount.overlap + 1e-6)
            RC_ASSERT(design.seen.left < one.mount.border_least + 1e-6);
        if (print.down > one.mount.overlap + 1e-6)
            RC_ASSERT(std::min(design.seen.top, design.seen.bottom) <
                      one.mount.border_least + 1e-6);
    });
}

TEST_CASE("The short plan of a mount is its design where nothing has to grow") {
    rc::prop("of a single print", [] {
        Case one = test::some_case();
        one.prints.resize(1);
        one.mount.openings.clear();
        const MountDesign design = one.design();
        RC_PRE(!grew(one, design));
        const MountPlan plan = plan_mount(one.frame, one.mount, one.prints.front());
        RC_ASSERT(near(plan.cut, design.cut));
        RC_ASSERT(near(plan.seen, design.seen));
        RC_ASSERT(geometry::is_same_size(plan.window, design.layers[0].windows[0].face.size()));
    });
}
