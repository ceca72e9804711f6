#include "buying/list_words.h"
#include "looking.h"
#include "pages/list_csv.h"
#include "pages/sheet_list.h"
#include "pages/sheet_loads.h"
#include "support/gallery.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::pages;
using namespace wallwright::test;

namespace {

rules::Assessment assessed(const wall::Project& project) {
    return rules::assess(project, scenes::small_catalogue());
}

void check_pages(const std::vector<draw::PageDrawing>& pages) {
    REQUIRE_FALSE(pages.empty());
    for (const draw::PageDrawing& page : pages) {
        CHECK(collisions(page.shapes).empty());
        CHECK(outside(page.shapes, page.extent).empty());
    }
}

}  // namespace

TEST_CASE("All that is to be bought and to have at hand stands on the list, each with its box") {
    wall::Project project = scenes::attic_gallery();
    project.stock = {{wall::FixingTypeId{"strip_medium"}, 0, 4, 5.5}};
    const rules::Assessment assessment = assessed(project);
    const buying::List list = buying::shopping_list(project, assessment, nullptr);
    REQUIRE_FALSE(list.items.empty());
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const auto pages = list_sheets(project, assessment, {paper, ""});
        check_pages(pages);
        std::string words;
        for (const draw::PageDrawing& page : pages)
            words += words_in(page.shapes);
        for (const buying::Item& item : list.items)
            CHECK(words.find(item.amount) != std::string::npos);
        CHECK(words.find(buying::total_words(list)) != std::string::npos);
        CHECK(words.find("Tools to have at hand") != std::string::npos);
    }
}

TEST_CASE("A wall with nothing to buy says so") {
    const wall::Project project = scenes::wall_of(4000, 2500);
    const auto pages = list_sheets(project, assessed(project), {Paper::a4, ""});
    REQUIRE(pages.size() == 1);
    CHECK(has_text(pages[0].shapes, "Nothing is to be bought for this wall."));
}

TEST_CASE("The list for other programs quotes what has a comma, and leaves unknown prices empty") {
    buying::List list;
    list.items = {{buying::Kind::frames, "Frame, \"plain\"", "2 frames", "for Kelp", 24.5, true},
                  {buying::Kind::other, "Alcohol", "1 bottle"}};
    list.remarks = {"Do not buy screws yet."};
    CHECK(list_csv(list) ==
          "kind,title,amount,why,price,later\r\n"
          "frames,\"Frame, \"\"plain\"\"\",2 frames,for Kelp,24.50,yes\r\n"
          "other,Alcohol,1 bottle,,,no\r\n"
          "remark,Do not buy screws yet.,,,,\r\n");
}

TEST_CASE("The load check draws the forces once for each way of hanging") {
    wall::Project project = scenes::wall_of(6000, 2500);
    const wall::HangerType hangers[] = {wall::HangerType::strips, wall::HangerType::sawtooth,
                                        wall::HangerType::two_rings, wall::HangerType::strips,
                                        wall::HangerType::cord_two_hooks};
    double x = 200;
    for (const wall::HangerType hanger : hangers) {
        const std::string id = "p" + std::to_string(static_cast<int>(x));
        wall::Piece& piece = scenes::add_piece(project, id, {x, 1300}, {400, 500});
        piece.hanger.type = hanger;
        piece.weighed = units::Kilograms{1 + x / 4000};
        x += 600;
    }
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const auto pages = load_sheets(project, assessed(project), {paper, ""});
        check_pages(pages);
        int weights = 0;
        for (const draw::PageDrawing& page : pages)
            weights += count_text(page.shapes, "weight");
        CHECK(weights == 4);  // a key for each drawing
    }
}

TEST_CASE("The load check says of a fixing that does not hold no share that looks well") {
    wall::Project project = scenes::wall_of(4000, 2500);
    wall::Piece& piece = scenes::add_piece(project, "kelp", {1000, 1300}, {400, 500});
    piece.weighed = units::Kilograms{1};
    project.frames.front().rough_back = true;
    rules::Assessment assessment = assessed(project);
    const auto pages = load_sheets(project, assessment, {Paper::a4, ""});
    CHECK(has_text(pages[0].shapes, "does not hold"));
    CHECK(words_in(pages[0].shapes).find("within") == std::string::npos);
    project.frames.front().rough_back = false;
    assessment = assessed(project);
    CHECK(words_in(load_sheets(project, assessment, {Paper::a4, ""})[0].shapes).find("within") !=
          std::string::npos);
}

TEST_CASE("The load check says where cheaper fixings may be possible") {
    wall::Project project = scenes::wall_of(4000, 2500);
    scenes::add_piece(project, "kelp", {1000, 1300}, {400, 500}).weighed = units::Kilograms{1};
    rules::Assessment assessment = assessed(project);
    const auto words = [&] {
        std::string all;
        for (const draw::PageDrawing& page : load_sheets(project, assessment, {Paper::a4, ""}))
            all += words_in(page.shapes);
        return all;
    };
    CHECK(words().find("Cheaper fixings") == std::string::npos);
    assessment.hangings.front().best_known = false;
    CHECK(words().find("Cheaper fixings may be possible") != std::string::npos);
    const buying::List list = buying::shopping_list(project, assessment, nullptr);
    REQUIRE_FALSE(list.remarks.empty());
    CHECK(list.remarks.front().find("Cheaper fixings") == 0);
}
