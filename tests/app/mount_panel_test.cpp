#include "at_the_bench.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::app;

namespace {

std::string texts_of(const draw::WallDrawing& drawing) {
    std::string all;
    for (const auto& shape : drawing.shapes)
        if (const auto* text = std::get_if<draw::Text<geometry::Wall>>(&shape))
            all += text->text + "|";
    return all;
}

}  // namespace

TEST_CASE("Each measure that is typed over changes the document, as one step, and the drawing") {
    AtTheBench at;
    struct Typed {
        const char* name;
        const char* words;
        double (*value)(const AtTheBench&);
        double wanted;
    };
    const auto typed = GENERATE(
        Typed{"mount/overlap", "7", [](const AtTheBench& it) { return it.mount().overlap; }, 7},
        Typed{"mount/overlap-most", "2 cm",
              [](const AtTheBench& it) { return it.mount().overlap_most; }, 20},
        Typed{"mount/border-least", "1 in",
              [](const AtTheBench& it) { return it.mount().border_least; }, 25.4},
        Typed{"mount/thickness-1", "2",
              [](const AtTheBench& it) { return it.mount().card.thickness; }, 2},
        Typed{"mount/seen-left", "50", [](const AtTheBench& it) { return it.design().seen.left; },
              50},
        Typed{"mount/cut-left", "50", [](const AtTheBench& it) { return it.design().cut.left; },
              50},
        Typed{"mount/seen-bottom", "60",
              [](const AtTheBench& it) { return it.design().seen.bottom; }, 60},
        Typed{"mount/cut-right", "60", [](const AtTheBench& it) { return it.design().cut.right; },
              60},
        Typed{"mount/cut-top", "60", [](const AtTheBench& it) { return it.design().cut.top; }, 60},
        Typed{"mount/print-size", "200 x 290",
              [](const AtTheBench& it) { return it.design().prints[0].place.width(); }, 200},
        Typed{"mount/glazing", "3", [](const AtTheBench& it) { return it.design().depth.glazing; },
              3},
        Typed{"mount/backing", "4", [](const AtTheBench& it) { return it.design().depth.backing; },
              4},
        Typed{"mount/paper", "400", [](const AtTheBench& it) { return it.design().depth.print; },
              0.5},
        Typed{"mount/outside", "410 x 500",
              [](const AtTheBench& it) { return it.design().blank.width; }, 380},
        Typed{"mount/moulding", "15", [](const AtTheBench& it) { return it.design().blank.width; },
              380},
        Typed{"mount/lip", "8", [](const AtTheBench& it) { return it.design().lip.left; }, 7},
        Typed{"mount/rebate", "14", [](const AtTheBench& it) { return it.design().depth.rebate; },
              14},
        Typed{"mount/back-board", "368 x 469",
              [](const AtTheBench& it) { return it.design().blank.height; }, 469});
    CAPTURE(typed.name);
    at.open("mount/frame", "mount/outside");
    const wall::Project before = at.state.session.kept();
    const draw::WallDrawing drawn = at.state.mount_picture.drawing;
    at.window.fill_in(typed.name, typed.words);
    CHECK(typed.value(at) == Approx(typed.wanted));
    at.window.settle();
    const std::string name = typed.name;
    const bool is_seen = name == "mount/overlap" || name.starts_with("mount/cut") ||
                         name.starts_with("mount/seen") || name == "mount/outside" ||
                         name == "mount/print-size" || name == "mount/lip";
    if (is_seen)
        CHECK_FALSE(at.state.mount_picture.drawing == drawn);
    at.state.session.undo();
    CHECK(at.state.session.kept() == before);
    CHECK_FALSE(at.state.session.history().can_undo());
}

TEST_CASE("Figures of the drawing are those of the column") {
    AtTheBench at;
    at.window.fill_in("mount/seen-left", "51");
    at.window.settle();
    const std::string figures = texts_of(at.state.mount_picture.drawing);
    CAPTURE(figures);
    CHECK(figures.find("51") != std::string::npos);
    CHECK(figures.find("56") != std::string::npos);
}

TEST_CASE("Nonsense for a measure changes nothing and says why") {
    AtTheBench at;
    const wall::Project before = at.state.session.kept();
    for (const char* name : {"mount/overlap", "mount/cut-left", "mount/pixels"}) {
        at.window.fill_in(name, "as before");
        CHECK(at.window.has(std::string(name) + "/reason"));
        CHECK(at.state.session.kept() == before);
        at.window.key("Escape");
    }
}

TEST_CASE("The borders go by one of four rules") {
    AtTheBench at;
    const auto choose = [&at](int which) {
        at.window.click("mount/placed");
        at.window.click("mount/placed/" + std::to_string(which));
    };
    choose(1);
    CHECK(at.mount().base_extra > 0);
    at.window.fill_in("mount/base-extra", "12");
    CHECK(at.design().cut.bottom - at.design().cut.top == Approx(12));
    choose(2);
    at.window.fill_in("mount/base-ratio", "1.25");
    CHECK(at.design().cut.bottom / at.design().cut.top == Approx(1.25));
    at.window.fill_in("mount/base-ratio", "7");
    CHECK(at.window.has("mount/base-ratio/reason"));
    at.window.key("Escape");
    choose(3);
    CHECK(at.mount().by_hand.has_value());
    at.window.click("mount/centre");
    CHECK_FALSE(at.mount().by_hand.has_value());
    CHECK(at.mount().base_ratio == 1.25);
    choose(0);
    CHECK(at.design().cut.bottom == Approx(at.design().cut.top));
}

TEST_CASE("A piece without a mount is given one, and it can be taken out again") {
    AtTheBench at;
    at.window.key("Right");
    at.window.click("mount/give");
    const wall::Piece& dune = *wall::find(at.state.session.kept(), wall::PieceId{"dune"});
    CHECK(dune.mount.has_value());
    CHECK(at.last_step() == "Add a mount to Dune");
    CHECK_FALSE(at.window.has("bench/window/1"));
    at.window.click("mount/add-print");
    CHECK(at.window.has("bench/window/1"));
    at.window.click("mount/take-out");
    CHECK_FALSE(wall::find(at.state.session.kept(), wall::PieceId{"dune"})->mount);
}

TEST_CASE("A mount that two pieces share is said to be, and one gets its own") {
    wall::Project project = wall_with_drawer();
    project.pieces[1].mount = project.pieces[0].mount;
    project.pieces[1].print = wall::PrintId{"flow"};
    AtTheBench at(project);
    at.window.fill_in("mount/overlap", "6");
    const auto overlap = [&at](const char* id) {
        const wall::Project& now = at.state.session.kept();
        return wall::find(now, *wall::find(now, wall::PieceId{id})->mount)->overlap;
    };
    CHECK(overlap("dune") == 6);
    at.window.click("mount/own");
    CHECK_FALSE(at.window.has("mount/own"));
    at.window.fill_in("mount/overlap", "8");
    CHECK(overlap("kelp") == 8);
    CHECK(overlap("dune") == 6);
    at.window.click("mount/same-as");
    at.window.click("mount/same-as/1");
    CHECK(overlap("kelp") == 6);
}

TEST_CASE("Layers are added, measured and taken out") {
    AtTheBench at;
    at.window.click("mount/add-layer");
    REQUIRE(at.mount().under.size() == 1);
    at.window.fill_in("mount/reveal-2", "5");
    CHECK(at.design().layers[1].reveal == 5);
    at.window.fill_in("mount/thickness-2", "1.1");
    CHECK(at.design().layers[1].card.thickness == 1.1);
    for (int i = 0; i < 4; ++i)
        at.window.click("mount/add-layer");
    CHECK(at.mount().under.size() == 4);
    CHECK_FALSE(at.window.item("mount/add-layer").enabled);
    at.window.click("mount/remove-layer-2");
    CHECK(at.mount().under.size() == 3);
}

TEST_CASE("A print that floats has no overlap, and lies on the card again behind a window") {
    AtTheBench at;
    at.window.click("mount/floats");
    CHECK(at.mount().floats);
    CHECK_FALSE(at.window.has("mount/overlap"));
    at.window.click("mount/floats");
    CHECK(at.window.has("mount/overlap"));
    at.window.click("mount/edge");
    at.window.click("mount/edge/1");
    CHECK(at.mount().edge == wall::WindowEdge::straight);
}

TEST_CASE("Further windows are for prints of the drawer, in a row, a column or by hand") {
    AtTheBench at;
    at.open("mount/windows", "mount/add-window");
    at.window.click("mount/add-window");
    at.window.click("mount/add-window/1");
    REQUIRE(at.mount().openings.size() == 2);
    CHECK(at.mount().openings[1].print == wall::PrintId{"reed"});
    CHECK(at.window.has("bench/window/2"));
    at.window.fill_in("mount/bar", "22");
    CHECK(at.mount().bar == 22);
    at.window.click("mount/order");
    at.window.click("mount/order/1");
    CHECK(at.mount().order == wall::WindowOrder::column);
    const auto before = desk::window_at(at.design(), 1);
    at.window.click("mount/order");
    at.window.click("mount/order/2");
    CHECK(at.mount().order == wall::WindowOrder::by_hand);
    CHECK(desk::window_at(at.design(), 1).min.y == Approx(std::max(0.0, before.min.y)));
    at.window.click("mount/window-2");
    at.window.click("mount/window-2/1");
    CHECK(at.mount().openings[1].print == wall::PrintId{"flow"});
    at.window.click("mount/remove-window-1");
    CHECK(at.mount().openings.empty());
    CHECK(wall::find(at.state.session.kept(), wall::PieceId{"kelp"})->print ==
          wall::PrintId{"flow"});
}

TEST_CASE("Another print is put into the frame, or changes places with another frame's") {
    wall::Project project = wall_with_drawer();
    project.pieces[1].print = wall::PrintId{"flow"};
    AtTheBench at(project);
    const auto print_in = [&at](const char* id) {
        return wall::find(at.state.session.kept(), wall::PieceId{id})->print;
    };
    at.window.click("mount/print");
    at.window.click("mount/print/2");
    CHECK(print_in("kelp") == wall::PrintId{"flow"});
    CHECK(print_in("dune") == wall::PrintId{"ebb"});
    CHECK(at.last_step() == "Swap the prints of Kelp and Dune");
    at.window.click("mount/print");
    at.window.click("mount/print/1");
    CHECK(print_in("kelp") == wall::PrintId{"reed"});
}

TEST_CASE("Pixels that are typed tell whether a photograph will look sharp") {
    AtTheBench at;
    CHECK_FALSE(at.window.has("mount/sharpness"));
    at.window.fill_in("mount/pixels", "600 x 850");
    const auto& pixels = wall::find(at.state.session.kept(), wall::PrintId{"ebb"})->pixels;
    REQUIRE(pixels);
    CHECK(pixels->height == 850);
    CHECK(at.window.has("mount/sharpness"));
    at.window.fill_in("mount/pixels", " ");
    CHECK_FALSE(at.window.has("mount/sharpness"));
}

TEST_CASE("What there is to say about the mount stands below its measures") {
    AtTheBench at;
    CHECK(at.window.has("remarks/none"));
    at.window.fill_in("mount/thickness-1", "0.6");
    CHECK(at.window.has("remarks/0"));
    at.window.key("Escape");
    at.window.key("Escape");
    CHECK_FALSE(at.window.has("remarks/0"));
}
