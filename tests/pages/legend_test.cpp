#include "pages/legend.h"

#include "pages/looking.h"
#include "pages/sheets.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::pages;

namespace {

wall::Project two_pieces() {
    wall::Project project = scenes::wall_of(2000, 2200);
    scenes::add_hung(project, "kelp", {600, 1300}, {300, 400});
    scenes::add_piece(project, "dune", {960, 1300}, {310, 410});
    return project;
}

bool is_explained_on_paper(const wall::Project& project) {
    const rules::Assessment assessment = rules::assess(project, scenes::small_catalogue());
    const auto all = sheets(project, assessment, {Paper::a4, ""});
    return test::has_text(all.front().shapes, "not bought yet");
}

}  // namespace

TEST_CASE("Dashed outlines are explained on paper where there are frames not bought yet") {
    wall::Project project = two_pieces();
    CHECK_FALSE(is_explained_on_paper(project));
    project.pieces[1].wished = true;
    CHECK(is_explained_on_paper(project));
}

TEST_CASE("A legend keeps to its width and leaves out what does not fit") {
    for (const double width : {40.0, 90.0, 180.0, 270.0}) {
        Shapes shapes;
        add_legend(shapes, {10, 20}, width, {true, true});
        CAPTURE(width);
        CHECK(test::outside(shapes, {{10, 15}, {10 + width, 25}}) == std::vector<std::string>{});
        CHECK(test::collisions(shapes) == std::vector<std::string>{});
    }
}
