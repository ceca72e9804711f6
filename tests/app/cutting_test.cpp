// What a person takes to the cutting table: cutting sheets, the plan of the card, the stock after.
#include "app/actions.h"
#include "at_the_bench.h"
#include "pages/render.h"
#include "pages/sheet_card.h"
#include "pages/sheets.h"

#include <catch2/catch.hpp>

#include <chrono>
#include <thread>

using namespace wallwright;
using namespace wallwright::app;

using For = FileDialog::For;

namespace {

/// Oak with Ebb and Ash with Reed wait; one sheet of card is at hand.
wall::Project two_to_cut() {
    wall::Project project = scenes::wall_of(3600, 2400);
    project.title = "Hall";
    project.prints = {print_of("ebb", 280, 380), print_of("reed", 130, 180)};
    for (const auto& [id, size, print] : {std::tuple("oak", wall::Size{430, 530}, "ebb"),
                                          std::tuple("ash", wall::Size{250, 300}, "reed")}) {
        project.mounts.emplace_back().id = {print};
        wall::Piece& piece = scenes::add_waiting(project, id, size);
        piece.print = wall::PrintId{print};
        piece.mount = wall::MountId{print};
    }
    wall::CardSheet sheet;
    sheet.id = {"cream"};
    sheet.title = "Cream";
    sheet.size = {1120, 815};
    project.card.push_back(sheet);
    return project;
}

wall::Project all_cut() {
    wall::Project project = two_to_cut();
    for (wall::Piece& piece : project.pieces)
        piece.mount_cut = true;
    return project;
}

struct Cutter : Person {
    explicit Cutter(wall::Project project = two_to_cut(), ImVec2 size = {1280, 800})
        : Person(std::move(project), size) {
        state.card.choice.options.seconds = 600;
        state.card.choice.options.rounds = 2;
        window.key("3");
    }
    /// With the card laid out, of these pieces alone or of all.
    void look_at_card(std::vector<wall::PieceId> only = {}) {
        state.card.choice.options.only = std::move(only);
        window.click("bench/view-card");
        wait();
    }
    /// Until the card is laid out: a plan that comes moves what is below it in the column.
    void wait() {
        using namespace std::chrono_literals;
        for (int i = 0; i < 20000; ++i) {
            window.frame();
            if (!state.card.choice.is_stale() && !state.card.choice.is_running())
                return window.settle();
            std::this_thread::sleep_for(1ms);
        }
        FAIL("the card is never laid out");
    }
    [[nodiscard]] std::string written(For what) {
        const std::string file = folder.file("out.pdf");
        REQUIRE(export_to(state, what, file));
        return test::read_whole(file);
    }
    /// All that there is, with this plan.
    [[nodiscard]] std::string sheets_with(std::optional<mounts::CardPlan> plan) const {
        const wall::Project& project = state.session.kept();
        pages::SheetOptions options;
        options.picture_folder = state.session.picture_folder();
        options.card = std::move(plan);
        return pages::to_pdf(pages::sheets(project, state.session.assessment(), options),
                             project.title);
    }
    [[nodiscard]] std::string sheets_with_own_plan() const {
        return sheets_with(pages::card_plan_for_sheets(state.session.kept(), [] { return true; }));
    }
    [[nodiscard]] std::string text_of(const std::string& file) const {
        return test::run("pdftotext -layout " + folder.file(file) + " -").out;
    }
};

}  // namespace

TEST_CASE("The sheets to print have the plan of the card that is on the bench") {
    Cutter person;
    person.look_at_card({wall::PieceId{"ash"}});  // Another than the sheets would work out.
    const std::string shown = person.sheets_with(*person.state.card.choice.plan());
    REQUIRE(shown != person.sheets_with_own_plan());
    CHECK(person.written(For::sheets) == shown);
    person.window.key("4");
    CHECK(person.written(For::sheets) == shown);
}

TEST_CASE("A plan of the wall as it was before is not printed") {
    Cutter person;
    CHECK(person.written(For::sheets) == person.sheets_with_own_plan());
    person.look_at_card({wall::PieceId{"ash"}});
    person.window.click("bench/view-mount");
    person.state.session.selection.set(wall::PieceId{"oak"});
    person.window.settle();
    person.window.click("mount/cut");
    REQUIRE(person.state.session.kept().pieces[0].mount_cut);
    CHECK(person.written(For::sheets) == person.sheets_with_own_plan());
    CHECK_FALSE(export_to(person.state, For::card_plan, person.folder.file("card.pdf")));
    person.window.key("Ctrl+K");
    CHECK_FALSE(person.has_dialog());
}

TEST_CASE("Cutting sheets of all mounts are written from the view of mounts") {
    Cutter person;
    person.state.last_folder = person.folder.path();
    for (const char* chosen : {"", "oak"}) {
        person.state.session.selection.clear();
        if (*chosen != '\0')
            person.state.session.selection.set(wall::PieceId{chosen});
        person.window.settle();
        person.window.click("action/cutting-sheets");
        REQUIRE(person.dialog<FileDialog>() != nullptr);
        CHECK(person.dialog<FileDialog>()->name == "hall-mounts.pdf");
        if (*chosen == '\0')
            close_dialog(person.state);
    }
    person.window.click("file-dialog/do");
    REQUIRE(person.state.session.notice);
    CHECK(
        person.state.session.notice->text.starts_with("Wrote hall-mounts.pdf. Print it at 100 %"));
    const std::string text = person.text_of("hall-mounts.pdf");
    CHECK(text.find("Oak") != std::string::npos);
    CHECK(text.find("Ash") != std::string::npos);
    CHECK(text.find("Measured elevation") == std::string::npos);
    CHECK(text.find("Card plan") == std::string::npos);
}

TEST_CASE("Beside the plan of the card it is written together with the cutting sheets") {
    Cutter person;
    person.state.last_folder = person.folder.path();
    person.look_at_card();
    person.window.click("action/plan-and-cutting");
    REQUIRE(person.dialog<FileDialog>() != nullptr);
    CHECK(person.dialog<FileDialog>()->name == "hall-cutting.pdf");
    person.window.click("file-dialog/do");
    CHECK_FALSE(person.has_dialog());
    const std::string text = person.text_of("hall-cutting.pdf");
    CHECK(text.find("Card plan") != std::string::npos);
    CHECK(text.find("Cream") != std::string::npos);
    CHECK(text.find("Measured elevation") == std::string::npos);
    CHECK(person.written(For::plan_and_cutting).size() >
          person.written(For::cutting_sheets).size());
}

TEST_CASE("Where no mount is to be cut, the buttons say why not and what to do") {
    Cutter person(all_cut());
    CHECK_FALSE(person.window.item("action/cutting-sheets").enabled);
    person.window.hover("action/cutting-sheets");
    CHECK(person.window.has("tip"));
    person.window.key("Ctrl+Shift+K");
    CHECK_FALSE(person.has_dialog());
    REQUIRE(person.state.session.notice);
    CHECK(person.state.session.notice->text.starts_with("Every mount here is cut."));
    person.look_at_card();
    CHECK_FALSE(person.window.item("action/plan-and-cutting").enabled);
    CHECK_FALSE(person.window.has("board/sheet/1-1"));
}

TEST_CASE("The reason why there are no cutting sheets is the nearest one") {
    wall::Project project = two_to_cut();
    CHECK(cutting_hindrance(project).empty());
    project.pieces[0].mount_cut = true;
    CHECK(cutting_hindrance(project).empty());
    project.pieces[1].print.reset();
    CHECK(cutting_hindrance(project).starts_with(
        "Every mount that can be is cut. The mount of Ash is left out."));
    project.pieces[0].mount_cut = false;
    project.pieces[0].print.reset();
    CHECK(cutting_hindrance(project).starts_with("The mount of Oak is left out."));
    project.pieces[0].mount_cut = true;
    project.pieces[1].mount.reset();
    CHECK(cutting_hindrance(project).starts_with("Every mount here is cut."));
    project.pieces[0].mount.reset();
    project.pieces[0].mount_cut = false;
    CHECK(cutting_hindrance(project).starts_with("No piece here has a mount."));
    wall::Project hung = wall_with_drawer();
    hung.pieces[0].state = wall::PieceState::hung;
    CHECK(cutting_hindrance(hung).starts_with("No mount is still to be cut"));
}

TEST_CASE("After the card is taken off the stock it is told what is cut and what was left") {
    Cutter person;
    person.look_at_card();
    person.window.click("card/use");
    REQUIRE(person.state.session.notice);
    const std::string& words = person.state.session.notice->text;
    CAPTURE(words);
    CHECK(words.starts_with("The mounts of Oak and Ash are cut; "));
    CHECK(words.ends_with(" joined the card."));
    CHECK_FALSE(person.state.session.notice->is_problem);
    int offcuts = 0;
    for (const wall::CardSheet& sheet : person.state.session.kept().card)
        offcuts += sheet.offcut ? sheet.count : 0;
    CHECK(words.find(std::to_string(offcuts) + " offcut") != std::string::npos);
}

TEST_CASE("Where a sheet was added the pointer does not rest on the button that removes one") {
    Cutter person(two_to_cut(), {1280, 600});
    person.look_at_card();
    person.window.click("card/sheet/1");
    for (std::size_t count = 2; count < 5; ++count) {
        person.wait();
        person.window.click("card/add");
        REQUIRE(person.state.session.kept().card.size() == count);
        person.window.settle();
        const ItemBox& remove = person.window.item("card/remove");
        const ImVec2 at = ImGui::GetIO().MousePos;
        CHECK_FALSE((at.x >= remove.min.x && at.x <= remove.max.x && at.y >= remove.min.y &&
                     at.y <= remove.max.y));
    }
}
