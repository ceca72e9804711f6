#include "wall/project.h"

#include "wall/this_side.h"
#include "wall/validity.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <set>

using namespace wallwright;
using namespace wallwright::wall;

namespace {

Project small_project() {
    Project project;
    project.room.outline = {{{0, 0}, {3600, 0}, {3600, 2400}, {0, 2400}}};
    Frame frame;
    frame.id = {"oak"};
    frame.outside = {300, 400};
    project.frames.push_back(frame);
    Piece piece;
    piece.id = {"kelp"};
    piece.frame = {"oak"};
    piece.state = PieceState::planned;
    piece.at = Point<Wall>{1000, 1300};
    project.pieces.push_back(piece);
    return project;
}

std::string only_fault(const Project& project) {
    const auto all = faults(project);
    REQUIRE(all.size() == 1);
    return to_text(all.front());
}

}  // namespace

TEST_CASE("A piece takes the size of its frame, and swaps it when turned") {
    Project project = small_project();
    CHECK(outside_size(project, project.pieces[0]) == Size{300, 400});
    project.pieces[0].turned = true;
    CHECK(outside_size(project, project.pieces[0]) == Size{400, 300});
    CHECK(place_of(project, project.pieces[0]) == Rect<Wall>::at({1000, 1300}, {400, 300}));
}

TEST_CASE("Furniture and fixtures are found by their ids") {
    Project project = small_project();
    project.room.furniture.push_back({{"sofa"}, FurnitureType::sofa, "", {}, {}, {}});
    project.room.fixtures.push_back({{"door"}, FixtureType::door, "", {}, {}});
    CHECK(find(project, FurnitureId{"sofa"}) == &project.room.furniture[0]);
    CHECK(find(project, FixtureId{"door"}) == &project.room.fixtures[0]);
    CHECK(find(project, FurnitureId{"door"}) == nullptr);
    CHECK(find(project, FixtureId{"sofa"}) == nullptr);
}

TEST_CASE("Sheets of card are found by their ids") {
    Project project = small_project();
    project.card.resize(2);
    project.card[0].id = {"jumbo"};
    project.card[1].id = {"rest"};
    CHECK(find(project, CardSheetId{"rest"}) == &project.card[1]);
    CHECK(find(project, CardSheetId{"oak"}) == nullptr);
}

TEST_CASE("A material suits what it is sold for, and anything where nobody said") {
    Material board;
    CHECK(suits(board, MaterialUse::glazing));
    board.uses = {MaterialUse::moulding, MaterialUse::backing};
    CHECK(suits(board, MaterialUse::backing));
    CHECK_FALSE(suits(board, MaterialUse::glazing));
}

TEST_CASE("A waiting piece has no place on the wall, whatever it remembers") {
    Project project = small_project();
    project.pieces[0].state = PieceState::waiting;
    CHECK_FALSE(place_of(project, project.pieces[0]).has_value());
    CHECK(placed_pieces(project).empty());
}

TEST_CASE("What hangs or is pinned is fixed") {
    Project project = small_project();
    CHECK_FALSE(placed_pieces(project)[0].fixed);
    project.pieces[0].pinned = true;
    CHECK(placed_pieces(project)[0].fixed);
    project.pieces[0].pinned = false;
    project.pieces[0].state = PieceState::hung;
    CHECK(placed_pieces(project)[0].fixed);
}

TEST_CASE("The person's own records replace those of the same name and join the others") {
    Catalogue general;
    general.fixings = {{{"strip_small"}, "small", FixingKind::strip_pair, {0.4}, {16, 46}, "", {}}};
    Catalogue own;
    own.fixings = {{{"strip_small"}, "mine", FixingKind::strip_pair, {0.5}, {16, 46}, "", {}},
                   {{"strip_huge"}, "huge", FixingKind::strip_pair, {3}, {30, 100}, "", {}}};
    const Catalogue both = with_own(general, own);
    REQUIRE(both.fixings.size() == 2);
    CHECK(find(both, FixingTypeId{"strip_small"})->rated == Kilograms{0.5});
    CHECK(find(both, FixingTypeId{"strip_huge"}) != nullptr);
    CHECK(find(both, FixingTypeId{"nail"}) == nullptr);
}

TEST_CASE("A sound project has no faults") {
    CHECK(faults(small_project()).empty());
}

TEST_CASE("Each broken law of a project is named with its place and its mending") {
    Project project = small_project();
    SECTION("a frame without width") {
        project.frames[0].outside.width = 0;
        CHECK(
            to_text(faults(project).front()) ==
            "frames/oak/width_mm: 0 mm is no size; give a length of more than 0 and at most 100 m");
    }
    SECTION("a size that is not a number") {
        project.frames[0].outside.height = std::nan("");
        CHECK_FALSE(faults(project).empty());
    }
    SECTION("a frame that is not there") {
        project.pieces[0].frame = {"ash"};
        CHECK(only_fault(project) ==
              "pieces/kelp/frame: there is no \"ash\" in the project; add it, or name one that is "
              "there");
    }
    SECTION("a piece on the wall without a place") {
        project.pieces[0].at.reset();
        CHECK(only_fault(project).starts_with(
            "pieces/kelp/x_mm: a piece that is planned needs a place"));
    }
    SECTION("an id used twice") {
        project.frames.push_back(project.frames[0]);
        CHECK(only_fault(project) ==
              "frames/oak: the id is used twice; give one of them another id");
    }
    SECTION("an outline that crosses itself") {
        project.room.outline = {{{0, 0}, {100, 100}, {100, 0}, {0, 100}}};
        CHECK(only_fault(project) ==
              "room/outline_mm: side 1 meets side 3; give the corners in order around the wall");
    }
    SECTION("an outline that repeats its first corner") {
        project.room.outline.corners.push_back({0, 0});
        CHECK(only_fault(project) ==
              "room/outline_mm: corners 5 and 1 are in one place; leave one of them out");
    }
    SECTION("a moulding that leaves no opening") {
        project.frames[0].moulding_width = 150;
        CHECK(only_fault(project).starts_with(
            "frames/oak/moulding_width_mm: two mouldings of 150 mm leave nothing"));
    }
    SECTION("a style out of range") {
        project.style.strip_margin = 0.5;
        CHECK(only_fault(project) ==
              "style/strip_margin: 0.5 is out of range; give rated load of the strips over the "
              "high weight of the piece "
              "as a number from 1 to 10");
    }
}

TEST_CASE(
    "Every style field is written once, names its unit or is a ratio, and says where its default "
    "comes from") {
    const HangingStyle defaults;
    std::set<std::string_view> keys;
    for (const StyleField& field : style_fields()) {
        CHECK(keys.insert(field.key).second);
        CHECK_FALSE(field.source.empty());
        CHECK_FALSE(field.meaning.empty());
        CHECK(defaults.*field.value >= field.least);
        CHECK(defaults.*field.value <= field.most);
    }
    CHECK(keys.size() * sizeof(double) + sizeof(UnknownKeys) == sizeof(HangingStyle));
}

TEST_CASE("Every enumeration reads the names it writes") {
    for (const auto type : {FurnitureType::sofa, FurnitureType::cot, FurnitureType::other})
        CHECK(with_name<FurnitureType>(name_of(type)) == type);
    CHECK(with_name<FixtureType>("switch") == FixtureType::light_switch);
    CHECK_FALSE(with_name<Surface>("velvet").has_value());
}

TEST_CASE("Colours are read from and written as #rrggbb") {
    CHECK(parse_colour("#0F6a73") == Colour{0x0F, 0x6A, 0x73});
    CHECK(to_text(Colour{0x0F, 0x6A, 0x73}) == "#0f6a73");
    for (const std::string text : {"", "0f6a73", "#0f6a7", "#0f6a7g", "#0f6a733", "#+f6a73"})
        CHECK_FALSE(parse_colour(text).has_value());
}

TEST_CASE("A material or fixing that no catalogue has is named with those that would do") {
    Project project = small_project();
    Catalogue catalogue;
    catalogue.materials = {{{"pine"}, "pine", 400, 500, "", {}},
                           {{"glass"}, "glass", 2500, 2500, "", {}},
                           {{"mdf_thin"}, "thin MDF", 800, 900, "", {}}};
    catalogue.fixings = {{{"hook_1"}, "hook", FixingKind::nail_hook, {5}, {12, 30}, "", {}}};
    CHECK(unknown_names(project, catalogue).empty());
    project.frames[0].moulding = {"pinee"};
    project.pieces[0].fixing = FixingTypeId{"hok"};
    const auto unknown = unknown_names(project, catalogue);
    REQUIRE(unknown.size() == 2);
    CHECK(to_text(unknown[0]) ==
          "frames/oak/moulding: there is no material \"pinee\" in the catalogue; use one of pine, "
          "glass, mdf_thin, or add it under own");
    CHECK(to_text(unknown[1]) ==
          "pieces/kelp/fixing: there is no fixing \"hok\" in the catalogue; use one of hook_1, or "
          "add it under own");
    project.frames[0].moulding = {"pine"};
    project.pieces[0].fixing.reset();
    project.frames[0].glazing = {{"rock"}, 0};
    CHECK(unknown_names(project, catalogue).empty());
}

TEST_CASE("Keys that are not understood are told by their place") {
    Project project = small_project();
    CHECK(unknown_paths(project).empty());
    project.unknown["mood"] = "1";
    project.style.unknown["gap"] = "45";
    project.pieces[0].hanger.unknown["drop"] = "20";
    project.wishes.push_back({WishKind::low, {"kelp"}, {}, {}, {{"by", "10"}}});
    project.target_unknown["part"] = "1";
    project.weights.push_back({"even_gaps", 2, {{"why", "1"}}});
    CHECK(unknown_paths(project) ==
          std::vector<std::string>{"mood", "style/gap", "pieces/kelp/hanger/drop", "wishes/#1/by",
                                   "target/part", "weights/even_gaps/why"});
}

TEST_CASE("What a wall is made of is what was said, or what its bare surface shows") {
    Room room;
    CHECK(core_of(room) == Core::unknown);
    room.surface = Surface::brick;
    CHECK(core_of(room) == Core::masonry);
    room.surface = Surface::concrete;
    CHECK(core_of(room) == Core::concrete);
    room.core = Core::lath;
    CHECK(core_of(room) == Core::lath);
    CHECK(is_hollow(Core::lath));
    CHECK(is_hollow(Core::plasterboard));
    CHECK_FALSE(is_hollow(Core::masonry));
    CHECK_FALSE(is_hollow(Core::unknown));
}

TEST_CASE("The place that marks are measured from is that of the datum's piece, and of no other") {
    Project project = small_project();
    project.datum.piece = project.pieces[0].id;
    CHECK_FALSE(datum_place(project));
    project.datum.height = DatumHeight::piece;
    CHECK(datum_place(project) == place_of(project, project.pieces[0]));
    project.pieces[0].state = PieceState::waiting;
    CHECK_FALSE(datum_place(project));
}

TEST_CASE("Fixtures of the room behind are not on this side of the wall") {
    Room room;
    room.fixtures = {{{"door"}, FixtureType::door, "", {}},
                     {{"heat"}, FixtureType::radiator, "", {}},
                     {{"heat behind"}, FixtureType::radiator, "", {}, true}};
    CHECK(fixtures_here(room) == std::vector<const Fixture*>{&room.fixtures[0], &room.fixtures[1]});
    CHECK(radiators_here(room) == std::vector<const Fixture*>{&room.fixtures[1]});
}
