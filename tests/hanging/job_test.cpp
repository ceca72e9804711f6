#include "hanging/job.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

namespace wallwright::hanging {

namespace {

wall::Project two_pieces_and_one_waiting() {
    wall::Project project = scenes::wall_of(3600, 2400);
    scenes::add_piece(project, "kelp", {1000, 1300}, {400, 500});
    scenes::add_waiting(project, "dune", {300, 300});
    scenes::add_hung(project, "tern", {1500, 1300}, {300, 200});
    return project;
}

}  // namespace

TEST_CASE("Every piece on the wall is a job, and none that waits") {
    const wall::Project project = two_pieces_and_one_waiting();
    const std::vector<Job> jobs = jobs_of(project, scenes::small_catalogue());
    REQUIRE(jobs.size() == 2);
    CHECK(jobs[0].piece.id.text == "kelp");
    CHECK(jobs[1].piece.id.text == "tern");
    CHECK(jobs[1].mass.high.value > 0);
}

TEST_CASE("A job's hanger has the measures of the piece as it hangs, turned or not") {
    wall::Project project = two_pieces_and_one_waiting();
    project.pieces[0].hanger.type = wall::HangerType::two_rings;
    CHECK(*jobs_of(project, {}).front().hanger.drop == 125);
    project.pieces[0].turned = true;
    CHECK(*jobs_of(project, {}).front().hanger.drop == 100);
}

TEST_CASE("A point on the back is found on the wall from the piece's upper left corner") {
    const wall::Project project = two_pieces_and_one_waiting();
    const Job job = jobs_of(project, {}).front();
    CHECK(on_wall(job, {200, 50}) == geometry::Point<geometry::Wall>{1200, 1750});
}

TEST_CASE("A finding names the piece, or its id where it has no title, and looks at its place") {
    wall::Project project = two_pieces_and_one_waiting();
    const wall::Finding finding =
        about(jobs_of(project, {}).front(), "some-rule", wall::Severity::mind, "it leans");
    CHECK(finding.rule == "some-rule");
    CHECK(finding.severity == wall::Severity::mind);
    CHECK(finding.pieces == std::vector{wall::PieceId{"kelp"}});
    CHECK(finding.place == geometry::Rect<geometry::Wall>{{1000, 1300}, {1400, 1800}});
    CHECK(finding.text == "Kelp: it leans.");
    project.pieces.front().title.clear();
    CHECK(about(jobs_of(project, {}).front(), "some-rule", wall::Severity::note, "it leans").text ==
          "kelp: it leans.");
}

}  // namespace wallwright::hanging
