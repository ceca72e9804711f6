#include "rules/glass.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;

namespace {

/// Whether a pane of 2 mm with this density is taken for glass.
bool is_glass(double density) {
    const wall::Project project;
    wall::Catalogue catalogue;
    catalogue.materials.push_back({{"pane"}, "Pane", density, density, "", {}});
    wall::Frame frame;
    frame.glazing = {{"pane"}, 2};
    return has_glass({project, catalogue, {}, {}, {}, {}}, frame);
}

}  // namespace

TEST_CASE("Glass is told from plastics by its density") {
    CHECK(is_glass(2500));        // float glass, EN 572-1
    CHECK_FALSE(is_glass(1190));  // acrylic (a materials table; ISO 7823 is the sheet standard)
    CHECK_FALSE(is_glass(1070));  // polystyrene, Cardarelli, Materials Handbook (2018)
}

TEST_CASE("No pane is no glass, and an unknown pane is glass") {
    const wall::Project project;
    const wall::Catalogue catalogue;
    const Scene scene{project, catalogue, {}, {}, {}, {}};
    wall::Frame frame;
    frame.glazing = {{"glass"}, 0};
    CHECK_FALSE(has_glass(scene, frame));
    frame.glazing.thickness = 2;
    CHECK(has_glass(scene, frame));
}
