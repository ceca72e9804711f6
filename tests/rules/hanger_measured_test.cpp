#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;

namespace {

constexpr const char* kRule = "hanger-measured";

}  // namespace

TEST_CASE("A mark that rests on a guessed hanger says so, once for the wall") {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400}).hanger.type = wall::HangerType::sawtooth;
    add_piece(project, "dune", {1400, 1300}, {300, 400}).hanger.type =
        wall::HangerType::cord_one_hook;
    add_piece(project, "tide", {1800, 1300}, {300, 400});
    const wall::Finding note = only_finding(kRule, project);
    CHECK(note.severity == wall::Severity::note);
    CHECK(note.text ==
          "Kelp and Dune: where the hanger sits on the back was not measured, so the marks take "
          "the usual place; measure from the top edge, and between rings along the cord, before "
          "you nail.");

    piece_named(project, "kelp").hanger.drop = 12;
    piece_named(project, "dune").hanger.drop = 100;
    piece_named(project, "dune").hanger.ring_spacing = 240;
    CHECK(only_finding(kRule, project).pieces == std::vector<wall::PieceId>{{"dune"}});
    piece_named(project, "dune").hanger.cord_length = 260;
    CHECK(findings_of(kRule, project).empty());
}

TEST_CASE("What hangs already needs no mark and no measure") {
    wall::Project project = wall_of(3600, 2400);
    add_hung(project, "kelp", {1000, 1300}, {300, 400}).hanger.type = wall::HangerType::sawtooth;
    CHECK(findings_of(kRule, project).empty());
}
