#include "edits/edit.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace wallwright;
using namespace wallwright::wall;

namespace {

Project wall_with(const std::vector<std::string>& titles) {
    Project project = edits::start({3600, 2400}, units::LengthUnit::mm).value();
    for (const std::string& title : titles) {
        Frame frame;
        frame.outside = {300, 400};
        Piece piece;
        piece.title = title;
        project = edits::add_piece(std::move(project), frame, piece).value();
    }
    return project;
}

}  // namespace

TEST_CASE("A new wall is flat, as wide and high as asked, and empty") {
    const auto project = edits::start({3600, 2400}, units::LengthUnit::cm).value();
    CHECK(geometry::bounds(project.room.outline) == Rect<Wall>{{0, 0}, {3600, 2400}});
    CHECK(project.unit == units::LengthUnit::cm);
    CHECK(project.pieces.empty());
    CHECK_FALSE(edits::start({0, 2400}, units::LengthUnit::mm).has_value());
}

TEST_CASE("An id is the title in small letters, and numbered when taken") {
    const Project project = wall_with({"Kelp, lino on cream", "Kelp, lino on cream", "…", "Åre 9"});
    CHECK(project.pieces[0].id.text == "kelp-lino-on-cream");
    CHECK(project.pieces[1].id.text == "kelp-lino-on-cream-2");
    CHECK(project.pieces[3].id.text == "Åre-9");
    CHECK(edits::id_from("!!") == "piece");
    CHECK(project.pieces[1].frame.text == project.frames[1].id.text);
}

TEST_CASE("Placing a waiting piece makes it planned") {
    const Project project = wall_with({"kelp"});
    const edits::Move moves[] = {{{"kelp"}, {1000, 1300}}};
    const auto placed = edits::place(project, moves).value();
    CHECK(placed.pieces[0].state == PieceState::planned);
    CHECK(placed.pieces[0].at == Point<Wall>{1000, 1300});
    CHECK(project.pieces[0].state == PieceState::waiting);
}

TEST_CASE("What hangs or is pinned cannot be moved, but may be put where it is") {
    Project project = wall_with({"kelp"});
    project.pieces[0].at = Point<Wall>{1000, 1300};
    project.pieces[0].state = PieceState::hung;
    const edits::Move away[] = {{{"kelp"}, {1001, 1300}}};
    const edits::Move same[] = {{{"kelp"}, {1000, 1300}}};
    CHECK(to_text(edits::place(project, away).error()) ==
          "pieces/kelp: it hangs already; call it planned to move it");
    CHECK(edits::place(project, same).value() == project);
    project.pieces[0].state = PieceState::planned;
    project.pieces[0].pinned = true;
    CHECK(to_text(edits::place(project, away).error()) ==
          "pieces/kelp: it is pinned; unpin it to move it");
}

TEST_CASE("A piece that is not there, or a place that is no number, is refused") {
    const Project project = wall_with({"kelp"});
    const edits::Move unknown[] = {{{"dune"}, {0, 0}}};
    const edits::Move nowhere[] = {{{"kelp"}, {std::nan(""), 0}}};
    CHECK(to_text(edits::place(project, unknown).error()) ==
          "pieces/dune: there is no such piece; name one that is in the project");
    CHECK_FALSE(edits::place(project, nowhere).has_value());
}

TEST_CASE("A wanted gap outside the usual bounds widens them") {
    const auto project = edits::set_gap(wall_with({}), 20).value();
    CHECK(project.style.gap == 20);
    CHECK(project.style.gap_least == 20);
    CHECK(edits::set_gap(wall_with({}), 90).value().style.gap_most == 90);
    CHECK_FALSE(edits::set_gap(wall_with({}), -5).has_value());
}

TEST_CASE("Furniture is named by its type, numbered when there are several") {
    Furniture sofa;
    sofa.type = FurnitureType::sofa;
    sofa.place = Rect<Wall>::at({700, 0}, {1900, 800});
    auto project = edits::add_furniture(wall_with({}), sofa).value();
    project = edits::add_furniture(project, sofa).value();
    CHECK(project.room.furniture[0].id.text == "sofa");
    CHECK(project.room.furniture[1].id.text == "sofa-2");
}

TEST_CASE("Each row of a table becomes a piece in a usual frame of its size") {
    const FrameRow rows[] = {
        {"Kelp",
         {300, 400},
         35,
         Kilograms{1.2},
         HangerType::sawtooth,
         PieceState::planned,
         Point<Wall>{1000, 1300}},
        {"Dune", {200, 300}, {}, {}, HangerType::strips, PieceState::waiting, {}}};
    const auto project = edits::add_frames(wall_with({}), rows).value();
    REQUIRE(project.pieces.size() == 2);
    const Piece& kelp = project.pieces[0];
    CHECK(kelp.weighed == Kilograms{1.2});
    CHECK(kelp.hanger.type == HangerType::sawtooth);
    CHECK(kelp.at == Point<Wall>{1000, 1300});
    CHECK(frame_of(project, kelp).depth == 35);
    CHECK(frame_of(project, project.pieces[1]).depth == edits::usual_frame({200, 300}).depth);
}

TEST_CASE("A row without a sound size adds nothing") {
    const FrameRow rows[] = {
        {"Kelp", {0, 400}, {}, {}, HangerType::strips, PieceState::waiting, {}}};
    CHECK_FALSE(edits::add_frames(wall_with({}), rows).has_value());
}
