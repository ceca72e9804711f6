// The laws of mounts, prints and card.
#include "support/scenes.h"
#include "wall/validity.h"

#include <catch2/catch.hpp>

#include <limits>

using namespace wallwright;
using namespace wallwright::wall;

namespace {

/// Two prints, and a mount with a window for each.
Project wall_with_mount() {
    Project project = scenes::wall_of(3600, 2400);
    scenes::add_piece(project, "kelp", {1000, 1300}, {300, 400});
    project.prints.resize(2);
    project.prints[0].id = {"ebb"};
    project.prints[1].id = {"flow"};
    for (Print& print : project.prints)
        print.size = {100, 150};
    Mount& mount = project.mounts.emplace_back();
    mount.id = {"cream"};
    mount.openings = {{{"ebb"}, {}, {}}, {{"flow"}, {}, {}}};
    return project;
}

Project wall_with_card() {
    Project project = scenes::wall_of(3600, 2400);
    CardSheet& sheet = project.card.emplace_back();
    sheet.id = {"jumbo"};
    sheet.size = {1630, 1120};
    return project;
}

std::string only_fault(const Project& project) {
    const auto all = faults(project);
    REQUIRE(all.size() == 1);
    return to_text(all.front());
}

std::string fault_with(void (*change)(Mount&)) {
    Project project = wall_with_mount();
    change(project.mounts[0]);
    return only_fault(project);
}

std::string fault_with(void (*change)(CardSheet&)) {
    Project project = wall_with_card();
    change(project.card[0]);
    return only_fault(project);
}

}  // namespace

TEST_CASE("A mount with several windows and layers is sound") {
    Project project = wall_with_mount();
    CHECK(faults(project).empty());
    project.mounts[0].under.resize(4);
    project.mounts[0].base_ratio = 4.0 / 3;
    project.mounts[0].by_hand = FromCorner{40, 50};
    project.mounts[0].order = WindowOrder::by_hand;
    project.mounts[0].openings[0].at = FromCorner{0, 0};
    project.mounts[0].openings[1].at = FromCorner{120, 0};
    CHECK(faults(project).empty());
}

TEST_CASE("A window needs a print that is there, and no print has two in one mount") {
    CHECK(fault_with([](Mount& mount) { mount.openings[1].print = {"shell"}; }) ==
          "mounts/cream/openings/#2/print: there is no \"shell\" in the project; add it, or name "
          "one that is there");
    CHECK(fault_with([](Mount& mount) { mount.openings[1].print = {"ebb"}; }) ==
          "mounts/cream/openings/#2/print: \"ebb\" has a window already; name another print, or "
          "take one of the two windows out");
}

TEST_CASE("Two mounts may each have a window for the same print") {
    Project project = wall_with_mount();
    Mount other = project.mounts[0];
    other.id = {"grey"};
    project.mounts.push_back(other);
    CHECK(faults(project).empty());
}

TEST_CASE("Windows that are placed by hand each need a place") {
    CHECK(fault_with([](Mount& mount) {
              mount.order = WindowOrder::by_hand;
              mount.openings[0].at = FromCorner{40, 50};
          }) ==
          "mounts/cream/openings/#2/left_mm: a window placed by hand needs a place; give left_mm "
          "and top_mm from the blank's upper left corner, or order the windows in a row or a "
          "column");
}

TEST_CASE("A mount's measures are within what can be cut") {
    CHECK(fault_with([](Mount& mount) { mount.base_ratio = 0.5; }) ==
          "mounts/cream/base_ratio: 0.5 is out of range; give the border below over the border "
          "above, from 1 to 3");
    CHECK(fault_with([](Mount& mount) {
              mount.base_ratio = std::numeric_limits<double>::quiet_NaN();
          }).starts_with("mounts/cream/base_ratio: "));
    CHECK(fault_with([](Mount& mount) {
              mount.under.push_back({0, {}, {}, {}});
          }) ==
          "mounts/cream/under/#1/reveal_mm: 0 mm is no reveal; give more than 0 and at most 100 "
          "mm, usually 3 to 6");
    CHECK(fault_with([](Mount& mount) { mount.under.resize(5); }) ==
          "mounts/cream/under: 5 layers lie under the top one; leave at most 4 of them");
    CHECK(fault_with([](Mount& mount) { mount.overlap_most = -1; }) ==
          "mounts/cream/overlap_most_mm: -1 mm is out of range; give a length from 0 to 1000 mm");
    CHECK(fault_with([](Mount& mount) {
              mount.border_least = -1;
          }).starts_with("mounts/cream/border_least_mm: "));
    CHECK(fault_with([](Mount& mount) { mount.bar = 1e9; }).starts_with("mounts/cream/bar_mm: "));
    CHECK(fault_with([](Mount& mount) {
              mount.by_hand = FromCorner{40, -1};
          }).starts_with("mounts/cream/window_top_mm: "));
    CHECK(fault_with([](Mount& mount) {
              mount.openings[0].at = FromCorner{-1, 0};
          }).starts_with("mounts/cream/openings/#1/left_mm: "));
}

TEST_CASE("A mount from before its overlap could grow is sound with any overlap") {
    Project project = wall_with_mount();
    project.mounts[0].overlap = 2 * project.mounts[0].overlap_most;
    CHECK(faults(project).empty());
}

TEST_CASE("A print has at least one pixel each way") {
    Project project = wall_with_mount();
    project.prints[0].pixels = PixelSize{4000, 0};
    CHECK(only_fault(project) ==
          "prints/ebb/pixels_high: 0 is no number of pixels; give the picture's pixels, from 1 to "
          "1000000");
}

TEST_CASE("A back board is no larger than its frame") {
    Project project = wall_with_mount();
    project.frames[0].back_board = Size{272, 372};
    CHECK(faults(project).empty());
    project.frames[0].back_board = Size{372, 272};
    CHECK(only_fault(project) ==
          "frames/kelp/back_board_width_mm: the back board of 372 mm is wider than the frame of "
          "300 mm; measure the back board upright like the frame, or leave it out");
}

TEST_CASE("A sheet of card has a size, a count and an edge that can be used") {
    CHECK(faults(wall_with_card()).empty());
    CHECK(fault_with([](CardSheet& sheet) {
              sheet.size.height = -1;
          }).starts_with("card/jumbo/height_mm: -1 mm is no size"));
    CHECK(fault_with([](CardSheet& sheet) { sheet.count = 1000; }) ==
          "card/jumbo/count: 1000 is no number of sheets; give a number from 0 to 999");
    CHECK(fault_with([](CardSheet& sheet) { sheet.count = -1; }).starts_with("card/jumbo/count: "));
    CHECK(fault_with([](CardSheet& sheet) { sheet.margin = 560; }) ==
          "card/jumbo/margin_mm: two margins of 560 mm leave nothing of 1120 mm; give the width of "
          "the damaged edges, or take the sheet out");
    CHECK(fault_with([](CardSheet& sheet) { sheet.price = -0.5; }) ==
          "card/jumbo/price: -0.5 is out of range; give the price of one sheet, from 0 to 1000000");
    CHECK(fault_with([](CardSheet& sheet) { sheet.offcut = sheet.to_buy = true; }) ==
          "card/jumbo/to_buy: an offcut is at hand, not to be bought; leave offcut or to_buy out");
}

TEST_CASE("Two kinds of sheets have two ids") {
    Project project = wall_with_card();
    project.card.push_back(project.card[0]);
    CHECK(only_fault(project) == "card/jumbo: the id is used twice; give one of them another id");
}

TEST_CASE("What a cut mount costs is a price or not known") {
    Project project = wall_with_card();
    project.mount_cut_price = 0;
    CHECK(faults(project).empty());
    project.mount_cut_price = std::numeric_limits<double>::infinity();
    CHECK(only_fault(project).starts_with("mount_cut_price: inf is out of range"));
}

TEST_CASE("Card of an unknown material is told, in the layers of a mount and in the sheets") {
    Project project = wall_with_mount();
    project.card = wall_with_card().card;
    const Catalogue catalogue = scenes::small_catalogue();
    CHECK(unknown_names(project, catalogue).empty());
    project.mounts[0].under.resize(2);
    project.mounts[0].under[1].card.material = {"felt"};
    project.card[0].card.material = {"tin"};
    const auto unknown = unknown_names(project, catalogue);
    REQUIRE(unknown.size() == 2);
    CHECK(unknown[0].where == "mounts/cream/under/#2/card/material");
    CHECK(unknown[1].where == "card/jumbo/card/material");
}

TEST_CASE("Keys that are not understood in mounts and card are told by their place") {
    Project project = wall_with_mount();
    project.card = wall_with_card().card;
    project.mounts[0].under.resize(1);
    project.mounts[0].under[0].unknown["shine"] = "1";
    project.mounts[0].openings[1].unknown["round"] = "true";
    project.card[0].unknown["shop"] = "\"corner\"";
    CHECK(unknown_paths(project) == std::vector<std::string>{"mounts/cream/under/#1/shine",
                                                             "mounts/cream/openings/#2/round",
                                                             "card/jumbo/shop"});
}

namespace {

/// Two layers of one piece's mount, kept on a sheet.
Project wall_with_kept_blanks() {
    Project project = wall_with_mount();
    project.card = wall_with_card().card;
    project.mounts[0].under.resize(1);
    project.pieces[0].mount = project.mounts[0].id;
    project.kept_blanks = {{{"kelp"}, 1, {"jumbo"}, 1, 0, 0, false},
                           {{"kelp"}, 2, {"jumbo"}, 1, 300, 0, true}};
    return project;
}

std::string fault_with(void (*change)(KeptBlank&)) {
    Project project = wall_with_kept_blanks();
    change(project.kept_blanks[1]);
    return only_fault(project);
}

}  // namespace

TEST_CASE("A kept blank is of a layer that is there, on a sheet that is there") {
    CHECK(faults(wall_with_kept_blanks()).empty());
    CHECK(fault_with([](KeptBlank& kept) {
              kept.piece = {"reed"};
          }).starts_with("kept_blanks/#2/piece: there is no \"reed\" in the project"));
    CHECK(fault_with([](KeptBlank& kept) {
              kept.sheet = {"felt"};
          }).starts_with("kept_blanks/#2/sheet: there is no \"felt\" in the project"));
    CHECK(fault_with([](KeptBlank& kept) { kept.layer = 3; }) ==
          "kept_blanks/#2/layer: there is no layer 3; count from 1 for the top layer to 2");
    CHECK(fault_with([](KeptBlank& kept) { kept.layer = 0; }) ==
          "kept_blanks/#2/layer: there is no layer 0; count from 1 for the top layer to 2");
    CHECK(fault_with([](KeptBlank& kept) { kept.number = 0; }) ==
          "kept_blanks/#2/number: there is no sheet 0 of a kind; count the sheets of one kind from "
          "1 to 999");
    CHECK(fault_with([](KeptBlank& kept) {
              kept.number = 1000;
          }).starts_with("kept_blanks/#2/number: "));
    CHECK(fault_with([](KeptBlank& kept) {
              kept.left = -1;
          }).starts_with("kept_blanks/#2/left_mm: -1 mm is out of range"));
    CHECK(fault_with([](KeptBlank& kept) {
              kept.top = std::numeric_limits<double>::quiet_NaN();
          }).starts_with("kept_blanks/#2/top_mm: "));
}

TEST_CASE("A layer is kept once") {
    CHECK(fault_with([](KeptBlank& kept) { kept.layer = 1; }) ==
          "kept_blanks/#2: layer 1 of \"kelp\" is kept twice; take one of them out");
}

TEST_CASE("A blank may wait for the mount of its piece") {
    Project project = wall_with_kept_blanks();
    project.pieces[0].mount.reset();
    project.kept_blanks[1].layer = 5;
    CHECK(faults(project).empty());
    project.kept_blanks[1].layer = 6;
    CHECK(only_fault(project).starts_with("kept_blanks/#2/layer: there is no layer 6"));
}

TEST_CASE("Keys of a kept blank that are not understood are told by its number") {
    Project project = wall_with_kept_blanks();
    project.kept_blanks[1].unknown["why"] = "1";
    CHECK(unknown_paths(project) == std::vector<std::string>{"kept_blanks/#2/why"});
}
