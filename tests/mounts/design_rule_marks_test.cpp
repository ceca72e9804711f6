// Marks as a person sets them with a rule: they add up in the unit that is read.
#include "design_cases.h"
#include "mounts/design/back_marks.h"
#include "mounts/design/rule_step.h"

#include <algorithm>
#include <cmath>

using namespace wallwright;
using namespace wallwright::mounts;
using test::near;
using test::print_of;
using units::LengthUnit;

namespace {

constexpr LengthUnit kUnits[] = {LengthUnit::mm, LengthUnit::cm, LengthUnit::inch};

LengthUnit some_unit() {
    return *rc::gen::elementOf(std::vector(std::begin(kUnits), std::end(kUnits)));
}

/// What a person reads and writes down, in mm.
double as_read(double mm, LengthUnit unit) {
    const auto read = units::parse_length(units::format_number(mm, unit), unit);
    RC_ASSERT(read.has_value());
    return *read;
}

bool on_step(double mm, double step) {
    return std::abs(mm / step - std::round(mm / step)) < 1e-6;
}

/// Both directions of a place on the blank are read as what the blank is read as.
void adds_up(const Rect<Back>& place, geometry::Size blank, LengthUnit unit) {
    const auto read = [unit](double mm) { return as_read(mm, unit); };
    RC_ASSERT(near(read(place.left()) + read(place.width()) + read(blank.width - place.right()),
                   read(blank.width)));
    RC_ASSERT(near(read(place.top()) + read(place.height()) + read(blank.height - place.bottom()),
                   read(blank.height)));
}

double thinnest(const Borders& borders) {
    return std::min({borders.left, borders.right, borders.top, borders.bottom});
}

bool all_near(const Borders& borders, double mm) {
    return near(borders, {mm, mm, mm, mm});
}

template <class Space>
Borders between(const Rect<Space>& outer, const Rect<Space>& inner) {
    return {inner.left() - outer.left(), outer.right() - inner.right(), inner.top() - outer.top(),
            outer.bottom() - inner.bottom()};
}

/// A piece alone on a wall, hung as the case has it.
wall::Project wall_of(const test::Case& one, LengthUnit unit) {
    wall::Project project;
    project.unit = unit;
    project.frames.push_back(one.frame);
    project.frames.back().id = {"oak"};
    project.mounts.push_back(one.mount);
    project.mounts.back().id = {"cream"};
    project.prints = one.prints;
    wall::Piece& piece = project.pieces.emplace_back();
    piece.frame = {"oak"};
    piece.mount = wall::MountId{"cream"};
    return project;
}

}  // namespace

TEST_CASE("A rule has half millimetres, or sixteenths of an inch") {
    CHECK(rule_step(LengthUnit::mm) == 0.5);
    CHECK(rule_step(LengthUnit::cm) == 0.5);
    CHECK(rule_step(LengthUnit::inch) == 25.4 / 16);
    CHECK(to_step(51.4, 0.5) == 51.5);
    CHECK(to_step(51.25, 0.5) == 51.5);
    CHECK(to_step(51.25 - 1e-12, 0.5) == 51.5);
    CHECK(to_step(51.4, 0) == 51.4);
    CHECK(down_to_step(299.9, 0.5) == 299.5);
    CHECK(down_to_step(300 - 1e-12, 0.5) == 300);
    CHECK(up_to_step(299.6, 0.5) == 300);
    CHECK(up_to_step(300 + 1e-12, 0.5) == 300);
}

// A blank of 14 3/16 in and borders of 2 3/16 in once stood beside a window of 9 3/4 in.
TEST_CASE("Borders and window make up the blank in the unit that is read") {
    rc::prop("on the back and at the face, in both directions", [] {
        const LengthUnit unit = some_unit();
        const BackMarks marks = back_marks(test::some_case().design(), rule_step(unit));
        for (const LayerMarks& layer : marks.layers)
            for (const WindowMarks& window : layer.windows) {
                adds_up(window.line, marks.blank, unit);
                adds_up(window.face, marks.blank, unit);
                RC_ASSERT(near(between(Rect<Back>::at({0, 0}, marks.blank), window.line),
                               window.from_edges));
            }
        const auto read = [unit](double mm) { return as_read(mm, unit); };
        for (const double Borders::*side :
             {&Borders::left, &Borders::right, &Borders::top, &Borders::bottom})
            RC_ASSERT(near(read(marks.lip.*side) + read(marks.seen.*side), read(marks.cut.*side)));
    });
}

TEST_CASE("Every figure that a rule is set to is a whole step of it") {
    rc::prop("whatever the mount", [] {
        const double step = rule_step(some_unit());
        const BackMarks marks = back_marks(test::some_case().design(), step);
        for (const LayerMarks& layer : marks.layers)
            for (const WindowMarks& window : layer.windows)
                for (const double mm : {window.from_edges.left, window.from_edges.right,
                                        window.from_edges.top, window.from_edges.bottom})
                    RC_ASSERT(on_step(mm, step));
        for (const Hinging& hinge : marks.hinges)
            for (const double mm : {hinge.place.left(), hinge.place.top(), hinge.from_side})
                RC_ASSERT(on_step(mm, step));
    });
}

TEST_CASE("Equal borders stay equal, and reveals even on all sides") {
    rc::prop("in a row or a column", [] {
        const test::Case one = test::some_case();
        const MountDesign design = one.design();
        const BackMarks marks = back_marks(design, rule_step(some_unit()));
        RC_ASSERT(near(marks.cut.left, marks.cut.right));
        if (near(design.cut.top, design.cut.bottom))
            RC_ASSERT(near(marks.cut.top, marks.cut.bottom));
        for (std::size_t i = 1; i < marks.layers.size(); ++i)
            for (std::size_t j = 0; j < one.prints.size(); ++j) {
                const auto face = [&](std::size_t layer) {
                    return marks.layers[layer].windows[j].line.grown(marks.layers[layer].bevel);
                };
                RC_ASSERT(all_near(between(face(i - 1), face(i)), marks.layers[i].reveal));
            }
    });
}

TEST_CASE("Windows for prints of one size stay of one size, the middle one in the middle") {
    rc::prop("in a row or a column", [] {
        test::Case one = test::some_case();
        for (wall::Print& print : one.prints)
            print.size = one.prints.front().size;
        const MountDesign design = one.design();
        const BackMarks marks = back_marks(design, rule_step(some_unit()));
        for (const LayerMarks& layer : marks.layers) {
            for (const WindowMarks& window : layer.windows) {
                RC_ASSERT(near(window.line.width(), layer.windows.front().line.width()));
                RC_ASSERT(near(window.line.height(), layer.windows.front().line.height()));
            }
            const Borders& middle = layer.windows[layer.windows.size() / 2].from_edges;
            if (layer.windows.size() == 3)
                RC_ASSERT(near(middle.left, middle.right));
        }
    });
}

TEST_CASE("A rule's step takes half a step of the overlap at most, and of the borders") {
    rc::prop("and hanging the print by the rule takes as much again", [] {
        const double step = rule_step(some_unit());
        const test::Case one = test::some_case();
        const MountDesign design = one.design();
        const BackMarks marks = back_marks(design, step);
        const double off_x = (design.blank.width - marks.blank.width) / 2;
        const double off_y = (design.blank.height - marks.blank.height) / 2;
        RC_ASSERT(off_x > -1e-5);
        RC_ASSERT(off_x < step / 2 + 1e-9);
        for (std::size_t i = 0; i < one.prints.size(); ++i) {
            const WindowMarks& lowest = marks.layers.back().windows[i];
            const Rect<Front> face =
                mirrored(lowest.line, marks.blank.width).grown(marks.layers.back().bevel);
            const Rect<Front>& print = design.prints[i].place;
            const Rect<Front> lies{{print.min.x - off_x, print.min.y - off_y},
                                   {print.max.x - off_x, print.max.y - off_y}};
            RC_ASSERT(thinnest(between(lies, face)) > one.mount.overlap - step / 2 - 1e-5);
            const auto hung = Rect<Front>::at(
                {marks.hinges[i].place.left(), marks.hinges[i].place.top()}, print.size());
            RC_ASSERT(thinnest(between(hung, face)) > one.mount.overlap - step - 1e-5);
        }
        const double most = step * (design.layers.size() == 1 ? 1 : 1.5) + 1e-5;
        RC_ASSERT(std::abs(marks.cut.left - design.cut.left + off_x) < most);
        RC_ASSERT(std::abs(marks.cut.top - design.cut.top + off_y) < most);
    });
}

TEST_CASE("Without a step marks are the design's own") {
    rc::prop("borders, faces, reveals and what is covered", [] {
        const MountDesign design = test::some_case().design();
        const BackMarks marks = back_marks(design);
        RC_ASSERT(marks.blank == design.blank);
        RC_ASSERT(near(marks.cut, design.cut));
        RC_ASSERT(near(marks.seen, design.seen));
        for (std::size_t i = 0; i < marks.layers.size(); ++i) {
            RC_ASSERT(near(marks.layers[i].reveal, design.layers[i].reveal));
            for (std::size_t j = 0; j < design.prints.size(); ++j)
                RC_ASSERT(near(mirrored(marks.layers[i].windows[j].face, marks.blank.width),
                               design.layers[i].windows[j].face));
        }
        for (std::size_t i = 0; i < design.prints.size(); ++i) {
            RC_ASSERT(near(marks.hinges[i].covered, design.prints[i].covered));
            RC_ASSERT(near(marks.hinges[i].place, design.prints[i].place));
        }
    });
}

TEST_CASE("A reveal shows its colour beside the bevel in front of it") {
    wall::Mount mount;
    mount.under = {test::under_by(4), test::under_by(1)};
    const MountDesign design =
        design_mount(test::frame_for({300, 400}), mount, {print_of("kelp", 210, 297)});
    const BackMarks marks = back_marks(design, rule_step(LengthUnit::mm));
    CHECK(marks.layers[0].reveal == 0);
    CHECK(marks.layers[1].reveal == Approx(4));
    CHECK(marks.layers[1].shown == Approx(2.6));
    CHECK(marks.layers[2].reveal == Approx(1));
    CHECK(marks.layers[2].shown == 0);
}

TEST_CASE("The blank of a piece is taken down to a step of the wall's unit") {
    rc::prop("and loses less than one", [] {
        const test::Case one = test::some_case();
        const LengthUnit unit = some_unit();
        const wall::Project project = wall_of(one, unit);
        const auto design = design_of(project, project.pieces.front());
        RC_ASSERT(design.has_value());
        const geometry::Size room = blank_size(one.frame);
        for (const auto& [blank, whole] : {std::pair(design->blank.width, room.width),
                                           std::pair(design->blank.height, room.height)}) {
            RC_ASSERT(on_step(blank, rule_step(unit)));
            RC_ASSERT(blank < whole + 1e-5);
            RC_ASSERT(blank > whole - rule_step(unit));
        }
        RC_ASSERT(near(design->lip.left, (design->blank.width - sight_size(one.frame).width) / 2));
    });
}

TEST_CASE("The larger frame that a piece is told to take serves with its blank taken down too") {
    rc::prop("in any unit", [] {
        test::Case one = test::some_case();
        one.prints.front().size = {test::between(300, 1600), test::between(300, 1600)};
        wall::Project project = wall_of(one, some_unit());
        const auto design = design_of(project, project.pieces.front());
        RC_PRE(design->frame_that_serves.has_value());
        project.frames.front().outside = *design->frame_that_serves;
        RC_ASSERT(!design_of(project, project.pieces.front())->frame_that_serves);
    });
}

TEST_CASE("Windows are called by letters") {
    CHECK(letter_of(0) == "a");
    CHECK(letter_of(25) == "z");
    CHECK(letter_of(26) == "aa");
    CHECK(letter_of(28) == "ac");
}
