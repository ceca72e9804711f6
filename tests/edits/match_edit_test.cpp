#include "edits/match_edit.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::wall;

namespace {

const PieceId kKelp{"kelp"};
const PieceId kDune{"dune"};
const PieceId kTide{"tide"};

/// Ebb is in Kelp behind a mount with its window placed by hand, which Dune shares; Tide is empty
/// and has none; Reed lies in the drawer.
Project shared_mount() {
    Project project = scenes::wall_of(3600, 2400);
    scenes::add_piece(project, "kelp", {1000, 1300}, {300, 400});
    scenes::add_piece(project, "dune", {1360, 1300}, {500, 400});
    scenes::add_waiting(project, "tide", {400, 300});
    for (const char* id : {"ebb", "reed"}) {
        Print print;
        print.id = {id};
        print.size = {150, 200};
        project.prints.push_back(print);
    }
    Mount mount;
    mount.id = {"cream"};
    mount.overlap = 3;
    mount.by_hand = FromCorner{20, 30};
    project.mounts.push_back(mount);
    project.pieces[0].print = PrintId{"ebb"};
    project.pieces[0].mount = project.pieces[1].mount = mount.id;
    return project;
}

Mount wide() {
    Mount mount;
    mount.border_least = 40;
    return mount;
}

Project put(const std::vector<edits::PrintWithMount>& wanted) {
    const auto done = edits::put_prints_with_mounts(shared_mount(), wanted);
    REQUIRE(done);
    return *done;
}

const Mount* mount_in(const Project& project, const PieceId& piece) {
    const Piece* found = find(project, piece);
    return found->mount ? find(project, *found->mount) : nullptr;
}

}  // namespace

TEST_CASE("A frame without a mount gets the one its new print wants, named for the piece") {
    const Project project = put({{kTide, PrintId{"reed"}, wide()}});
    REQUIRE(mount_in(project, kTide) != nullptr);
    CHECK(mount_in(project, kTide)->border_least == 40);
    CHECK(mount_in(project, kTide)->id == MountId{"tide"});
    CHECK(find(project, kTide)->print == PrintId{"reed"});
}

TEST_CASE("A mount that is there stays as it is, but for a window that was placed for another") {
    const Project project = put({{kKelp, PrintId{"reed"}, wide()}});
    CHECK(mount_in(project, kKelp)->overlap == 3);
    CHECK_FALSE(mount_in(project, kKelp)->by_hand);
    CHECK(mount_in(project, kDune)->by_hand);
}

TEST_CASE("A window placed by hand stays where its own print is put in again") {
    const Project project = put({{kKelp, PrintId{"ebb"}, wide()}});
    CHECK(project == shared_mount());
}

TEST_CASE("A print that fills its frame needs no mount, so the one there is taken out") {
    const Project project = put({{kKelp, PrintId{"ebb"}, std::nullopt}});
    CHECK(mount_in(project, kKelp) == nullptr);
    CHECK(mount_in(project, kDune) != nullptr);
}

TEST_CASE("A frame that is emptied keeps its mount") {
    const Project project = put({{kKelp, std::nullopt, std::nullopt}});
    CHECK_FALSE(find(project, kKelp)->print);
    CHECK(mount_in(project, kKelp) == mount_in(project, kDune));
    CHECK(mount_in(project, kKelp) != nullptr);
}

TEST_CASE("Nothing is changed where one of several prints cannot be put in") {
    const auto done = edits::put_prints_with_mounts(
        shared_mount(),
        std::vector<edits::PrintWithMount>{{kTide, PrintId{"reed"}, wide()},
                                           {PieceId{"no-such"}, PrintId{"ebb"}, wide()}});
    REQUIRE_FALSE(done);
    CHECK(done.error().where == "pieces/no-such");
}
