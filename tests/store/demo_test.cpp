// The walls in assets/demo, which people meet first.
#include "schema_check.h"
#include "store/catalogue.h"
#include "store/json_project.h"
#include "support/command.h"
#include "wall/validity.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <set>

namespace wallwright::store {

namespace fs = std::filesystem;
using wall::PieceState;

namespace {

const fs::path kDemo = WW_SOURCE "/assets/demo";

wall::Project demo(const std::string& name) {
    auto project = read_project(test::read_whole(kDemo / name), name);
    INFO((project ? "" : to_text(project.error())));
    REQUIRE(project);
    return *project;
}

std::vector<std::string> demo_names() {
    std::vector<std::string> names;
    for (const auto& entry : fs::directory_iterator(kDemo))
        if (entry.path().extension() == ".json")
            names.push_back(entry.path().filename());
    return names;
}

std::ptrdiff_t count(const wall::Project& project, PieceState state) {
    return std::count_if(project.pieces.begin(), project.pieces.end(),
                         [state](const wall::Piece& piece) { return piece.state == state; });
}

}  // namespace

TEST_CASE("Every demo wall is sound, valid by the schema, and written as the program writes it") {
    CHECK(demo_names().size() == 5);
    for (const std::string& name : demo_names()) {
        INFO(name);
        const std::string text = test::read_whole(kDemo / name);
        CHECK(breach(nlohmann::json::parse(text)).empty());
        CHECK(write_project(demo(name)) == text);
    }
}

TEST_CASE("Every print of a demo wall has its picture beside it, and no picture is left over") {
    std::set<fs::path> used;
    for (const std::string& name : demo_names())
        for (const wall::Print& print : demo(name).prints) {
            INFO(name << " " << print.id.text);
            CHECK(fs::is_regular_file(kDemo / print.picture));
            used.insert(kDemo / print.picture);
        }
    std::set<fs::path> drawn;
    for (const auto& entry : fs::directory_iterator(kDemo / "pictures"))
        if (entry.path().extension() == ".png")
            drawn.insert(entry.path());
    CHECK(used == drawn);
}

TEST_CASE("The pictures of the demo walls are small enough to keep beside the source") {
    std::uintmax_t total = 0;
    for (const auto& entry : fs::directory_iterator(kDemo / "pictures"))
        if (entry.path().extension() == ".png") {
            INFO(entry.path());
            CHECK(entry.file_size() <= 25 * 1024);
            total += entry.file_size();
        }
    CHECK(total < 400 * 1024);
}

TEST_CASE("Every material and fixing that a demo wall names is in the catalogue") {
    for (const std::string& name : demo_names()) {
        INFO(name);
        const wall::Project project = demo(name);
        CHECK(unknown_names(project, catalogue_for(project.own)).empty());
    }
}

TEST_CASE("The attic has five pieces on the wall and four to come, the cafe sixty in all") {
    const wall::Project attic = demo("attic.json");
    CHECK(count(attic, PieceState::hung) == 5);
    CHECK(count(attic, PieceState::planned) + count(attic, PieceState::waiting) == 4);
    CHECK(demo("cafe.json").pieces.size() == 60);
    CHECK(demo("harbour_inches.json").unit == units::LengthUnit::inch);
}

TEST_CASE("The stair and the attic have walls that are no rectangles") {
    CHECK(demo("stair.json").room.outline.corners.size() > 20);
    CHECK(demo("attic.json").room.outline.corners.size() == 5);
}

}  // namespace wallwright::store
