#include "rules/asked.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>

namespace wallwright::rules {

std::vector<wall::Finding> findings_on(const wall::Project& project) {
    return assess(project, scenes::small_catalogue()).findings;
}

std::vector<wall::Finding> findings_of(std::string_view rule, const wall::Project& project) {
    const auto rules = all_rules();
    const bool known =
        std::ranges::any_of(rules, [rule](const Rule& each) { return each.name == rule; });
    INFO("asked for the rule " << rule);
    REQUIRE(known);
    std::vector<wall::Finding> findings = findings_on(project);
    std::erase_if(findings, [rule](const wall::Finding& each) { return each.rule != rule; });
    return findings;
}

wall::Finding only_finding(std::string_view rule, const wall::Project& project) {
    const std::vector<wall::Finding> findings = findings_of(rule, project);
    INFO("asked for the rule " << rule);
    REQUIRE(findings.size() == 1);
    return findings.front();
}

void make_light(wall::Project& project, const std::string& id, double kg) {
    scenes::frame_named(project, id).glazing.material = {"acrylic"};
    piece_named(project, id).weighed = units::Kilograms{kg};
}

void hang_on_a_nail(wall::Project& project, const std::string& id) {
    piece_named(project, id).hanger.type = wall::HangerType::sawtooth;
    piece_named(project, id).fixing = wall::FixingTypeId{"hook_small"};
}

void hang_from_the_rail(wall::Project& project, const std::string& id, const wall::Hanger& hanger) {
    wall::FixingType hook;
    hook.id = {"rail"};
    hook.title = "Rail hook";
    hook.kind = wall::FixingKind::rail_hook;
    hook.rated = {10};
    hook.footprint = {20, 50};
    hook.source = "for tests";
    project.own.fixings = {hook};
    project.room.rail = 2200;
    piece_named(project, id).hanger = hanger;
    piece_named(project, id).fixing = hook.id;
}

wall::Piece& piece_named(wall::Project& project, const std::string& id) {
    const auto found = std::ranges::find(project.pieces, wall::PieceId{id}, &wall::Piece::id);
    REQUIRE(found != project.pieces.end());
    return *found;
}

}  // namespace wallwright::rules
