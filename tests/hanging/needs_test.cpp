#include "hanging/needs.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

namespace wallwright::hanging {

namespace {

wall::Project three_pieces() {
    wall::Project project = scenes::wall_of(6000, 2400);
    for (const std::string id : {"kelp", "dune", "fern"})
        scenes::add_piece(project, id, {600.0 * static_cast<double>(project.pieces.size()), 1300},
                          {400, 500})
            .weighed = wall::Kilograms{1};
    for (wall::Piece& piece : project.pieces) {
        piece.hanger.type = wall::HangerType::two_rings;
        piece.fixing = wall::FixingTypeId{"hook_large"};
    }
    return project;
}

std::vector<Need> needs_of(const wall::Project& project) {
    return needs(project, hang_all(project, scenes::small_catalogue()));
}

}  // namespace

TEST_CASE("Fixings are needed by their type, of the planned pieces alone, by title") {
    wall::Project project = three_pieces();
    project.pieces[0].fixing = wall::FixingTypeId{"screw"};
    project.pieces[2].state = wall::PieceState::hung;
    const std::vector<Need> found = needs_of(project);
    REQUIRE(found.size() == 2);
    CHECK(found[0].type.text == "hook_large");
    CHECK(found[0].title == "hook_large");
    CHECK(found[0].count == 2);
    CHECK(found[1].type.text == "screw");
    CHECK(found[1].count == 2);
}

TEST_CASE("What the stock covers is told beside all that there are in the drawer") {
    wall::Project project = three_pieces();
    project.stock = {{{"hook_large"}, 3, {}}, {{"screw"}, 9, {}}, {{"hook_large"}, 1, {}}};
    std::vector<Need> found = needs_of(project);
    REQUIRE(found.size() == 1);
    CHECK(found[0].count == 6);
    CHECK(found[0].from_stock == 4);
    CHECK(found[0].in_drawer == 4);
    project.stock = {{{"hook_large"}, 20, {}}};
    found = needs_of(project);
    CHECK(found[0].from_stock == 6);
    CHECK(found[0].in_drawer == 20);
}

TEST_CASE("What frames that are not bought yet need is counted apart") {
    wall::Project project = three_pieces();
    project.pieces[0].wished = true;
    const std::vector<Hanging> hangings = hang_all(project, scenes::small_catalogue());
    const std::vector<Need> today = needs(project, hangings);
    const std::vector<Need> later = needs(project, hangings, Bought::not_yet);
    REQUIRE(today.size() == 1);
    REQUIRE(later.size() == 1);
    CHECK(today[0].count == 4);
    CHECK(later[0].count == 2);
}

TEST_CASE("A frame that is not bought yet takes what the others leave in the drawer") {
    wall::Project project = three_pieces();
    project.pieces[0].wished = true;
    project.pieces[0].weighed = wall::Kilograms{2};
    project.stock = {{{"hook_large"}, 5, {}}};
    const std::vector<Hanging> hangings = hang_all(project, scenes::small_catalogue());
    CHECK(needs(project, hangings)[0].from_stock == 4);
    CHECK(needs(project, hangings, Bought::not_yet)[0].from_stock == 1);
}

TEST_CASE("What is missing is bought in packs, and what is over is told") {
    wall::Project project = three_pieces();
    wall::Catalogue catalogue = scenes::small_catalogue();
    catalogue.fixings[4].pack = 4;
    catalogue.fixings[4].price = 2.5;
    project.stock = {{{"hook_large"}, 1, {}}};
    Need need = needs(project, hang_all(project, catalogue)).at(0);
    CHECK(need.pack == 4);
    CHECK(need.price == 2.5);
    CHECK(need.packs == 2);
    CHECK(need.spare == 3);
    project.stock.front() = {{"hook_large"}, 1, 5, 3.0};
    need = needs(project, hang_all(project, catalogue)).at(0);
    CHECK(need.pack == 5);
    CHECK(need.price == 3.0);
    CHECK(need.packs == 1);
    CHECK(need.spare == 0);
}

TEST_CASE("Frames that are not bought yet use up the packs of the others before any more") {
    wall::Project project = three_pieces();
    project.pieces[0].wished = true;
    wall::Catalogue catalogue = scenes::small_catalogue();
    catalogue.fixings[4].pack = 5;
    std::vector<Hanging> hangings = hang_all(project, catalogue);
    CHECK(needs(project, hangings).at(0).packs == 1);
    CHECK(needs(project, hangings).at(0).spare == 1);
    CHECK(needs(project, hangings, Bought::not_yet).at(0).packs == 1);
    CHECK(needs(project, hangings, Bought::not_yet).at(0).spare == 4);
    catalogue.fixings[4].pack = 6;
    hangings = hang_all(project, catalogue);
    CHECK(needs(project, hangings, Bought::not_yet).at(0).packs == 0);
    CHECK(needs(project, hangings, Bought::not_yet).at(0).spare == 0);
}

TEST_CASE("A stage after the first that is still open is for later, as a frame not bought is") {
    wall::Project project = three_pieces();
    project.pieces[0].stage = 1;
    project.pieces[1].stage = 2;
    project.pieces[2].wished = true;
    wall::Catalogue catalogue = scenes::small_catalogue();
    catalogue.fixings[4].pack = 4;
    project.stock = {{{"hook_large"}, 1, {}}};
    std::vector<Hanging> hangings = hang_all(project, catalogue);
    const Need now = needs(project, hangings).at(0);
    CHECK(now.count == 2);
    CHECK(now.from_stock == 1);
    CHECK(now.packs == 1);
    CHECK(now.spare == 3);
    CHECK_FALSE(now.after_others);
    const Need later = needs(project, hangings, Bought::not_yet).at(0);
    CHECK(later.count == 4);
    CHECK(later.from_stock == 0);
    CHECK(later.at_hand == 3);
    CHECK(later.after_others);
    CHECK(later.packs == 1);
    CHECK(later.spare == 3);
    // Once the first stage hangs, the second is next.
    project.pieces[0].state = wall::PieceState::hung;
    hangings = hang_all(project, catalogue);
    CHECK(needs(project, hangings).at(0).count == 2);
    CHECK(needs(project, hangings, Bought::not_yet).at(0).count == 2);
}

TEST_CASE("Where the search for the cheapest fixings was cut short it is said") {
    const wall::Project project = three_pieces();
    std::vector<Hanging> hangings = hang_all(project, scenes::small_catalogue());
    CHECK_FALSE(search_remark(hangings));
    hangings[1].best_known = false;
    CHECK(search_remark(hangings) ==
          "Cheaper fixings may be possible: the search for the cheapest was cut short.");
}

TEST_CASE("A wall with nothing planned needs nothing") {
    CHECK(needs_of(scenes::wall_of(3000, 2400)).empty());
}

}  // namespace wallwright::hanging
