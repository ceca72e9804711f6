#include "random_project.h"
#include "schema_check.h"
#include "store/json_project.h"
#include "support/command.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <rapidcheck/catch.h>

namespace wallwright::store {

namespace {

using nlohmann::json;
using nlohmann::ordered_json;

const json& planted() {
    static const json kPlanted =
        json::parse(test::read_whole(WW_TEST_DATA "/store/planted_faults.json"));
    return kPlanted;
}

template <class Enum>
std::vector<std::string> names() {
    return {std::begin(wall::Names<Enum>::values), std::end(wall::Names<Enum>::values)};
}

std::vector<std::string> names_in_schema(const std::string& definition, const std::string& key) {
    return schema_text()
        .at("definitions")
        .at(definition)
        .at("properties")
        .at(key)
        .at("enum")
        .get<std::vector<std::string>>();
}

}  // namespace

TEST_CASE("What the program writes is valid by the schema") {
    rc::prop("written projects are valid", [] {
        const std::string said = breach(json::parse(write_project(*any_project())));
        RC_LOG() << said;
        RC_ASSERT(said.empty());
    });
}

TEST_CASE("A key that the schema does not name is allowed, since it is kept") {
    json file = planted().at("sound");
    file["later"] = 1;
    file["pieces"][0]["later"] = 1;
    CHECK(breach(file).empty());
}

TEST_CASE("The sound project of the planted faults is sound for schema and reader") {
    CHECK(breach(planted().at("sound")).empty());
    const auto project = read_project(planted().at("sound").dump(), "wall.json");
    INFO((project ? "" : to_text(project.error())));
    CHECK(project);
}

TEST_CASE("Each planted fault is refused by the schema and by the reader, who names its place") {
    for (const json& one : planted().at("both_refuse")) {
        INFO(one.at("fault").dump());
        const json file = planted().at("sound").patch(one.at("fault"));
        CHECK_FALSE(breach(file).empty());
        const auto project = read_project(file.dump(), "wall.json");
        REQUIRE_FALSE(project);
        INFO(to_text(project.error()));
        CHECK(
            to_text(project.error()).starts_with("wall.json: " + one.at("at").get<std::string>()));
    }
}

TEST_CASE("What a schema cannot say is refused by the reader alone") {
    for (const json& one : planted().at("only_the_reader_refuses")) {
        INFO(one.at("fault").dump());
        const json file = planted().at("sound").patch(one.at("fault"));
        CHECK(breach(file).empty());
        const auto project = read_project(file.dump(), "wall.json");
        REQUIRE_FALSE(project);
        CHECK(project.error().where == "wall.json: " + one.at("at").get<std::string>());
    }
}

TEST_CASE("The schema lists the same names as the program") {
    const json& material = schema_text().at("definitions").at("material").at("properties");
    CHECK(material.at("uses").at("items").at("enum") == names<wall::MaterialUse>());
    CHECK(names_in_schema("room", "surface") == names<wall::Surface>());
    CHECK(names_in_schema("room", "core") == names<wall::Core>());
    const json& fixing = schema_text().at("definitions").at("fixing").at("properties");
    CHECK(fixing.at("cores").at("items").at("enum") == names<wall::Core>());
    CHECK(names_in_schema("room", "use") == names<wall::RoomUse>());
    CHECK(names_in_schema("room", "cable_practice") == names<wall::CablePractice>());
    CHECK(names_in_schema("furniture", "type") == names<wall::FurnitureType>());
    CHECK(names_in_schema("fixture", "type") == names<wall::FixtureType>());
    CHECK(names_in_schema("hanger", "type") == names<wall::HangerType>());
    CHECK(names_in_schema("mount", "edge") == names<wall::WindowEdge>());
    CHECK(names_in_schema("mount", "order") == names<wall::WindowOrder>());
    CHECK(names_in_schema("card_sheet", "grain") == names<wall::Grain>());
    CHECK(names_in_schema("piece", "state") == names<wall::PieceState>());
    CHECK(names_in_schema("wish", "wish") == names<wall::WishKind>());
    CHECK(names_in_schema("target", "corner") == names<wall::WallCorner>());
    CHECK(names_in_schema("fixing", "kind") == names<wall::FixingKind>());
    CHECK(names_in_schema("datum", "height") == names<wall::DatumHeight>());
    CHECK(names_in_schema("datum", "side") == names<wall::DatumSide>());
    CHECK(schema_text().at("properties").at("tape").at("enum").get<std::vector<std::string>>() ==
          names<wall::TapeClass>());
}

TEST_CASE("The schema has every field of the style with its bounds and meaning") {
    const json& style = schema_text().at("definitions").at("style").at("properties");
    CHECK(style.size() == wall::style_fields().size());
    for (const wall::StyleField& field : wall::style_fields()) {
        INFO(field.key);
        const json& property = style.at(std::string(field.key));
        CHECK(property.at("minimum") == field.least);
        CHECK(property.at("maximum") == field.most);
        CHECK(property.at("description") == field.meaning);
    }
}

namespace {

/// Collects "definition/key" for each key of an object in a written file that the schema does not
/// describe.
void undescribed(const json& value, json description, const std::string& path,
                 std::vector<std::string>& found) {
    if (description.contains("$ref"))
        description = schema_text().at(
            json::json_pointer(description.at("$ref").get<std::string>().substr(1)));
    if (value.is_array() && description.contains("items"))
        for (const json& item : value)
            undescribed(item, description.at("items"), path, found);
    if (!value.is_object())
        return;
    for (const auto& [key, inner] : value.items())
        if (description.contains("properties") && description.at("properties").contains(key))
            undescribed(inner, description.at("properties").at(key), path + "/" + key, found);
        else
            found.push_back(path + "/" + key);
}

}  // namespace

TEST_CASE("Every key that the program writes is described in the schema") {
    const auto project = read_project(planted().at("sound").dump(), "wall.json");
    REQUIRE(project);
    std::vector<std::string> found;
    undescribed(json::parse(write_project(*project)), schema_text(), "", found);
    CHECK(found == std::vector<std::string>{});
}

}  // namespace wallwright::store
