#include "geometry/floor_line.h"
#include "rules/asked.h"
#include "support/gallery.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::Severity;

namespace {

/// One piece 400 mm high with its centre at this height.
wall::Project kelp_centred_at(double height) {
    wall::Project project = wall_of(3600, 2600);
    add_piece(project, "kelp", {1000, height - 200}, {300, 400});
    return project;
}

}  // namespace

TEST_CASE("A centre above the usual band is to be lowered") {
    const wall::Finding finding = only_finding("centre-line", kelp_centred_at(1620));
    CHECK(finding.severity == Severity::mind);
    CHECK(finding.measured == 1620);
    CHECK(finding.wanted == 1550);
    CHECK(finding.text ==
          "The centre of Kelp is 1620 mm above the floor, over the usual 1450 to 1550 mm; lower it "
          "by 70 mm.");
}

TEST_CASE("A centre below the usual band is to be raised") {
    const wall::Finding finding = only_finding("centre-line", kelp_centred_at(1400));
    CHECK(finding.wanted == 1450);
    CHECK(finding.text ==
          "The centre of Kelp is 1400 mm above the floor, under the usual 1450 to 1550 mm; raise "
          "it by 50 mm.");
}

TEST_CASE("The ends of the band are on the centre line") {
    CHECK(findings_of("centre-line", kelp_centred_at(1450)).empty());
    CHECK(findings_of("centre-line", kelp_centred_at(1550)).empty());
    CHECK(findings_of("centre-line", kelp_centred_at(1449.9)).size() == 1);
    CHECK(findings_of("centre-line", kelp_centred_at(1550.1)).size() == 1);
}

TEST_CASE("A gallery's centre line of 58 in is within the usual band") {
    // Museum of the City of New York, "The challenges of different types of hanging hardware",
    // 2017: 58 in to the centre.
    CHECK(findings_of("centre-line", kelp_centred_at(58 * units::kMmPerInch)).empty());
}

TEST_CASE("The group is centred as one piece and not each piece in it") {
    wall::Project project = wall_of(3600, 2600);
    add_piece(project, "kelp", {1000, 1070}, {300, 400});
    add_piece(project, "dune", {1000, 1530}, {300, 400});
    CHECK(findings_of("centre-line", project).empty());

    piece_named(project, "dune").at = geometry::Point<geometry::Wall>{1000, 1535};
    piece_named(project, "kelp").at = geometry::Point<geometry::Wall>{1000, 1175};
    CHECK(only_finding("centre-line", project).text ==
          "The centre of the group of Kelp and Dune is 1555 mm above the floor, over the usual "
          "1450 to 1550 mm; lower it "
          "by 5 mm.");
}

TEST_CASE("Where the clearance above the sofa rules the centre line out it is only a note") {
    // The sofa ends at 800 mm: a piece 400 mm high that keeps 150 to 255 mm has its centre at 1150
    // to 1255 mm.
    wall::Project project = kelp_centred_at(1200);
    add_furniture(project, wall::FurnitureType::sofa, {{900, 0}, {1400, 800}});
    const wall::Finding finding = only_finding("centre-line", project);
    CHECK(finding.severity == Severity::note);
    CHECK(finding.text ==
          "The centre of Kelp is 1200 mm above the floor, under the usual 1450 to 1550 mm; no "
          "height keeps both that and "
          "the clearance above the furniture, so let the clearance lead.");
    CHECK(findings_of("clearance-above-furniture", project).empty());
}

TEST_CASE("Where both can be kept the centre line is asked for above furniture too") {
    // 1000 mm high over the sofa: centres of 1450 to 1555 mm keep the clearance.
    wall::Project project = wall_of(3600, 2600);
    add_furniture(project, wall::FurnitureType::sofa, {{900, 0}, {2400, 800}});
    add_piece(project, "kelp", {1000, 1054}, {1000, 1000});
    const wall::Finding finding = only_finding("centre-line", project);
    CHECK(finding.severity == Severity::mind);
    CHECK(finding.measured == 1554);
}

TEST_CASE("On a stair the centre is taken from the line through the nosings") {
    wall::Project project = stair_gallery();
    const geometry::FloorLine floor(project.room.outline);
    for (const char* id : {"s1", "s2", "s3"}) {
        wall::Piece& piece = piece_named(project, id);
        const double middle = piece.at->x + 200;
        piece.at->y = floor.at(middle) + 1500 - 250;
    }
    CHECK(findings_of("centre-line", project).empty());
    for (const char* id : {"s1", "s2", "s3"})
        piece_named(project, id).at->y += 80;
    const std::vector<wall::Finding> findings = findings_of("centre-line", project);
    REQUIRE(findings.size() == 3);
    for (const wall::Finding& finding : findings) {
        CHECK(*finding.measured == Approx(1580));
        CHECK(finding.text.find("is 1580 mm above the floor") != std::string::npos);
        CHECK(finding.text.find("lower it by 30 mm") != std::string::npos);
    }
}
