#include "app/bench/boards.h"

#include "app/actions.h"
#include "app/panels/panels.h"
#include "person.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <chrono>
#include <thread>

using namespace wallwright;
using namespace wallwright::app;

namespace {

const wall::PieceId kOak{"oak"};
const wall::PieceId kAsh{"ash"};
const wall::PrintId kReed{"reed"};
const wall::PrintId kEbb{"ebb"};

void add_print(wall::Project& project, const std::string& id, geometry::Size size) {
    wall::Print print;
    print.id = {id};
    print.title = id;
    print.size = size;
    project.prints.push_back(print);
}

/// Oak holds Reed, which is small for it and would do in Ash; Ebb would do in Oak. Both have a
/// mount, and there is one sheet of card to cut them from.
wall::Project bench_wall() {
    wall::Project project = scenes::wall_of(3600, 2400);
    scenes::add_waiting(project, "oak", {430, 530});
    scenes::add_waiting(project, "ash", {250, 300});
    add_print(project, "reed", {130, 180});
    add_print(project, "ebb", {280, 380});
    for (const char* id : {"first", "second"})
        project.mounts.emplace_back().id = {id};
    project.pieces[0].print = kReed;
    project.pieces[0].mount = wall::MountId{"first"};
    project.pieces[1].print = kEbb;
    project.pieces[1].mount = wall::MountId{"second"};
    wall::CardSheet sheet;
    sheet.id = {"cream"};
    sheet.title = "Cream";
    sheet.size = {1120, 815};
    project.card.push_back(sheet);
    return project;
}

/// Both frames have the print that they match.
wall::Project card_wall() {
    wall::Project project = bench_wall();
    project.pieces[0].print = kEbb;
    project.pieces[1].print = kReed;
    return project;
}

/// At the bench, with searches that end by themselves soon.
struct Bencher : Person {
    Bencher(const char* view, wall::Project project, ImVec2 size = {1280, 800}, float scale = 1)
        : Person(std::move(project), size, scale) {
        state.card.choice.options.seconds = 600;
        state.card.choice.options.rounds = 2;
        window.key("3");
        window.click(view);
        wait();
    }
    /// Until what runs in the background is done.
    void wait() {
        using namespace std::chrono_literals;
        for (int i = 0; i < 20000; ++i) {
            window.frame();
            const bool prints =
                state.bench.view == desk::BenchView::prints &&
                (state.prints.choice.is_stale() || state.prints.choice.is_running());
            const bool card = state.bench.view == desk::BenchView::card &&
                              (state.card.choice.is_stale() || state.card.choice.is_running());
            if (!prints && !card)
                return window.settle();
            std::this_thread::sleep_for(1ms);
        }
        FAIL("the work does not come to an end");
    }
    [[nodiscard]] ImVec2 middle(const std::string& name) {
        const ItemBox& box = window.item(name);
        return {(box.min.x + box.max.x) / 2, (box.min.y + box.max.y) / 2};
    }
    [[nodiscard]] std::optional<wall::PrintId> print_in(const wall::PieceId& piece) const {
        return wall::find(state.session.kept(), piece)->print;
    }
    [[nodiscard]] const wall::Project& kept() const { return state.session.kept(); }
};

struct PrintsBencher : Bencher {
    PrintsBencher() : Bencher("bench/view-prints", bench_wall()) {}
};

struct CardBencher : Bencher {
    CardBencher() : Bencher("bench/view-card", card_wall()) {}
};

}  // namespace

TEST_CASE("A print dragged onto a frame with the mouse is put into it, and undo takes it back") {
    PrintsBencher person;
    person.window.drag(person.middle("board/print/ebb"), person.middle("board/frame/oak"));
    CHECK(person.print_in(kOak) == kEbb);
    CHECK_FALSE(person.print_in(kAsh));
    person.window.key("Ctrl+Z");
    CHECK(person.kept() == bench_wall());
}

TEST_CASE("Escape gives up a print in the hand") {
    PrintsBencher person;
    person.window.move_to(person.middle("board/print/ebb"));
    person.window.press();
    person.window.move_to(person.middle("board/frame/oak"));
    CHECK(person.state.prints.hand.carried());
    person.window.key("Escape");
    CHECK_FALSE(person.state.prints.hand.is_busy());
    person.window.release();
    CHECK(person.kept() == bench_wall());
}

TEST_CASE("The button takes the whole match in one step, and then has nothing more to do") {
    PrintsBencher person;
    CHECK(person.window.item("prints/take-all").enabled);
    person.window.click("prints/take-all");
    CHECK(person.print_in(kOak) == kEbb);
    CHECK(person.print_in(kAsh) == kReed);
    person.wait();
    CHECK_FALSE(person.window.item("prints/take-all").enabled);
    person.window.key("Ctrl+Z");
    CHECK(person.kept() == bench_wall());
}

TEST_CASE("One pair is chosen from the list and taken alone") {
    PrintsBencher person;
    person.window.click("prints/pair/1");
    CHECK(person.state.prints.hand.chosen == kReed);
    person.window.click("prints/take");
    CHECK(person.print_in(kAsh) == kReed);
    CHECK_FALSE(person.print_in(kOak));
}

TEST_CASE("A chosen print is kept in its frame by a key, by the switch and by its lock") {
    PrintsBencher person;
    const auto is_kept = [&person] { return wall::find(person.kept(), kOak)->keeps_print; };
    person.window.click("board/print/reed");
    CHECK(person.state.prints.hand.chosen == kReed);
    person.window.key("K");
    CHECK(is_kept());
    person.window.click("prints/keep");
    CHECK_FALSE(is_kept());
    person.wait();
    person.window.click("board/lock/oak");
    CHECK(is_kept());
}

TEST_CASE("The rows of a chosen print change it") {
    PrintsBencher person;
    person.window.click("board/print/ebb");
    person.window.fill_in("prints/size", "20 x 30 cm");
    person.window.fill_in("prints/grams", "310");
    person.window.fill_in("prints/pixels", "1200 x 900");
    const wall::Print& print = *wall::find(person.kept(), kEbb);
    CHECK(print.size == geometry::Size{200, 300});
    CHECK(print.grams_per_square_metre == 310);
    CHECK(print.pixels == wall::PixelSize{1200, 900});
    person.window.fill_in("prints/pixels", "many");
    CHECK(wall::find(person.kept(), kEbb)->pixels == wall::PixelSize{1200, 900});
    person.window.key("Escape");
    person.window.fill_in("prints/pixels", " ");
    CHECK_FALSE(wall::find(person.kept(), kEbb)->pixels);
}

TEST_CASE("A print is added to the drawer, found by arrows and taken out again") {
    PrintsBencher person;
    person.window.click("prints/another");
    person.window.click("prints/add");
    REQUIRE(person.kept().prints.size() == 3);
    const wall::PrintId made = person.kept().prints.back().id;
    CHECK(person.state.prints.hand.chosen == made);
    person.wait();
    person.window.key("Right");
    CHECK(person.state.prints.hand.chosen != made);
    person.window.key("Left");
    CHECK(person.state.prints.hand.chosen == made);
    person.window.key("Delete");
    CHECK(person.kept() == bench_wall());
    CHECK_FALSE(person.state.prints.hand.chosen);
}

TEST_CASE("The pointer on a print brings up what it would cost, after a moment") {
    PrintsBencher person;
    person.window.hover("board/print/ebb");
    CHECK(person.window.has("tip"));
    person.window.move_to({5, 795});
    CHECK_FALSE(person.window.has("tip"));
}

TEST_CASE("A blank dragged to the corner of its sheet is kept there, and the plan goes about it") {
    CardBencher person;
    const ItemBox blank = person.window.item("board/blank/oak-1");
    const ItemBox sheet = person.window.item("board/sheet/1-1");
    const ImVec2 grip = person.middle("board/blank/oak-1");
    const ImVec2 to{sheet.max.x - (blank.max.x - grip.x) + 3,
                    sheet.max.y - (blank.max.y - grip.y) + 3};
    person.window.drag(grip, to);
    REQUIRE(person.kept().kept_blanks.size() == 1);
    person.wait();
    const ItemBox now = person.window.item("board/blank/oak-1");
    CHECK(now.max.x == Approx(sheet.max.x).margin(1));
    CHECK(now.max.y == Approx(sheet.max.y).margin(1));
    person.window.key("K");
    CHECK(person.kept().kept_blanks.empty());
    person.window.key("Ctrl+Z");
    person.window.key("Ctrl+Z");
    CHECK(person.kept() == card_wall());
}

TEST_CASE("R turns the blank in the hand") {
    CardBencher person;
    person.window.move_to(person.middle("board/blank/ash-1"));
    person.window.press();
    person.window.move_to(person.middle("board/sheet/1-1"));
    REQUIRE(person.state.card.hand.carried());
    const bool before = person.state.card.hand.carried()->turned;
    person.window.key("R");
    CHECK(person.state.card.hand.carried()->turned != before);
    person.window.key("Escape");
    person.window.release();
    CHECK(person.kept() == card_wall());
}

TEST_CASE("The lock of a blank keeps it where it lies") {
    CardBencher person;
    person.window.click("board/blank-lock/oak-1");
    REQUIRE(person.kept().kept_blanks.size() == 1);
    CHECK(person.kept().kept_blanks.front().piece == kOak);
}

TEST_CASE("The rows of a sheet change it, and sheets are added and removed") {
    CardBencher person;
    person.window.click("card/sheet/1");
    person.window.fill_in("card/count", "3");
    person.window.fill_in("card/margin", "8");
    CHECK(person.kept().card[0].count == 3);
    CHECK(person.kept().card[0].margin == 8);
    person.window.click("card/to-buy");
    CHECK(person.kept().card[0].to_buy);
    person.window.fill_in("card/price", "9,50");
    CHECK(person.kept().card[0].price == 9.5);
    person.window.fill_in("card/price", "cheap");
    CHECK(person.kept().card[0].price == 9.5);
    person.window.key("Escape");
    person.window.click("card/remove");
    CHECK(person.kept().card.empty());
    person.wait();
    person.window.click("card/add");
    REQUIRE(person.kept().card.size() == 1);
    CHECK(person.state.card.open_sheet == person.kept().card[0].id);
}

TEST_CASE("A card that nobody recorded is put among those to buy, and then has a price") {
    CardBencher person;
    person.window.click("card/sheet/1");
    person.window.click("card/remove");
    person.wait();
    person.window.click("card/record/1");
    REQUIRE(person.kept().card.size() == 1);
    CHECK(person.kept().card[0].to_buy);
    person.wait();
    CHECK_FALSE(person.window.has("card/record/1"));
    person.window.fill_in("card/cut-price", "14");
    CHECK(person.kept().mount_cut_price == 14);
}

TEST_CASE("A full sheet that is assumed beside those at hand is put among those to buy") {
    wall::Project project = card_wall();
    project.card[0].size = {230, 280};
    Bencher person("bench/view-card", project);
    person.window.click("card/record/1");
    REQUIRE(person.kept().card.size() == 2);
    CHECK(person.kept().card[1].to_buy);
    CHECK(person.kept().card[1].size == geometry::Size{1120, 815});
    person.wait();
    CHECK_FALSE(person.window.has("card/record/1"));
}

TEST_CASE("A card that suffices has nothing to be put among those to buy") {
    CardBencher person;
    CHECK_FALSE(person.window.has("card/record/1"));
}

TEST_CASE("What was cut is taken off the stock by one press") {
    CardBencher person;
    person.window.click("card/use");
    const auto& card = person.kept().card;
    CHECK(std::ranges::any_of(card, [](const wall::CardSheet& sheet) { return sheet.offcut; }));
    CHECK(card[0].count == 0);
}

TEST_CASE("The plan of the card is written as a PDF") {
    CardBencher person;
    person.window.click("action/card-plan");
    REQUIRE(person.dialog<FileDialog>() != nullptr);
    person.window.click("file-dialog/do");
    CHECK_FALSE(person.has_dialog());
    REQUIRE(person.state.session.notice);
    CHECK(person.state.session.notice->text.starts_with("Wrote "));
}

TEST_CASE("Every item of both columns can be reached at a large text and in a small window") {
    for (const char* view : {"bench/view-prints", "bench/view-card"}) {
        Bencher person(view, card_wall(), {960, 600}, 1.5F);
        CHECK(person.overlaps("prints/").empty());
        CHECK(person.overlaps("card/").empty());
        CHECK(person.overlaps("board/print").empty());
        CHECK(person.overlaps("board/blank/").empty());
    }
}

TEST_CASE("Another wall comes with nothing of the boards of the one before") {
    PrintsBencher person;
    person.window.click("board/print/ebb");
    show(person.state, desk::Session(scenes::wall_of(3000, 2400)));
    person.window.key("3");
    person.window.click("bench/view-prints");
    person.wait();
    CHECK_FALSE(person.state.prints.hand.chosen);
    CHECK_FALSE(person.window.has("board/print/ebb"));
    CHECK_FALSE(person.window.has("prints/take-all"));
    person.window.click("bench/view-card");
    person.wait();
    CHECK_FALSE(person.window.has("board/sheet/1-1"));
}
