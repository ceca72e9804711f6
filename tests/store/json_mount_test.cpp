// Mounts, prints and card in a project file.
#include "store/json_project.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace wallwright::store {

namespace {

using nlohmann::ordered_json;

/// What a file of the first version of the program says of mounts and prints.
constexpr std::string_view kWall = R"({
  "format": "wallwright-project",
  "version": 1,
  "room": {"outline_mm": [[0, 0], [3000, 0], [3000, 2400], [0, 2400]]},
  "frames": [{"id": "oak", "width_mm": 400, "height_mm": 500}],
  "mounts": [{"id": "cream", "overlap_mm": 5, "base_extra_mm": 6,
              "card": {"material": "mount_board", "thickness_mm": 1.4}, "colour": "#faf7f0"}],
  "prints": [{"id": "ebb", "width_mm": 240, "height_mm": 340, "grams_per_m2": 250,
              "colour": "#567a86"}],
  "pieces": [{"id": "kelp", "frame": "oak", "mount": "cream", "print": "ebb"}]
})";

ordered_json with(const std::string& pointer, const ordered_json& value) {
    ordered_json wall = ordered_json::parse(kWall);
    wall[ordered_json::json_pointer(pointer)] = value;
    return wall;
}

ordered_json only(const ordered_json& one) {
    return ordered_json::array({one});
}

wall::Project read(const ordered_json& file) {
    auto project = read_project(file.dump(), "wall.json");
    INFO((project ? "" : to_text(project.error())));
    REQUIRE(project);
    return *project;
}

ordered_json written(const wall::Project& project) {
    return ordered_json::parse(write_project(project));
}

std::string complaint(const ordered_json& file) {
    const auto project = read_project(file.dump(), "wall.json");
    return project ? "no complaint" : to_text(project.error());
}

}  // namespace

TEST_CASE("A mount, a print and a frame of before are written as they were") {
    const ordered_json wall = ordered_json::parse(kWall);
    const ordered_json again = written(read(wall));
    CHECK(again.at("mounts").dump() == wall.at("mounts").dump());
    CHECK(again.at("prints").dump() == wall.at("prints").dump());
    for (const char* key : {"card", "kept_blanks", "mount_cut_price"})
        CHECK_FALSE(again.contains(key));
    CHECK_FALSE(again.at("frames").at(0).contains("back_board_width_mm"));
    CHECK_FALSE(again.at("pieces").at(0).contains("keeps_print"));
}

TEST_CASE("What a file of before leaves out of a mount is usual") {
    const wall::Project project = read(ordered_json::parse(kWall));
    wall::Mount usual;
    usual.id = {"cream"};
    usual.base_extra = 6;
    CHECK(project.mounts.at(0) == usual);
}

TEST_CASE("Every measure of a mount is read by its key and written by it") {
    const ordered_json mount = {{"id", "cream"},
                                {"overlap_mm", 4},
                                {"overlap_most_mm", 12.5},
                                {"base_extra_mm", 0},
                                {"base_ratio", 1.25},
                                {"window_left_mm", 60},
                                {"window_top_mm", 55},
                                {"border_least_mm", 40},
                                {"card", {{"material", "mount_board"}, {"thickness_mm", 1.4}}},
                                {"colour", "#faf7f0"},
                                {"under",
                                 {{{"reveal_mm", 3},
                                   {"card", {{"material", "mount_board"}, {"thickness_mm", 2}}},
                                   {"colour", "#102030"}}}},
                                {"edge", "straight"},
                                {"floats", true},
                                {"openings", {{{"print", "ebb"}, {"left_mm", 20}, {"top_mm", 30}}}},
                                {"order", "by_hand"},
                                {"bar_mm", 18}};
    const wall::Project project = read(with("/mounts/0", mount));
    const wall::Mount& read_mount = project.mounts.at(0);
    CHECK(read_mount.overlap_most == 12.5);
    CHECK(read_mount.base_ratio == 1.25);
    CHECK(read_mount.by_hand == wall::FromCorner{60, 55});
    CHECK(read_mount.border_least == 40);
    REQUIRE(read_mount.under.size() == 1);
    CHECK(read_mount.under[0].reveal == 3);
    CHECK(read_mount.under[0].card.thickness == 2);
    CHECK(read_mount.under[0].colour == wall::Colour{0x10, 0x20, 0x30});
    CHECK(read_mount.edge == wall::WindowEdge::straight);
    CHECK(read_mount.floats);
    CHECK(read_mount.openings ==
          std::vector<wall::Opening>{{{"ebb"}, wall::FromCorner{20, 30}, {}}});
    CHECK(read_mount.order == wall::WindowOrder::by_hand);
    CHECK(read_mount.bar == 18);
    CHECK(written(project).at("mounts").at(0).dump() == mount.dump());
}

TEST_CASE("Sheets of card are read and written, a count of none too") {
    const ordered_json card = {{{"id", "jumbo"},
                                {"title", "Jumbo"},
                                {"width_mm", 1630},
                                {"height_mm", 1120},
                                {"card", {{"material", "mount_board"}, {"thickness_mm", 1.4}}},
                                {"colour", "#faf7f0"},
                                {"count", 0},
                                {"to_buy", true},
                                {"price", 18.5},
                                {"grain", "upright"},
                                {"margin_mm", 5}},
                               {{"id", "rest"},
                                {"width_mm", 420},
                                {"height_mm", 300},
                                {"card", {{"material", "mount_board"}, {"thickness_mm", 1.4}}},
                                {"colour", "#faf7f0"},
                                {"offcut", true}}};
    ordered_json wall = with("/card", card);
    wall["mount_cut_price"] = 14.25;
    const wall::Project project = read(wall);
    REQUIRE(project.card.size() == 2);
    CHECK(project.card[0].size == wall::Size{1630, 1120});
    CHECK(project.card[0].count == 0);
    CHECK(project.card[0].to_buy);
    CHECK(project.card[0].price == 18.5);
    CHECK(project.card[0].grain == wall::Grain::upright);
    CHECK(project.card[0].margin == 5);
    CHECK(project.card[1].count == 1);
    CHECK(project.card[1].offcut);
    CHECK(project.mount_cut_price == 14.25);
    CHECK(written(project).at("card").dump() == card.dump());
    CHECK(written(project).at("mount_cut_price") == 14.25);
}

TEST_CASE("Kept blanks are read and written, without what is usual") {
    const ordered_json kept = {
        {{"piece", "kelp"}, {"sheet", "rest"}, {"left_mm", 12.5}, {"top_mm", 0}},
        {{"piece", "kelp"},
         {"layer", 2},
         {"sheet", "rest"},
         {"number", 3},
         {"left_mm", 300},
         {"top_mm", 40},
         {"turned", true}}};
    ordered_json wall =
        with("/card", only({{"id", "rest"}, {"width_mm", 420}, {"height_mm", 300}}));
    wall["mounts"][0]["under"] = only(ordered_json::object());
    wall["kept_blanks"] = kept;
    const wall::Project project = read(wall);
    CHECK(project.kept_blanks ==
          std::vector<wall::KeptBlank>{{{"kelp"}, 1, {"rest"}, 1, 12.5, 0, false},
                                       {{"kelp"}, 2, {"rest"}, 3, 300, 40, true}});
    CHECK(written(project).at("kept_blanks").dump() == kept.dump());
    wall["kept_blanks"][1]["layer"] = 3;
    CHECK(complaint(wall) ==
          "wall.json: kept_blanks/#2/layer: there is no layer 3; count from 1 "
          "for the top layer to 2");
    wall["kept_blanks"][1].erase("top_mm");
    CHECK(complaint(wall) == "wall.json: kept_blanks/#2: \"top_mm\" is missing; add it");
}

TEST_CASE("A back board, the pixels of a print and a print that stays are read and written") {
    ordered_json wall = ordered_json::parse(kWall);
    wall["frames"][0]["back_board_width_mm"] = 371.5;
    wall["frames"][0]["back_board_height_mm"] = 471;
    wall["prints"][0]["pixels_wide"] = 4000;
    wall["prints"][0]["pixels_high"] = 6000;
    wall["pieces"][0]["keeps_print"] = true;
    const wall::Project project = read(wall);
    CHECK(project.frames.at(0).back_board == wall::Size{371.5, 471});
    CHECK(project.prints.at(0).pixels == wall::PixelSize{4000, 6000});
    CHECK(project.pieces.at(0).keeps_print);
    CHECK(written(project).at("frames").at(0).at("back_board_height_mm") == 471);
    CHECK(written(project).at("prints").at(0).at("pixels_wide") == 4000);
    CHECK(written(project).at("pieces").at(0).at("keeps_print") == true);
}

TEST_CASE("Half of a pair of keys is refused with the name of the other half") {
    CHECK(complaint(with("/frames/0/back_board_width_mm", 372)) ==
          "wall.json: frames/oak: \"back_board_height_mm\" is missing beside "
          "\"back_board_width_mm\"; give both, or neither");
    CHECK(complaint(with("/prints/0/pixels_high", 6000)) ==
          "wall.json: prints/ebb: \"pixels_wide\" is missing beside \"pixels_high\"; give both, or "
          "neither");
    CHECK(complaint(with("/mounts/0/window_top_mm", 60)) ==
          "wall.json: mounts/cream: \"window_left_mm\" is missing beside \"window_top_mm\"; give "
          "both, or neither");
    CHECK(complaint(with("/mounts/0/openings", only({{"print", "ebb"}, {"left_mm", 5}}))) ==
          "wall.json: mounts/cream/openings/#1: \"top_mm\" is missing beside \"left_mm\"; give "
          "both, or neither");
}

TEST_CASE("A wrong value in a mount or in card is quoted at its place") {
    CHECK(
        complaint(with("/mounts/0/overlap_most_mm", "1 cm")) ==
        "wall.json: mounts/cream/overlap_most_mm: must be a number of mm, got \"1 cm\"; write 10");
    CHECK(complaint(with("/mounts/0/edge", "round")) ==
          "wall.json: mounts/cream/edge: must be one of \"bevel\", \"straight\", got \"round\"");
    CHECK(complaint(with("/mounts/0/under", only(ordered_json::object({{"reveal_mm", true}})))) ==
          "wall.json: mounts/cream/under/#1/reveal_mm: must be a number of mm, got true");
    CHECK(complaint(with("/mounts/0/under", only(ordered_json::object({{"reveal_mm", 0}})))) ==
          "wall.json: mounts/cream/under/#1/reveal_mm: 0 mm is no reveal; give more than 0 and at "
          "most 100 mm, usually 3 to 6");
    CHECK(complaint(with("/card", only({{"id", "jumbo"}, {"width_mm", 1630}}))) ==
          "wall.json: card/jumbo: \"height_mm\" is missing; add it");
    CHECK(complaint(with("/mount_cut_price", "14 each")) ==
          "wall.json: mount_cut_price: must be a number, got \"14 each\"; write it without quotes "
          "and without a unit");
}

TEST_CASE("Keys of mounts and card that this version does not know survive") {
    ordered_json wall =
        with("/card", only({{"id", "rest"}, {"width_mm", 420}, {"height_mm", 300}}));
    wall["mounts"][0]["under"] = only(ordered_json::object());
    wall["mounts"][0]["openings"] = only(ordered_json::object({{"print", "ebb"}}));
    const ordered_json later = {{"b", 1}, {"a", {1.5, nullptr}}};
    constexpr std::string_view kPlaces[] = {"/mounts/0",
                                            "/mounts/0/card",
                                            "/mounts/0/under/0",
                                            "/mounts/0/under/0/card",
                                            "/mounts/0/openings/0",
                                            "/prints/0",
                                            "/card/0",
                                            "/card/0/card"};
    for (const std::string_view place : kPlaces)
        wall[ordered_json::json_pointer(fmt::format("{}/from_later", place))] = later;
    const ordered_json again = written(read(wall));
    for (const std::string_view place : kPlaces) {
        INFO(place);
        CHECK(again.at(ordered_json::json_pointer(fmt::format("{}/from_later", place))) == later);
    }
}

TEST_CASE("A length that is the usual one to a hundredth of a millimetre is left out") {
    wall::Project project = read(ordered_json::parse(kWall));
    project.mounts[0].bar = 30.001;
    CHECK_FALSE(written(project).at("mounts").at(0).contains("bar_mm"));
    project.mounts[0].bar = 30.01;
    CHECK(written(project).at("mounts").at(0).at("bar_mm") == 30.01);
}

}  // namespace wallwright::store
