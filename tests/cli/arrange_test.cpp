// What arrange and grow write, beside what they print.
#include "support/command.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <map>

using namespace wallwright::test;
using nlohmann::json;

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
                            scratch.file("out.json"), scratch.file("a/b")))["layouts"];
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
    CHECK(read_whole(scratch.file("out.json")) == read_whole(scratch.file("a/b/layout-1.json")));
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
