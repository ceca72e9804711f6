#include "store/json_project.h"

#include "random_project.h"
#include "wall/validity.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>
#include <rapidcheck/catch.h>

namespace wallwright::store {

namespace {

using nlohmann::ordered_json;

constexpr std::string_view kSmallWall = R"({
  "format": "wallwright-project",
  "version": 1,
  "title": "Landing",
  "room": {
    "outline_mm": [[0, 0], [3000, 0], [3000, 2400], [0, 2400]],
    "furniture": [{"id": "chest", "type": "sideboard", "left_mm": 800, "width_mm": 1200, "height_mm": 900}]
  },
  "frames": [{"id": "oak", "width_mm": 400, "height_mm": 500}],
  "pieces": [{"id": "kelp", "frame": "oak", "state": "hung", "x_mm": 1200, "y_mm": 1250.5}]
})";

/// The small wall with one value put in place of another, named by a JSON pointer (RFC 6901).
std::string with(const std::string& pointer, const ordered_json& value) {
    ordered_json wall = ordered_json::parse(kSmallWall);
    wall[ordered_json::json_pointer(pointer)] = value;
    return wall.dump();
}

std::string without(const std::string& object, const std::string& key) {
    ordered_json wall = ordered_json::parse(kSmallWall);
    wall[ordered_json::json_pointer(object)].erase(key);
    return wall.dump();
}

std::string complaint(const std::string& text) {
    const auto project = read_project(text, "wall.json");
    return project ? "no complaint" : to_text(project.error());
}

}  // namespace

TEST_CASE("A small wall is read, and what it leaves out has the usual values") {
    const auto project = read_project(kSmallWall, "wall.json");
    REQUIRE(project);
    CHECK(project->title == "Landing");
    CHECK(project->unit == units::LengthUnit::mm);
    CHECK(project->style == wall::HangingStyle{});
    CHECK(project->room.furniture.at(0).place == wall::Rect<wall::Wall>{{800, 0}, {2000, 900}});
    CHECK(project->frames.at(0).moulding.text == "pine");
    CHECK(project->pieces.at(0).state == wall::PieceState::hung);
    CHECK(project->pieces.at(0).at == wall::Point<wall::Wall>{1200, 1250.5});
    CHECK(project->tape == wall::TapeClass::two);
}

TEST_CASE(
    "A wall is written for people to read, with every number that later defaults could change") {
    auto project = read_project(kSmallWall, "wall.json");
    REQUIRE(project);
    const std::string text = write_project(*project);
    INFO(text);
    CHECK(
        text.starts_with("{\n  \"format\": \"wallwright-project\",\n  \"version\": 1,\n  "
                         "\"title\": \"Landing\",\n"));
    CHECK(text.find("\"outline_mm\": [[0, 0], [3000, 0], [3000, 2400], [0, 2400]],\n") !=
          std::string::npos);
    CHECK(text.find("      \"x_mm\": 1200,\n      \"y_mm\": 1250.5,\n") != std::string::npos);
    CHECK(text.find("\"moulding_width_mm\": 20,\n") != std::string::npos);
    CHECK(text.find("\"gap_mm\": 60,\n") != std::string::npos);
    CHECK(text.find("\"mounts\"") == std::string::npos);
    CHECK(text.find("\"pinned\"") == std::string::npos);
    CHECK(text.find("\"weighed_kg\"") == std::string::npos);
    CHECK(text.ends_with("\n}\n"));
}

TEST_CASE("Numbers are written to a hundredth of a millimetre and a gram, without noise") {
    auto project = read_project(kSmallWall, "wall.json");
    REQUIRE(project);
    project->pieces[0].at = {419.99999999, -0.001};
    project->pieces[0].weighed = wall::Kilograms{1.23456};
    project->frames[0].outside = {0.1 + 0.2 + 400, 1e4 / 3};
    const std::string text = write_project(*project);
    CHECK(text.find("\"x_mm\": 420,\n      \"y_mm\": 0,") != std::string::npos);
    CHECK(text.find("\"weighed_kg\": 1.235\n") != std::string::npos);
    CHECK(text.find("\"width_mm\": 400.3,\n      \"height_mm\": 3333.33,") != std::string::npos);
}

TEST_CASE(
    "A file of a later version is refused with both versions, before anything in it is judged") {
    CHECK(complaint(R"({"format": "wallwright-project", "version": 3, "room": "a new kind"})") ==
          "wall.json: version: the file is of version 3, made by a later Wallwright; this one "
          "reads up to version 1; "
          "open it with the later one; nothing was changed");
}

TEST_CASE("A file that is no project of ours is refused by name") {
    CHECK(complaint(R"({"format": "shopping", "version": 1})") ==
          "wall.json: format: must be \"wallwright-project\", got \"shopping\"; give a project "
          "file of this program");
    CHECK(complaint(R"({"type": "FeatureCollection"})") ==
          "wall.json: \"format\" is missing; give a project file of this program");
    CHECK(complaint("[1, 2]") ==
          "wall.json: must be an object in { }, got [1,2]; give a project file of this program");
    CHECK(complaint(with("/version", 0)) == "wall.json: version: there is no version 0; write 1");
    CHECK(complaint(with("/version", "1")) ==
          "wall.json: version: must be a whole number, got \"1\"; give a project file of this "
          "program");
}

TEST_CASE("A value of the wrong kind is quoted at its place, with what to write instead") {
    CHECK(complaint(with("/frames/0/width_mm", "40 cm")) ==
          "wall.json: frames/oak/width_mm: must be a number of mm, got \"40 cm\"; write 400");
    CHECK(complaint(with("/frames/0/width_mm", "wide")) ==
          "wall.json: frames/oak/width_mm: must be a number of mm, got \"wide\"; "
          "write it without quotes and without a unit");
    CHECK(complaint(with("/pieces/0/weighed_kg", "850 g")) ==
          "wall.json: pieces/kelp/weighed_kg: must be a number of kg, got \"850 g\"; write 0.85");
    CHECK(complaint(with("/pieces/0/x_mm", nullptr)) ==
          "wall.json: pieces/kelp/x_mm: must be a number of mm, got null");
    CHECK(complaint(with("/pieces/0/turned", 1)) ==
          "wall.json: pieces/kelp/turned: must be true or false, got 1");
    CHECK(complaint(with("/pieces/0/title", 7)) ==
          "wall.json: pieces/kelp/title: must be a text in quotes, got 7");
    CHECK(complaint(with("/room/colour", "green")) ==
          "wall.json: room/colour: must be a colour such as \"#e3e6df\", got \"green\"");
    CHECK(complaint(with("/room/outline_mm/2", {1, 2, 3})) ==
          "wall.json: room/outline_mm: must be a list of corners [x, y] in mm, "
          "got [[0,0],[3000,0],[1,2,3],[0,2400]]");
    CHECK(complaint(with("/pieces", 4)) == "wall.json: pieces: must be a list in [ ], got 4");
    CHECK(complaint(with("/pieces/0", "kelp")) ==
          "wall.json: pieces/#1: must be an object in { }, got \"kelp\"");
    CHECK(complaint(with("/stock", {{{"fixing", "hook_1"}, {"count", 2.5}}})) ==
          "wall.json: stock/hook_1/count: must be a whole number, got 2.5");
}

TEST_CASE("A long value is quoted in part only") {
    const std::string said = complaint(with("/room/colour", std::string(500, 'x')));
    CHECK(said.size() < 200);
    CHECK(said.ends_with("..."));
}

TEST_CASE("Wishes, target and weights are read by their keys") {
    ordered_json wall = ordered_json::parse(kSmallWall);
    wall["pieces"].push_back({{"id", "gull"},
                              {"frame", "oak"},
                              {"state", "planned"},
                              {"wished", true},
                              {"stage", 2},
                              {"x_mm", 1660},
                              {"y_mm", 1250}});
    wall["wishes"] = {{{"wish", "side_by_side"}, {"first", "kelp"}, {"second", "gull"}},
                      {{"wish", "not_over"}, {"first", "kelp"}, {"furniture", "chest"}}};
    wall["target"] = {{"furniture", "chest"}};
    wall["weights"] = {{{"measure", "even_gaps"}, {"weight", 3}}};
    const auto project = read_project(wall.dump(), "wall.json");
    REQUIRE(project);
    CHECK(project->pieces.at(1).wished);
    CHECK(project->pieces.at(1).stage == 2);
    REQUIRE(project->wishes.size() == 2);
    CHECK(project->wishes[0] ==
          wall::Wish{wall::WishKind::side_by_side, {"kelp"}, wall::PieceId{"gull"}, {}});
    CHECK(project->wishes[1] ==
          wall::Wish{
              wall::WishKind::not_over, {"kelp"}, {}, wall::ThingId(wall::FurnitureId{"chest"})});
    CHECK(project->target == wall::Target(wall::FurnitureId{"chest"}));
    CHECK(project->weights == std::vector<wall::MeasureWeight>{{"even_gaps", 3}});
    const auto written = ordered_json::parse(write_project(*project));
    for (const char* key : {"wishes", "target", "weights"})
        CHECK(written.at(key) == wall.at(key));
}

TEST_CASE("Each kind of target is told by its keys") {
    const auto target_of = [](const ordered_json& target) {
        return read_project(with("/target", target), "wall.json").value().target;
    };
    CHECK(target_of({{"x_mm", 2500}, {"y_mm", 1500}}) ==
          wall::Target(wall::Point<wall::Wall>{2500, 1500}));
    CHECK(target_of({{"corner", "top_right"}}) == wall::Target(wall::WallCorner::top_right));
    CHECK(target_of({{"left_mm", 2000}, {"width_mm", 600}, {"height_mm", 800}}) ==
          wall::Target(wall::Rect<wall::Wall>{{2000, 0}, {2600, 800}}));
}

TEST_CASE("A target that says nothing, or two things, is answered with what to write") {
    CHECK(complaint(with("/target", ordered_json::object())) ==
          "wall.json: target: does not say where; give furniture, fixture, corner, x_mm and y_mm, "
          "or left_mm, bottom_mm, width_mm and height_mm");
    CHECK(complaint(with("/target", {{"furniture", "chest"}, {"corner", "top_left"}})) ==
          "wall.json: target: names more than one place; keep one of them");
    CHECK(complaint(with("/target", {{"x_mm", 4}})) ==
          "wall.json: target: \"y_mm\" is missing beside \"x_mm\"; give both, or neither");
}

TEST_CASE("A wall without wishes says nothing of them") {
    const std::string text = write_project(read_project(kSmallWall, "wall.json").value());
    for (const char* key : {"wishes", "target", "weights", "wished", "stage"})
        CHECK(text.find(fmt::format("\"{}\"", key)) == std::string::npos);
}

TEST_CASE("An unknown name is answered with the names there are") {
    CHECK(complaint(with("/pieces/0/state", "up")) ==
          "wall.json: pieces/kelp/state: must be one of \"hung\", \"planned\", \"waiting\", got "
          "\"up\"");
    CHECK(complaint(with("/unit", "inch")) ==
          "wall.json: unit: must be one of \"mm\", \"cm\", \"in\", got \"inch\"");
}

TEST_CASE("A missing key is named with the thing that lacks it") {
    CHECK(complaint(without("/frames/0", "height_mm")) ==
          "wall.json: frames/oak: \"height_mm\" is missing; add it");
    CHECK(complaint(without("/pieces/0", "id")) ==
          "wall.json: pieces/#1: \"id\" is missing; add it");
    CHECK(complaint(without("", "room")) == "wall.json: \"room\" is missing; add it");
    CHECK(complaint(without("/pieces/0", "y_mm")) ==
          "wall.json: pieces/kelp: \"y_mm\" is missing beside \"x_mm\"; give both, or neither");
}

TEST_CASE("A project that breaks the laws of the wall is not handed out") {
    CHECK(complaint(with("/frames/0/width_mm", 0)).starts_with("wall.json: frames/oak/width_mm: "));
    CHECK(complaint(with("/pieces/0/frame", "elm")).starts_with("wall.json: pieces/kelp/frame: "));
    CHECK(complaint(with("/style", {{"gap_mm", 1e6}})).starts_with("wall.json: style/gap_mm: "));
}

TEST_CASE("Keys that this version does not know survive at every level") {
    constexpr std::string_view kPlaces[] = {"",
                                            "/room",
                                            "/room/furniture/0",
                                            "/frames/0",
                                            "/frames/0/glazing",
                                            "/pieces/0",
                                            "/pieces/0/hanger",
                                            "/style",
                                            "/room/studs",
                                            "/stock/0",
                                            "/own/fixings/0",
                                            "/own/fixings/0/nails",
                                            "/datum",
                                            "/wishes/0",
                                            "/target",
                                            "/weights/0",
                                            "/own"};
    for (const std::string_view place : kPlaces) {
        INFO(place);
        ordered_json wall = ordered_json::parse(kSmallWall);
        wall["wishes"] = {{{"wish", "low"}, {"first", "kelp"}}};
        wall["target"] = {{"corner", "top_left"}};
        wall["room"]["studs"] = {{"first_mm", 150}};
        wall["stock"] = {{{"fixing", "hook_1"}, {"count", 4}}};
        wall["own"]["fixings"] = {
            {{"id", "pin"},
             {"kind", "nail_hook"},
             {"rated_kg", 1},
             {"width_mm", 8},
             {"height_mm", 20},
             {"nails", {{"count", 1}, {"diameter_mm", 1}, {"length_mm", 9}}}}};
        wall["weights"] = {{{"measure", "even_gaps"}, {"weight", 3}}};
        const ordered_json later = {{"b", 1}, {"a", {1.5, nullptr}}};
        wall[ordered_json::json_pointer(std::string(place) + "/from_later")] = later;
        const auto project = read_project(wall.dump(), "wall.json");
        REQUIRE(project);
        const auto written = ordered_json::parse(write_project(*project));
        CHECK(written.at(ordered_json::json_pointer(std::string(place) + "/from_later")) == later);
    }
}

TEST_CASE("Reading what was written gives the same project") {
    rc::prop("read(write(p)) == p", [] {
        const wall::Project project = *any_project();
        RC_ASSERT(wall::faults(project).empty());
        const auto again = read_project(write_project(project), "p");
        RC_ASSERT(again);
        RC_ASSERT(*again == project);
    });
}

TEST_CASE(
    "Places that are finer than the file are kept to a hundredth of a millimetre, and settle at "
    "once") {
    rc::prop("write(read(write(p))) == write(p)", [] {
        wall::Project project = *any_project();
        for (wall::Piece& piece : project.pieces)
            if (piece.at)
                *piece.at = *piece.at + geometry::Vec<wall::Wall>{
                                            *rc::gen::inRange(-1000, 1000) / 3e5, 0.1 / 3};
        const std::string text = write_project(project);
        const auto again = read_project(text, "p");
        RC_ASSERT(again);
        RC_ASSERT(write_project(*again) == text);
        for (std::size_t i = 0; i < project.pieces.size(); ++i)
            if (project.pieces[i].at)
                RC_ASSERT(geometry::distance(*project.pieces[i].at, *again->pieces[i].at) < 0.0075);
    });
}

namespace {

/// A text after a few changes of the kind that disks, editors and hands make.
std::string damaged(std::string text) {
    const int changes = *rc::gen::inRange(1, 4);
    for (int i = 0; i < changes && !text.empty(); ++i) {
        const auto at = *rc::gen::inRange<std::size_t>(0, text.size());
        const auto length = *rc::gen::inRange<std::size_t>(1, 30);
        switch (*rc::gen::inRange(0, 5)) {
            case 0:
                text.resize(at);
                break;
            case 1:
                text[at] = *rc::gen::arbitrary<char>();
                break;
            case 2:
                text.erase(at, length);
                break;
            case 3:
                text.insert(at,
                            text.substr(*rc::gen::inRange<std::size_t>(0, text.size()), length));
                break;
            default:
                text.replace(at, 1,
                             *rc::gen::element<std::string>("-", "1e999", "0", "null", "[", "{",
                                                            "\"", "\\u0000", ",", "1e308",
                                                            "99999999999999999999", "true"));
        }
    }
    return text;
}

}  // namespace

namespace {

/// The same file with one value of it taken away or put in place of another.
std::string misfilled(const std::string& text) {
    auto file = ordered_json::parse(text);
    const auto flat = file.flatten();
    const auto chosen = std::next(flat.begin(), *rc::gen::inRange<std::ptrdiff_t>(
                                                    0, static_cast<std::ptrdiff_t>(flat.size())));
    const ordered_json::json_pointer pointer(chosen.key());
    if (*rc::gen::arbitrary<bool>() && file[pointer.parent_pointer()].is_object())
        file[pointer.parent_pointer()].erase(pointer.back());
    else
        file[pointer] = *rc::gen::element<ordered_json>(
            nullptr, true, "", "strip_large", 0, -1, 0.004, 1e300, 420.123456,
            ordered_json::array({1, 2}), ordered_json{{"id", "kelp"}});
    return file.dump();
}

void require_refusal_or_soundness(const std::string& text) {
    const auto project = read_project(text, "p");
    RC_CLASSIFY(project.has_value(), "harmless");
    if (project) {
        RC_ASSERT(wall::faults(*project).empty());
        const auto again = read_project(write_project(*project), "p");
        RC_ASSERT(again);
        RC_ASSERT(*again == *project);
    } else {
        RC_ASSERT(!project.error().what.empty());
    }
}

}  // namespace

TEST_CASE(
    "A damaged file is refused, or gives a sound project that can be written and read again") {
    rc::prop("with damaged text",
             [] { require_refusal_or_soundness(damaged(write_project(*any_project()))); });
    rc::prop("with another value",
             [] { require_refusal_or_soundness(misfilled(write_project(*any_project()))); });
}

}  // namespace wallwright::store
