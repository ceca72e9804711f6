#include "desk/overlay.h"

#include "draw/looking.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::desk;
using draw::Ink;
using draw::LineType;
using geometry::Point;
using geometry::Rect;
using geometry::Wall;

namespace {

constexpr double kScale = 0.05;

using Shapes = std::vector<draw::Shape<Wall>>;
using Path = draw::Path<Wall>;
using Text = draw::Text<Wall>;

Rect<Wall> bounds_of(const std::vector<Path>& paths) {
    Rect<Wall> bounds{paths.at(0).start, paths.at(0).start};
    for (const Path& path : paths) {
        bounds = hull(bounds, Rect<Wall>{path.start, path.start});
        for (const auto& step : path.steps)
            bounds = hull(bounds, Rect<Wall>{step.to, step.to});
    }
    return bounds;
}

const Rect<Wall> kPlace = Rect<Wall>::at({1000, 1300}, {400, 300});
const Rect<Wall> kSofaPlace = Rect<Wall>::at({800, 0}, {1900, 800});

Session session() {
    wall::Project project = scenes::wall_of(3600, 2400);
    scenes::add_piece(project, "kelp", kPlace.min, kPlace.size());
    scenes::add_hung(project, "moss", {2000, 1300}, {300, 300});
    scenes::add_waiting(project, "tide", {300, 400});
    scenes::add_furniture(project, wall::FurnitureType::sofa, kSofaPlace);
    return Session(project);
}

Shapes shapes_of(const Session& session, Step step = Step::arrange, const Showing& showing = {}) {
    return overlay(session, {{{"tide"}, Rect<Wall>::at({100, -700}, {300, 400})}}, step, showing,
                   kScale);
}

Ink ink_of(const Path& path) {
    return path.stroke.value().paint.ink;
}

}  // namespace

TEST_CASE("Nothing selected and nothing going on leaves the drawing alone") {
    CHECK(shapes_of(session()).empty());
}

TEST_CASE("A selected piece has four brackets a little outside it") {
    Session it = session();
    it.selection.set(wall::PieceId{"kelp"});
    const auto paths = test::shapes_in<Path>(shapes_of(it));
    REQUIRE(paths.size() == 4);
    const Rect<Wall> around = bounds_of(paths);
    CHECK(around.left() < kPlace.left());
    CHECK(around.left() > kPlace.left() - 2 / kScale);
    CHECK(around.top() > kPlace.top());
    for (const Path& path : paths)
        CHECK(ink_of(path) == Ink::accent);
}

TEST_CASE("A waiting piece has its brackets where it stands") {
    Session it = session();
    it.selection.set(wall::PieceId{"tide"});
    CHECK(bounds_of(test::shapes_in<Path>(shapes_of(it))).bottom() < -700);
}

TEST_CASE("A hung piece has quiet brackets and the word for it") {
    Session it = session();
    it.selection.set(wall::PieceId{"moss"});
    const Shapes shapes = shapes_of(it);
    CHECK(ink_of(test::shapes_in<Path>(shapes).at(0)) == Ink::hidden);
    REQUIRE(test::shapes_in<Text>(shapes).size() == 1);
    CHECK(test::shapes_in<Text>(shapes)[0].text == "hangs");
}

TEST_CASE("The selected sofa has eight handles of one paper size in the room step only") {
    Session it = session();
    it.selection.set(wall::FurnitureId{"sofa"});
    CHECK(test::shapes_in<Path>(shapes_of(it)).size() == 4);
    std::size_t handles = 0;
    for (const Path& path : test::shapes_in<Path>(shapes_of(it, Step::room)))
        if (path.fill && path.steps.size() == 3) {
            ++handles;
            CHECK(bounds_of({path}).width() * kScale == Approx(1.8));
        }
    CHECK(handles == 8);
}

TEST_CASE("The room step shows the outline's corners") {
    CHECK(test::shapes_in<Path>(shapes_of(session(), Step::room)).size() == 4);
}

TEST_CASE("A finding's place has a dashed frame with some air") {
    Session it = session();
    it.pointed_out = kPlace;
    const auto paths = test::shapes_in<Path>(shapes_of(it));
    REQUIRE(paths.size() == 1);
    CHECK(paths[0].stroke->type == LineType::dashed);
    CHECK(bounds_of(paths).left() < kPlace.left());
    CHECK(ink_of(paths[0]) == Ink::mind);
}

TEST_CASE("The frame around a stop has the ink of a stop") {
    wall::Project project = scenes::wall_of(3600, 2400);
    scenes::add_piece(project, "out", {3500, 1300}, {400, 300});
    Session it(project);
    REQUIRE(it.assessment().findings.at(0).severity == wall::Severity::stop);
    it.pointed_out = it.assessment().findings[0].place;
    CHECK(ink_of(test::shapes_in<Path>(shapes_of(it)).at(0)) == Ink::stop);
}

TEST_CASE("What is hovered has a thin outline unless it is selected") {
    Session it = session();
    Showing showing;
    showing.hovered = Thing{wall::PieceId{"kelp"}};
    CHECK(test::shapes_in<Path>(shapes_of(it, Step::arrange, showing)).size() == 1);
    it.selection.set(wall::PieceId{"kelp"});
    CHECK(test::shapes_in<Path>(shapes_of(it, Step::arrange, showing)).size() == 4);
}

TEST_CASE("A guide is a dashed line with its words, a gap a dimension with them") {
    Showing showing;
    showing.guides = {{{{1000, 1600}, {1760, 1600}}, "top edges", SnapKind::edges}};
    Shapes shapes = shapes_of(session(), Step::arrange, showing);
    REQUIRE(test::shapes_in<Path>(shapes).size() == 1);
    CHECK(test::shapes_in<Path>(shapes)[0].stroke->type == LineType::dashed);
    CHECK(test::shapes_in<Text>(shapes).at(0).text == "top edges");
    CHECK(test::shapes_in<Text>(shapes)[0].at.x > 1760);

    showing.guides = {{{{1400, 1450}, {1460, 1450}}, "gap 60", SnapKind::gap}};
    shapes = shapes_of(session(), Step::arrange, showing);
    CHECK(test::shapes_in<Path>(shapes).size() == 3);
    CHECK(test::shapes_in<Path>(shapes)[0].stroke->type == LineType::continuous);
    CHECK(test::shapes_in<Text>(shapes).at(0).text == "gap 60");
}

TEST_CASE("A live measure is a line with two strokes and its figure on a plate beside it") {
    Showing showing;
    showing.measures = {{{{1200, 800}, {1200, 1300}}, "500"}};
    const Shapes shapes = shapes_of(session(), Step::arrange, showing);
    CHECK(test::shapes_in<Path>(shapes).size() == 3);
    const Text figure = test::shapes_in<Text>(shapes).at(0);
    CHECK(figure.text == "500");
    CHECK(figure.plate.has_value());
    CHECK(figure.at.x > 1200);
    CHECK(figure.at.y == Approx(1050).margin(30));
}

TEST_CASE("Of two figures in one place the second goes to the other side of its line") {
    Showing showing;
    showing.guides = {{{{1240, 1050}, {1300, 1050}}, "gap 60", SnapKind::gap}};
    showing.measures = {{{{1200, 800}, {1200, 1300}}, "500"}};
    const auto figures = test::shapes_in<Text>(shapes_of(session(), Step::arrange, showing));
    REQUIRE(figures.size() == 2);
    CHECK(figures[1].at.x < 1200);
    CHECK(figures[1].align == draw::Align::right);
}

TEST_CASE("A band is see-through, and a piece held off the wall a dashed outline") {
    Showing showing;
    showing.band = Rect<Wall>{{100, 100}, {500, 500}};
    const auto band = test::shapes_in<Path>(shapes_of(session(), Step::arrange, showing));
    REQUIRE(band.size() == 1);
    CHECK(band[0].fill->alpha < 0.3);
    showing.band.reset();
    showing.off_wall = {kPlace};
    const auto held = test::shapes_in<Path>(shapes_of(session(), Step::arrange, showing));
    REQUIRE(held.size() == 1);
    CHECK(held[0].stroke->type == LineType::dashed);
    CHECK(bounds_of(held) == kPlace);
}
