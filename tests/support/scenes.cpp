#include "support/scenes.h"

#include "base/contract.h"

#include <cctype>

namespace wallwright::scenes {

using geometry::Point;
using geometry::Polygon;
using geometry::Rect;
using geometry::Size;
using geometry::Wall;
using wall::FixingKind;

namespace {

std::string with_capital(std::string text) {
    if (!text.empty())
        text.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
    return text;
}

template <class Thing, class Type>
Thing& add_thing(std::vector<Thing>& things, Type type, Rect<Wall> place) {
    std::string id(wall::name_of(type));
    int count = 1;
    for (const Thing& thing : things)
        count += thing.type == type ? 1 : 0;
    if (count > 1)
        id += std::to_string(count);
    Thing thing;
    thing.id = {id};
    thing.type = type;
    thing.place = place;
    things.push_back(thing);
    return things.back();
}

wall::Material material(const std::string& id, double low, double high) {
    return {{id}, id, low, high, "for tests", {}};
}

wall::FixingType fixing(const std::string& id, FixingKind kind, double rated_kg, Size footprint) {
    return {{id}, id, kind, {rated_kg}, footprint, "for tests", {}};
}

}  // namespace

wall::Project wall_of(double width, double height) {
    return attic_of(width, height, height);
}

wall::Project attic_of(double width, double left, double right) {
    wall::Project project;
    project.title = "Test wall";
    project.room.outline = Polygon{{{0, 0}, {width, 0}, {width, right}, {0, left}}};
    return project;
}

wall::Piece& add_waiting(wall::Project& project, const std::string& id, Size outside) {
    wall::Frame frame;
    frame.id = {id};
    frame.title = with_capital(id);
    frame.outside = outside;
    project.frames.push_back(frame);

    wall::Piece piece;
    piece.id = {id};
    piece.title = with_capital(id);
    piece.frame = frame.id;
    project.pieces.push_back(piece);
    return project.pieces.back();
}

wall::Piece& add_piece(wall::Project& project, const std::string& id, Point<Wall> at,
                       Size outside) {
    wall::Piece& piece = add_waiting(project, id, outside);
    piece.state = wall::PieceState::planned;
    piece.at = at;
    return piece;
}

wall::Piece& add_hung(wall::Project& project, const std::string& id, Point<Wall> at, Size outside) {
    wall::Piece& piece = add_piece(project, id, at, outside);
    piece.state = wall::PieceState::hung;
    return piece;
}

wall::Frame& frame_named(wall::Project& project, const std::string& id) {
    for (wall::Frame& frame : project.frames)
        if (frame.id.text == id)
            return frame;
    WW_EXPECT(false, "a test asks only for frames it has added");
    return project.frames.front();
}

wall::Furniture& add_furniture(wall::Project& project, wall::FurnitureType type, Rect<Wall> place) {
    return add_thing(project.room.furniture, type, place);
}

wall::Fixture& add_fixture(wall::Project& project, wall::FixtureType type, Rect<Wall> place) {
    return add_thing(project.room.fixtures, type, place);
}

wall::Catalogue small_catalogue() {
    wall::Catalogue catalogue;
    catalogue.materials = {
        material("glass", 2500, 2500),     material("acrylic", 1150, 1190),
        material("pine", 400, 560),        material("mdf_thin", 750, 900),
        material("mount_board", 610, 820),
    };
    catalogue.fixings = {
        fixing("strip_small", FixingKind::strip_pair, 0.4, {16, 46}),
        fixing("strip_medium", FixingKind::strip_pair, 1.3, {16, 70}),
        fixing("strip_large", FixingKind::strip_pair, 1.8, {19, 92}),
        fixing("hook_small", FixingKind::nail_hook, 2.5, {10, 25}),
        fixing("hook_large", FixingKind::nail_hook, 5, {13, 38}),
        fixing("screw", FixingKind::screw, 15, {8, 8}),
    };
    return catalogue;
}

}  // namespace wallwright::scenes
