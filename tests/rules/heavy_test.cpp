#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::Severity;

namespace {

wall::Project kelp_weighing(double kg) {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1000}, {900, 900});
    piece_named(project, "kelp").weighed = units::Kilograms{kg};
    return project;
}

}  // namespace

TEST_CASE("A very heavy piece is for a professional") {
    const wall::Finding finding = only_finding("heavy", kelp_weighing(23));
    CHECK(finding.severity == Severity::mind);
    CHECK(*finding.measured == Approx(23.46));
    CHECK(finding.wanted == 20);
    CHECK(finding.text ==
          "Kelp weighs up to 23.46 kg; over 20.00 kg, let a professional choose the fixings and "
          "hang it.");
}

TEST_CASE("Up to 20 kg on the high side a person can hang it") {
    CHECK(findings_of("heavy", kelp_weighing(19.6)).empty());
    CHECK(findings_of("heavy", kelp_weighing(19.62)).size() == 1);
}

TEST_CASE("The 50 lb at which to get professional help are over the bound") {
    // Earthquake Country Alliance, "Secure your hanging objects": over 50 lb get professional help.
    CHECK(findings_of("heavy", kelp_weighing(50 * units::kKgPerPound)).size() == 1);
}
