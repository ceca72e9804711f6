// What arrange and grow write, beside what they print.
#include "arrange/measure.h"
#include "support/command.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <map>

using namespace wallwright::test;
using nlohmann::json;
namespace fs = std::filesystem;

namespace {

const std::string kDemo = WW_SOURCE "/assets/demo/";

json printed(const std::string& words) {
    const Ran ran = run(fmt::format("{} {}", WW_PROGRAM, words));
    INFO(ran.err);
    REQUIRE(ran.status <= 1);
    return json::parse(ran.out);
}

/// Piece by piece: state and place.
std::map<std::string, json> pieces_of(const std::string& file) {
    std::map<std::string, json> pieces;
    const json list = printed(fmt::format("list {} --json", file));
    for (const json& piece : list["pieces"])
        pieces[piece["id"]] = piece;
    return pieces;
}

void check_pictures_there(const fs::path& file) {
    const json project = json::parse(read_whole(file.string()));
    std::size_t pictures = 0;
    for (const json& print : project["prints"])
        if (print.contains("picture")) {
            INFO(file << ": " << print["picture"]);
            CHECK(fs::exists(file.parent_path() / print["picture"].get<std::string>()));
            ++pictures;
        }
    CHECK(pictures > 0);
}

void check_hung_stay(const std::string& before, const std::string& after) {
    const auto now = pieces_of(after);
    for (const auto& [id, piece] : pieces_of(before))
        if (piece["state"] == "hung") {
            INFO(id);
            CHECK(now.at(id) == piece);
        }
}

}  // namespace

TEST_CASE("Each file of --all has the layout of its number, and the best is what -o gets") {
    const ScratchFolder scratch;
    const std::string wall = kDemo + "stair.json";
    const json layouts =
        printed(fmt::format("arrange {} -o {} --all {} --rounds 2 --json", wall,
                            scratch.file("a/b/out.json"), scratch.file("a/b")))["layouts"];
    REQUIRE(layouts.size() > 1);
    for (const json& layout : layouts) {
        const std::string stem =
            scratch.file(fmt::format("a/b/layout-{}", layout["number"].get<int>()));
        const auto pieces = pieces_of(stem + ".json");
        for (const json& place : layout["pieces"]) {
            const json& piece = pieces.at(place["id"]);
            CHECK(piece["x_mm"].get<double>() == Approx(place["x_mm"].get<double>()).margin(0.006));
            CHECK(piece["y_mm"].get<double>() == Approx(place["y_mm"].get<double>()).margin(0.006));
        }
        check_hung_stay(wall, stem + ".json");
        CHECK(read_whole(stem + ".png").substr(1, 3) == "PNG");
    }
    CHECK(read_whole(scratch.file("a/b/out.json")) ==
          read_whole(scratch.file("a/b/layout-1.json")));
}

TEST_CASE("The schema names every measure that may stand under weights") {
    const json schema = json::parse(read_whole(WW_SOURCE "/assets/schema/project.schema.json"));
    std::string names;
    for (const auto& measure : wallwright::arrange::all_measures())
        names += fmt::format("{}{}", names.empty() ? "" : ", ", measure.name);
    const std::string said = schema["properties"]["weights"]["description"];
    CHECK(said.find(fmt::format("There are {}.", names)) != std::string::npos);
}

TEST_CASE("Each file of --stages has the pieces of the stages up to its own") {
    const ScratchFolder scratch;
    const std::string wall = kDemo + "attic.json";
    const json stages =
        printed(fmt::format("grow {} -o {} --toward lamp --stages {} --rounds 2 --json", wall,
                            scratch.file("out.json"), scratch.file("stages")))["stages"];
    REQUIRE(stages.size() == 2);
    const std::string first = stages[0]["adds"][0];
    const std::string second = stages[1]["adds"][0];
    const auto then = pieces_of(scratch.file("stages/stage-1.json"));
    CHECK(then.at(first)["state"] == "planned");
    CHECK(then.at(second)["state"] == "waiting");
    const auto at_last = pieces_of(scratch.file("stages/stage-2.json"));
    CHECK(at_last.at(first) == then.at(first));
    CHECK(at_last.at(second)["state"] == "planned");
    check_hung_stay(wall, scratch.file("out.json"));
}

TEST_CASE("The pictures are found from wherever a file goes") {
    const ScratchFolder scratch;
    const std::string wall = kDemo + "attic.json";
    fs::create_directories(scratch.file("out"));
    const auto go = [&](const std::string& words) {
        const Ran ran = run(fmt::format("cd {} && {} {}", scratch.path(), WW_PROGRAM, words));
        INFO(words << ": " << ran.err);
        REQUIRE(ran.status <= 1);
    };
    go(fmt::format("arrange {} -o arranged.json --all layouts --layouts 1 --rounds 1", wall));
    go(fmt::format("grow {} -o out/grown.json --toward lamp --stages stages --rounds 1", wall));
    go("suggest out/grown.json -o wished.json");
    go("even arranged.json -o out/evened.json");
    for (const char* file : {"arranged.json", "layouts/layout-1.json", "out/grown.json",
                             "stages/stage-1.json", "wished.json", "out/evened.json"})
        check_pictures_there(scratch.file(file));
}

TEST_CASE("Growing again plans all stages anew, but a pinned piece stays") {
    const ScratchFolder scratch;
    const auto stages_of = [](const std::string& from, const std::string& to) {
        return printed(
            fmt::format("grow {} -o {} --toward lamp --rounds 2 --json", from, to))["stages"];
    };
    const std::string first = scratch.file("first.json");
    const std::string again = scratch.file("again.json");
    const json stages = stages_of(kDemo + "attic.json", first);
    REQUIRE(stages.size() == 2);
    CHECK(stages_of(first, again) == stages);

    const std::string pinned = stages[0]["adds"][0];
    json project = json::parse(read_whole(first));
    for (json& piece : project["pieces"])
        if (piece["id"] == pinned)
            piece["pinned"] = true;
    write_whole(first, project.dump());
    const json rest = stages_of(first, again);
    REQUIRE(rest.size() == 1);
    CHECK(rest[0]["number"] == 1);
    CHECK(rest[0]["adds"] == stages[1]["adds"]);
    const json before = pieces_of(first).at(pinned);
    const json after = pieces_of(again).at(pinned);
    CHECK(before["stage"] == 1);
    CHECK(after["stage"].is_null());
    CHECK(after["x_mm"] == before["x_mm"]);
    CHECK(after["y_mm"] == before["y_mm"]);
}
