// The views of the step hang: the pages before they are printed, and the day at the wall.
#include "app/actions.h"
#include "app/hang/hang_parts.h"
#include "at_the_bench.h"
#include "pages/render.h"
#include "pages/sheet_card.h"
#include "pages/sheets.h"
#include "store/files.h"

#include <catch2/catch.hpp>

#include <chrono>
#include <thread>

using namespace wallwright;
using namespace wallwright::app;

using desk::HangView;
using pages::SheetPart;

namespace {

using wall::PieceId;
using wall::PieceState;

wall::Project hall() {
    wall::Project project = wall_with_drawer();
    scenes::add_piece(project, "tide", {1500, 1300}, {300, 400});
    return project;
}

struct Hanger : Person {
    explicit Hanger(wall::Project project = hall(), ImVec2 size = {1280, 800}, float scale = 1)
        : Person(std::move(project), size, scale) {
        window.key("5");
    }
    void see(const char* view) {
        window.click(view);
        wait();
    }
    /// Until the pages are those of the wall and the choice as they are now.
    void wait() {
        using namespace std::chrono_literals;
        window.settle();
        if (state.hang_view != HangView::pages)
            return;
        for (int i = 0; i < 2'000 && state.preview.is_stale(); ++i) {
            std::this_thread::sleep_for(10ms);
            window.frame();
        }
        REQUIRE_FALSE(state.preview.is_stale());
        window.settle();
    }
    [[nodiscard]] pages::SheetOptions options() const {
        pages::SheetOptions options;
        for (std::size_t i = 0; i < kSheetParts; ++i)
            if (state.preview.choice.parts[i])
                options.parts.push_back(static_cast<SheetPart>(i));
        options.paper = paper_of(state.preview.choice, state.session.kept().unit);
        options.templates = state.preview.choice.templates;
        options.picture_folder = state.session.picture_folder();
        if (state.preview.choice.has(SheetPart::card))
            options.card = pages::card_plan_for_sheets(state.session.kept(), [] { return true; });
        return options;
    }
    [[nodiscard]] std::vector<draw::PageDrawing> printed() const {
        return pages::sheets(state.session.kept(), state.session.assessment(), options());
    }
    [[nodiscard]] std::vector<draw::PageDrawing> shown() const {
        std::vector<draw::PageDrawing> pages;
        for (const ShownPage& page : state.preview.pages())
            pages.push_back(printed_page(page));
        return pages;
    }
    [[nodiscard]] PieceState state_of(const char* id) const {
        return wall::find(state.session.kept(), PieceId{id})->state;
    }
};

}  // namespace

TEST_CASE("The views of the step hang are chosen by buttons and keys, Escape goes to the wall") {
    Hanger person;
    CHECK(person.window.has("canvas"));
    person.see("hang/view-pages");
    CHECK_FALSE(person.window.has("canvas"));
    CHECK(person.window.has("pages/page"));
    person.window.key("Escape");
    CHECK(person.state.hang_view == HangView::wall);
    person.window.key("4");
    person.window.key("M");
    person.window.settle();
    CHECK(person.state.step == desk::Step::hang);
    CHECK(person.window.has("day/done"));
    person.window.key("V");
    CHECK(person.state.hang_view == HangView::pages);
    person.window.click("hang/view-wall");
    CHECK(person.window.has("canvas"));
}

TEST_CASE("The preview shows the very pages that are printed, for whatever is chosen") {
    Hanger person;
    person.see("hang/view-pages");
    CHECK(person.shown() == person.printed());
    CHECK_FALSE(person.shown().empty());
    person.window.click("pages/part/templates");
    person.wait();
    const std::size_t all = person.shown().size();
    CHECK(person.shown() == person.printed());
    for (const char* part : {"elevation", "loads", "findings", "list", "card", "mounts"})
        person.window.click(std::string("pages/part/") + part);
    person.wait();
    CHECK(person.shown() == person.printed());
    CHECK(person.shown().size() < all);
    person.window.click("pages/paper");
    person.window.click("pages/paper/2");
    person.wait();
    REQUIRE_FALSE(person.shown().empty());
    CHECK(person.shown().front().extent.height() == Approx(420));
    CHECK(person.shown() == person.printed());
    for (const char* part : {"marks", "templates"})
        person.window.click(std::string("pages/part/") + part);
    person.wait();
    CHECK(person.shown().empty());
    CHECK_FALSE(person.window.item("pages/save").enabled);
}

TEST_CASE("The pages follow the wall") {
    Hanger person;
    person.see("hang/view-pages");
    const auto before = person.shown();
    person.work();
    person.wait();
    CHECK_FALSE(person.shown() == before);
    CHECK(person.shown() == person.printed());
    person.window.key("Ctrl+Z");
    person.wait();
    CHECK(person.shown() == before);
}

TEST_CASE("What is saved from the preview are its pages and no others") {
    Hanger person;
    person.see("hang/view-pages");
    person.window.click("pages/part/loads");
    person.window.click("pages/part/findings");
    person.wait();
    if (GENERATE(true, false))
        person.window.click("pages/save");
    else
        person.window.key("Ctrl+P");
    REQUIRE(person.dialog<FileDialog>() != nullptr);
    CHECK(person.dialog<FileDialog>()->what == FileDialog::For::chosen_sheets);
    const std::string file = person.folder.file("pages.pdf");
    const FileDialog dialog = *person.dialog<FileDialog>();
    REQUIRE(file_chosen(person.state, dialog, file));
    CHECK(*store::read_file(file) ==
          pages::to_pdf(person.printed(), person.state.session.kept().title));
    CHECK(person.state.session.notice->text.starts_with("Wrote pages.pdf. Print it at 100 %"));
}

TEST_CASE("Elsewhere the sheets are all there are, on the paper that was chosen in the preview") {
    Hanger person;
    person.state.preview.choice.paper = pages::Paper::a3;
    person.state.preview.choice.parts.fill(false);
    const std::string file = person.folder.file("all.pdf");
    REQUIRE(export_to(person.state, FileDialog::For::sheets, file));
    person.state.preview.choice = {};
    person.state.preview.choice.paper = pages::Paper::a3;
    CHECK(*store::read_file(file) ==
          pages::to_pdf(person.printed(), person.state.session.kept().title));
}

TEST_CASE("Keys, arrows and small pages turn the pages, and the row says which it is") {
    Hanger person;
    person.see("hang/view-pages");
    const std::size_t count = person.shown().size();
    REQUIRE(count > 3);
    CHECK(page_words(person.state.preview) ==
          "Page 1 of " + std::to_string(count) + "  ·  Elevation");
    person.window.key("PageDown");
    person.window.key("Right");
    CHECK(person.state.preview.page == 2);
    person.window.key("Up");
    CHECK(person.state.preview.page == 1);
    person.window.key("End");
    CHECK(person.state.preview.page == count - 1);
    person.window.key("PageDown");
    CHECK(person.state.preview.page == count - 1);
    person.window.key("Home");
    person.window.key("PageUp");
    CHECK(person.state.preview.page == 0);
    person.window.click("pages/small/3");
    CHECK(person.state.preview.page == 2);
    person.window.click("pages/before");
    CHECK(person.state.preview.page == 1);
    person.window.click("pages/next");
    CHECK(person.state.preview.page == 2);
    CHECK_FALSE(person.state.session.history().can_undo());
}

TEST_CASE("All of a page is in sight until one zooms or drags, and F shows all of it again") {
    Hanger person;
    person.see("hang/view-pages");
    const auto is_whole = [&] {
        const ItemBox& area = person.window.item("pages/page");
        const auto page = person.state.preview.look.view.to_screen()(
            person.state.preview.pages()[person.state.preview.page].drawing.extent);
        return page.min.x >= area.min.x && page.max.x <= area.max.x && page.min.y >= area.min.y &&
               page.max.y <= area.max.y;
    };
    CHECK(is_whole());
    person.window.key("PageDown");
    person.window.settle();
    CHECK(is_whole());
    const ItemBox area = person.window.item("pages/page");
    const ImVec2 middle{(area.min.x + area.max.x) / 2, (area.min.y + area.max.y) / 2};
    person.window.move_to(middle);
    person.window.wheel(6);
    CHECK_FALSE(is_whole());
    const auto before = person.state.preview.look.view.to_screen().origin;
    person.window.drag(middle, {middle.x + 50, middle.y + 20});
    CHECK(person.state.preview.look.view.to_screen().origin.x > before.x + 10);
    person.window.key("F");
    person.window.settle();
    CHECK(is_whole());
}

TEST_CASE("Keys for the wall do nothing to it while it is out of sight, and say so") {
    Hanger person;
    for (const char* view : {"hang/view-pages", "hang/view-day"}) {
        person.see(view);
        for (const char* key : {"G", "C", "P", "Delete", "Ctrl+Left"}) {
            person.state.session.selection.set(PieceId{"kelp"});
            person.window.key(key);
            REQUIRE(person.state.session.notice);
            CHECK(person.state.session.notice->text.ends_with(
                "is for the wall; Escape shows it again."));
            CHECK_FALSE(person.state.session.history().can_undo());
        }
    }
}

TEST_CASE("Step by step a piece is marked, fixed and hung by button or by key") {
    Hanger person;
    person.see("hang/view-day");
    const PieceId first = person.state.day.now()->piece;
    CHECK(person.window.has("day/across"));
    CHECK(person.window.has("day/up"));
    while (person.state.day.now()->kind != desk::DeedKind::fix)
        person.window.click("day/done");
    CHECK_FALSE(person.window.has("day/across"));
    person.window.key("Space");
    CHECK(person.state.day.now()->kind == desk::DeedKind::hang);
    CHECK(person.state_of(first.text.c_str()) == PieceState::planned);
    person.window.key("Enter");
    CHECK(person.state_of(first.text.c_str()) == PieceState::hung);
    CHECK(person.state.day.now()->piece != first);
    person.window.key("Backspace");
    CHECK(person.state.day.now()->piece == first);
    CHECK(person.state_of(first.text.c_str()) == PieceState::hung);
    person.window.click("day/take-back");
    CHECK(person.state_of(first.text.c_str()) == PieceState::planned);
    person.window.click("day/done");
    person.window.key("Ctrl+Z");
    person.window.settle();
    CHECK(person.state_of(first.text.c_str()) == PieceState::planned);
    CHECK(person.state.day.now()->kind == desk::DeedKind::hang);
}

TEST_CASE("The column lists the day's pieces, goes to one, and begins the day again") {
    Hanger person;
    person.see("hang/view-day");
    const std::vector<desk::UpToday> today = person.state.day.today();
    REQUIRE(today.size() == 2);
    CHECK_FALSE(person.window.item("day/again").enabled);
    const char* const second = today[1].piece == PieceId{"kelp"} ? "day/piece/A" : "day/piece/C";
    person.window.click(second);
    CHECK(person.state.day.at() == today[1].first);
    person.window.click("day/skip");
    person.window.click("day/done");
    CHECK(person.state.day.is_done(today[1].first + 1));
    person.window.click("day/again");
    CHECK(person.state.day.at() == 0);
    CHECK_FALSE(person.state.day.is_done(today[1].first + 1));
    while (person.state.day.now() != nullptr)
        person.window.key("Space");
    person.window.settle();
    CHECK(person.window.has("day/end"));
    person.window.click("day/wall");
    CHECK(person.window.has("canvas"));
}

TEST_CASE("The large numbers are read from two metres, in every window") {
    const auto [width, height, scale] =
        GENERATE(std::tuple(1280.F, 800.F, 1.F), std::tuple(1920.F, 1080.F, 1.F),
                 std::tuple(760.F, 700.F, 1.F), std::tuple(1280.F, 800.F, 2.F));
    wall::Project project = hall();
    project.unit = GENERATE(units::LengthUnit::mm, units::LengthUnit::inch);
    Hanger person(project, {width, height}, scale);
    person.see("hang/view-day");
    CAPTURE(width, height, scale);
    for (const char* name : {"day/across", "day/up"}) {
        const ItemBox& box = person.window.item(name);
        CHECK(box.max.y - box.min.y >= 0.9F * 44 * 0.7F);
        CHECK(box.max.x <= box.clip.z);
    }
    CHECK(person.cut_off("day/done") == std::vector<std::string>{});
    CHECK(person.cut_off("day/back") == std::vector<std::string>{});
    CHECK(person.overlaps("day/") == std::vector<std::string>{});
    CHECK(person.overlaps("hang/view") == std::vector<std::string>{});
    CHECK(person.window.item("day/done").max.y - person.window.item("day/done").min.y >= 44);
}

TEST_CASE("Nothing beside the pages overlaps or is cut off") {
    const auto [width, scale] =
        GENERATE(std::pair(1280.F, 1.F), std::pair(1920.F, 1.F), std::pair(1280.F, 2.F));
    Hanger person(hall(), {width, 800}, scale);
    person.see("hang/view-pages");
    person.window.click("pages/part/templates");
    person.wait();
    CAPTURE(width, scale);
    CHECK(person.cut_off("hang/view") == std::vector<std::string>{});
    CHECK(person.overlaps("pages/part") == std::vector<std::string>{});
    CHECK(person.overlaps("pages/small") == std::vector<std::string>{});
    CHECK(person.cut_off("pages/where") == std::vector<std::string>{});
    std::vector<std::string> beyond;
    for (const auto& [name, box] : person.window.ui.probe.items())
        if (name.starts_with("pages/") && (box.min.x < box.clip.x || box.max.x > box.clip.z))
            beyond.push_back(name);
    CHECK(beyond == std::vector<std::string>{});
}

TEST_CASE("Another wall begins with its own pages and its own day") {
    Hanger person;
    person.see("hang/view-day");
    person.window.key("Space");
    person.window.key("V");
    person.wait();
    show(person.state, desk::Session(scenes::wall_of(2000, 2400)));
    CHECK(person.state.hang_view == HangView::wall);
    CHECK(person.state.preview.pages().empty());
    CHECK(person.state.day.deeds().empty());
    person.window.settle();
    person.window.key("M");
    person.window.settle();
    CHECK(person.window.has("day/nothing"));
}
