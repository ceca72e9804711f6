#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;

namespace {

constexpr const char* kRule = "furniture-on-wall";

}  // namespace

TEST_CASE("A sofa that does not end where the wall does was measured or typed wrong") {
    wall::Project project = wall_of(3600, 2400);
    auto& sofa = add_furniture(project, wall::FurnitureType::sofa,
                               wall::Rect<wall::Wall>::at({2100, 0}, {1900, 800}));
    const wall::Finding found = only_finding(kRule, project);
    CHECK(found.severity == wall::Severity::mind);
    CHECK(found.text ==
          "400 mm of the sofa lies past the right end of the wall; measure again where it begins "
          "and how wide it is.");
    sofa.place = wall::Rect<wall::Wall>::at({-150, 0}, {1900, 800});
    CHECK(only_finding(kRule, project).measured == Approx(150));
    sofa.place = wall::Rect<wall::Wall>::at({1700, 0}, {1900, 800});
    CHECK(findings_of(kRule, project).empty());
}

TEST_CASE("A door past the end of the wall is told as well") {
    wall::Project project = wall_of(3600, 2400);
    add_fixture(project, wall::FixtureType::door,
                wall::Rect<wall::Wall>::at({3200, 0}, {800, 2000}));
    CHECK(only_finding(kRule, project).text.starts_with("400 mm of the door lies past"));
}
