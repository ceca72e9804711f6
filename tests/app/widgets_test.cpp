#include "app/widgets.h"

#include "app/row.h"
#include "headless.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

namespace {

using namespace wallwright;
using app::Headless;
using app::Ui;
using units::LengthUnit;

/// Draws something in a window as wide as the column.
template <class Draw>
Headless::Draw in_column(Draw draw) {
    return [draw](Ui& ui) {
        ImGui::SetNextWindowPos({0, 0});
        ImGui::SetNextWindowSize({ui.px(330), ui.px(600)});
        ImGui::Begin("column", nullptr, ImGuiWindowFlags_NoTitleBar);
        draw(ui);
        ImGui::End();
    };
}

/// A length row and what it gave.
struct LengthScene {
    double mm = 420;
    std::vector<double> given;
    LengthUnit unit = LengthUnit::mm;
    Headless hands;

    explicit LengthScene(LengthUnit of = LengthUnit::mm) : unit(of) {
        hands.frame(in_column([this](Ui& ui) {
            if (const auto typed = app::length_row(ui, "test/width", "Width", mm, unit)) {
                given.push_back(*typed);
                mm = *typed;
            }
            app::length_row(ui, "test/other", "Other", 10, unit);
        }));
        hands.settle();
    }
};

}  // namespace

TEST_CASE("A length that is typed over in another unit is given once, in mm") {
    LengthScene scene;
    scene.hands.fill_in("test/width", "16 1/2 in");
    REQUIRE(scene.given.size() == 1);
    CHECK(scene.given.front() == Approx(419.1));
}

TEST_CASE("A bare number is in the project's unit") {
    LengthScene scene(LengthUnit::cm);
    scene.hands.fill_in("test/width", "42.5");
    CHECK(scene.given == std::vector<double>{425});
}

TEST_CASE("A field that is left for another gives its length") {
    LengthScene scene;
    scene.hands.click("test/width");
    scene.hands.key("Ctrl+A");
    scene.hands.type("500");
    CHECK(scene.given.empty());
    SECTION("with the pointer") {
        scene.hands.click("test/other");
    }
    SECTION("with the tabulator") {
        scene.hands.key("Tab");
    }
    SECTION("for nothing at all") {
        scene.hands.click_at({100, 500});
    }
    CHECK(scene.given == std::vector<double>{500});
}

TEST_CASE("A field that was entered and left as it was gives nothing") {
    // 1000 mm is shown as 39 3/8 in, which is 1000.125 mm.
    LengthScene scene(LengthUnit::inch);
    scene.mm = 1000;
    scene.hands.click("test/width");
    scene.hands.key("Enter");
    CHECK(scene.given.empty());
}

TEST_CASE("Escape gives up what was typed") {
    LengthScene scene;
    scene.hands.click("test/width");
    scene.hands.key("Ctrl+A");
    scene.hands.type("500");
    scene.hands.key("Escape");
    scene.hands.click("test/other");
    CHECK(scene.given.empty());
}

TEST_CASE("Words that are no length stay in the field with the reason below it") {
    LengthScene scene;
    scene.hands.fill_in("test/width", "wide");
    CHECK(scene.given.empty());
    REQUIRE(scene.hands.has("test/width/reason"));
    SECTION("the keyboard stays there, so that the words can be mended") {
        scene.hands.key("Ctrl+A");
        scene.hands.type("500");
        scene.hands.key("Enter");
        CHECK(scene.given == std::vector<double>{500});
        CHECK_FALSE(scene.hands.has("test/width/reason"));
    }
    SECTION("Escape brings the value back") {
        scene.hands.key("Escape");
        CHECK_FALSE(scene.hands.has("test/width/reason"));
    }
    SECTION("they stay when the field is left") {
        scene.hands.click("test/other");
        CHECK(scene.hands.has("test/width/reason"));
    }
}

TEST_CASE("Width and height are typed in one field") {
    Headless hands;
    std::optional<wall::Size> given;
    hands.frame(in_column([&given](Ui& ui) {
        if (const auto typed = app::size_row(ui, "test/size", "Size", {100, 200}, LengthUnit::mm))
            given = typed;
    }));
    hands.settle();
    hands.fill_in("test/size", "30 x 40 cm");
    CHECK(given == wall::Size{300, 400});
}

TEST_CASE("A count is a whole number within its range") {
    Headless hands;
    std::vector<int> given;
    hands.frame(in_column([&given](Ui& ui) {
        if (const auto typed = app::count_row(ui, "test/count", "How many", 1, "", {1, 60}))
            given.push_back(*typed);
    }));
    hands.settle();
    for (const char* words : {"61", "0", "-3", "2.5", "many", "99999999999"}) {
        hands.fill_in("test/count", words);
        INFO(words);
        CHECK(hands.has("test/count/reason"));
        hands.key("Escape");
    }
    CHECK(given.empty());
    hands.fill_in("test/count", "60");
    CHECK(given == std::vector<int>{60});
}

TEST_CASE("A measure that may be missing can be taken away again") {
    Headless hands;
    std::optional<app::OptionalLength> given;
    hands.frame(in_column([&given](Ui& ui) {
        if (const auto typed =
                app::optional_length_row(ui, "test/drop", "Drop", 120, LengthUnit::mm))
            given = typed;
    }));
    hands.settle();
    hands.click("test/drop");
    hands.key("Ctrl+A");
    hands.key("Delete");
    hands.key("Enter");
    REQUIRE(given.has_value());
    CHECK_FALSE(given->mm.has_value());
}

TEST_CASE("A mass is typed in grams or kilograms and none below nothing is taken") {
    Headless hands;
    std::optional<app::OptionalMass> given;
    hands.frame(in_column([&given](Ui& ui) {
        if (const auto typed = app::mass_row(ui, "test/mass", "Weighed", {}, LengthUnit::mm))
            given = typed;
    }));
    hands.settle();
    hands.fill_in("test/mass", "-1 kg");
    CHECK_FALSE(given.has_value());
    hands.fill_in("test/mass", "1240 g");
    REQUIRE(given.has_value());
    REQUIRE(given->mass.has_value());
    CHECK(given->mass->value == Approx(1.24));
}

TEST_CASE("A choice gives the index of another word, and nothing for the same") {
    Headless hands;
    std::vector<int> given;
    const std::string words[] = {"left", "right"};
    hands.frame(in_column([&](Ui& ui) {
        if (const auto chosen = app::choice_row(ui, "test/side", "Side", 0, words))
            given.push_back(*chosen);
    }));
    hands.settle();
    hands.click("test/side");
    hands.click("test/side/0");
    CHECK(given.empty());
    hands.click("test/side");
    hands.click("test/side/1");
    CHECK(given == std::vector<int>{1});
}

TEST_CASE("A switch gives its other state") {
    Headless hands;
    std::optional<bool> given;
    hands.frame(in_column([&given](Ui& ui) {
        if (const auto on = app::switch_row(ui, "test/switch", "Mount", true))
            given = on;
    }));
    hands.settle();
    hands.click("test/switch");
    CHECK(given == false);
}

TEST_CASE("A colour is picked from the usual ones, typed as a code or mixed as one step") {
    Headless hands;
    std::vector<wall::Colour> given;
    wall::Colour now{1, 2, 3};
    hands.frame(in_column([&](Ui& ui) {
        if (const auto picked = app::colour_row(ui, "test/colour", "Colour", now)) {
            given.push_back(*picked);
            now = *picked;
        }
    }));
    hands.settle();
    hands.click("test/colour");
    SECTION("usual") {
        hands.click("test/colour/9");
        CHECK(given == std::vector<wall::Colour>{{255, 255, 255}});
    }
    SECTION("code") {
        hands.fill_in("test/colour/code", "#8B9BA6");
        CHECK(given == std::vector<wall::Colour>{{0x8B, 0x9B, 0xA6}});
    }
    SECTION("mixed") {
        const app::ItemBox above = hands.item("test/colour/8");
        const ImVec2 at{above.min.x + 40, above.max.y + 40};
        hands.drag(at, {at.x + 50, at.y + 30});
        CHECK(given.size() == 1);
    }
}

TEST_CASE("A command's button cannot be pressed while the command cannot be run") {
    Headless hands;
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_piece(project, "kelp", {500, 1300}, {400, 500});
    desk::Session session(project);
    hands.frame(in_column(
        [&session](Ui& ui) { app::command_button(ui, session, desk::CommandId::remove); }));
    hands.settle();
    CHECK_FALSE(hands.item("command/remove").enabled);
    hands.click("command/remove");
    CHECK(session.project() == project);
    session.selection.set(wall::PieceId{"kelp"});
    hands.settle();
    hands.click("command/remove");
    CHECK(session.project().pieces.empty());
}

TEST_CASE("A row tells its reason to a pointer that rests on it, and asks for the frame to do so") {
    Headless hands;
    hands.frame(in_column([](Ui& ui) {
        app::length_row(ui, "test/width", "Width", 420, LengthUnit::mm, "Over the moulding.");
    }));
    hands.settle();
    CHECK_FALSE(hands.ui.memory.wake_in.has_value());
    hands.move_to({40, 25});
    CHECK_FALSE(hands.has("tip"));
    CHECK(hands.ui.memory.wake_in.has_value());
    hands.hover("test/width");
    CHECK(hands.has("tip"));
}

TEST_CASE("Words too wide for their place end in an ellipsis, between two letters") {
    Headless hands;
    std::string fitted;
    hands.frame(in_column([&fitted](Ui&) { fitted = app::fitted("äöüäöüäöüäöü", 60); }));
    CHECK(fitted.ends_with("…"));
    const std::string kept = fitted.substr(0, fitted.size() - std::string("…").size());
    CHECK(std::string("äöüäöüäöüäöü").starts_with(kept));
    CHECK(kept.size() % 2 == 0);
    CHECK_FALSE(kept.empty());
}

TEST_CASE("Names of enumerations are spoken as words of the trade") {
    CHECK(app::spoken("two_rings") == "two rings");
    CHECK(app::spoken_names<wall::CablePractice>() ==
          std::vector<std::string>{"none known", "BS 7671", "DIN 18015-3"});
    CHECK(app::spoken_names<wall::HangerType>().at(4) == "cord on two hooks");
}
