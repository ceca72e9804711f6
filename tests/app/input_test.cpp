#include "headless.h"

#include <catch2/catch.hpp>
#include <imgui_stdlib.h>

#include <algorithm>
#include <cfloat>

using namespace wallwright::app;

namespace {

using Keys = std::vector<std::string>;

sf::Event key_event(bool down, sf::Keyboard::Key code) {
    sf::Event event{};
    event.type = down ? sf::Event::KeyPressed : sf::Event::KeyReleased;
    event.key.code = code;
    return event;
}

sf::Event of_type(sf::Event::EventType type) {
    sf::Event event{};
    event.type = type;
    return event;
}

sf::Event letter_event(char letter) {
    sf::Event event = of_type(sf::Event::TextEntered);
    event.text.unicode = static_cast<sf::Uint32>(letter);
    return event;
}

sf::Event button_event(bool down, ImVec2 at) {
    sf::Event event =
        of_type(down ? sf::Event::MouseButtonPressed : sf::Event::MouseButtonReleased);
    event.mouseButton = {sf::Mouse::Left, static_cast<int>(at.x), static_cast<int>(at.y)};
    return event;
}

/// A window with a field and a button, and what came of them.
struct Desk {
    Headless app;
    std::string field = "oak";
    int clicks = 0;
    Keys keys;

    Desk() {
        app.on_key = [this](std::string_view key) { keys.emplace_back(key); };
        app.frame([this](Ui& ui) { draw(ui); });
        app.settle();
    }

    void draw(Ui& ui) {
        ImGui::SetNextWindowPos({20, 20});
        ImGui::SetNextWindowSize({400, 300});
        ImGui::Begin("desk");
        ImGui::InputText("field", &field);
        ui.probe.note("field");
        if (ImGui::Button("button"))
            ++clicks;
        ui.probe.note("button");
        ImGui::End();
    }

    [[nodiscard]] ImVec2 middle(const std::string& name) const {
        const ItemBox& box = app.item(name);
        return {(box.min.x + box.max.x) / 2, (box.min.y + box.max.y) / 2};
    }
    void push_click(const std::string& name) {
        sf::Event event = of_type(sf::Event::MouseMoved);
        const ImVec2 at = middle(name);
        event.mouseMove = {static_cast<int>(at.x), static_cast<int>(at.y)};
        app.push(event);
        app.push(button_event(true, at));
        app.push(button_event(false, at));
    }
};

bool any(const bool* first, const bool* last) {
    return std::any_of(first, last, [](bool down) { return down; });
}

}  // namespace

TEST_CASE("A press and a release between two frames are a click") {
    Desk desk;
    desk.push_click("button");
    desk.app.settle();
    CHECK(desk.clicks == 1);
}

TEST_CASE("Click, click a field, type, click, all between two frames, come out in order") {
    Desk desk;
    desk.push_click("button");
    desk.push_click("field");
    desk.app.push(key_event(true, sf::Keyboard::End));
    desk.app.push(key_event(false, sf::Keyboard::End));
    desk.app.push(letter_event('2'));
    desk.push_click("button");
    desk.app.settle();
    CHECK(desk.clicks == 2);
    CHECK(desk.field == "oak2");
}

TEST_CASE("Deleting and typing between two frames come out in the order of the hand") {
    Desk desk;
    desk.push_click("field");
    desk.app.push(key_event(true, sf::Keyboard::End));
    desk.app.push(key_event(false, sf::Keyboard::End));
    for (int i = 0; i < 2; ++i) {
        desk.app.push(key_event(true, sf::Keyboard::Backspace));
        desk.app.push(key_event(false, sf::Keyboard::Backspace));
    }
    desk.app.push(letter_event('x'));
    desk.app.push(key_event(true, sf::Keyboard::Left));
    desk.app.push(key_event(false, sf::Keyboard::Left));
    desk.app.push(letter_event('y'));
    desk.app.settle();
    CHECK(desk.field == "oyx");
}

TEST_CASE("A field is filled in with what is typed, letters beyond ASCII too") {
    Desk desk;
    desk.app.fill_in("field", "Žluť 16½ ″");
    CHECK(desk.field == "Žluť 16½ ″");
}

TEST_CASE("Control characters are no text") {
    Desk desk;
    desk.push_click("field");
    for (const char letter : {'\x01', '\x08', '\x0D', '\x1B', '\x7F'})
        desk.app.push(letter_event(letter));
    desk.app.settle();
    CHECK(desk.field == "oak");
}

TEST_CASE("Keys without a code and buttons without a place do no harm") {
    Desk desk;
    const bool before = ImGui::GetIO().KeysDown[0];
    for (const bool down : {true, false}) {
        desk.app.push(key_event(down, sf::Keyboard::Unknown));
        desk.app.push(key_event(down, static_cast<sf::Keyboard::Key>(120)));
        sf::Event button = button_event(down, {5, 5});
        button.mouseButton.button = static_cast<sf::Mouse::Button>(7);
        desk.app.push(button);
    }
    desk.app.settle();
    CHECK(ImGui::GetIO().KeysDown[0] == before);
    CHECK(desk.keys.empty());
    desk.push_click("button");
    desk.app.settle();
    CHECK(desk.clicks == 1);
}

TEST_CASE("Keys are named with their modifiers, in the order in which they were pressed") {
    Desk desk;
    for (const char* name : {"Ctrl+Shift+Z", "Left", "Shift+Left", "G", "?", "Ctrl+=", "3", "F5",
                             "Delete", "Alt+Up", "Space"})
        desk.app.key(name);
    CHECK(desk.keys == Keys{"Ctrl+Shift+Z", "Left", "Shift+Left", "G", "?", "Ctrl+=", "3", "F5",
                            "Delete", "Alt+Up", "Space"});
}

TEST_CASE("A modifier alone is no key, and one released while the other is held still counts") {
    Desk desk;
    desk.app.push(key_event(true, sf::Keyboard::LControl));
    desk.app.push(key_event(true, sf::Keyboard::RControl));
    desk.app.push(key_event(false, sf::Keyboard::LControl));
    desk.app.push(key_event(true, sf::Keyboard::Z));
    desk.app.push(key_event(false, sf::Keyboard::Z));
    desk.app.push(key_event(false, sf::Keyboard::RControl));
    desk.app.push(key_event(true, sf::Keyboard::G));
    desk.app.settle();
    CHECK(desk.keys == Keys{"Ctrl+Z", "G"});
}

TEST_CASE("A key that repeats is told each time") {
    Desk desk;
    for (int i = 0; i < 3; ++i)
        desk.app.push(key_event(true, sf::Keyboard::Left));
    desk.app.push(key_event(false, sf::Keyboard::Left));
    desk.app.settle();
    CHECK(desk.keys == Keys{"Left", "Left", "Left"});
}

TEST_CASE("When the window loses the keyboard, everything held is let go") {
    Desk desk;
    desk.app.push(key_event(true, sf::Keyboard::LControl));
    desk.app.push(key_event(true, sf::Keyboard::A));
    desk.app.push(button_event(true, desk.middle("button")));
    desk.app.settle();
    const ImGuiIO& io = ImGui::GetIO();
    REQUIRE(io.KeyCtrl);
    REQUIRE(io.MouseDown[0]);
    int told = 0;
    desk.app.on_focus_lost = [&told] { ++told; };
    desk.app.push(of_type(sf::Event::LostFocus));
    desk.app.settle();
    CHECK_FALSE(io.KeyCtrl);
    CHECK_FALSE(any(std::begin(io.MouseDown), std::end(io.MouseDown)));
    CHECK_FALSE(any(std::begin(io.KeysDown), std::end(io.KeysDown)));
    CHECK(io.MousePos.x == -FLT_MAX);
    CHECK(told == 1);
}

TEST_CASE("A modifier that was pressed in another window is known from the first key") {
    Desk desk;
    desk.app.push(of_type(sf::Event::LostFocus));
    sf::Event key = key_event(true, sf::Keyboard::Z);
    key.key.control = true;
    desk.app.push(key);
    desk.app.settle();
    CHECK(desk.keys == Keys{"Ctrl+Z"});
}

TEST_CASE("The pointer keeps its place outside the window while a button is held") {
    Desk desk;
    desk.app.move_to({100, 100});
    desk.app.press();
    desk.app.push(of_type(sf::Event::MouseLeft));
    desk.app.settle();
    CHECK(ImGui::GetIO().MousePos.x == 100);
    desk.app.release();
    desk.app.push(of_type(sf::Event::MouseLeft));
    desk.app.settle();
    CHECK(ImGui::GetIO().MousePos.x == -FLT_MAX);
}

TEST_CASE("A wheel's steps between two frames add up, and come before the pointer moves on") {
    Input input;
    Headless app;
    ImGuiIO& io = ImGui::GetIO();
    io.MouseWheel = 0;
    sf::Event step = of_type(sf::Event::MouseWheelScrolled);
    step.mouseWheelScroll = {sf::Mouse::VerticalWheel, 0.5F, 0, 0};
    sf::Event move = of_type(sf::Event::MouseMoved);
    move.mouseMove = {7, 7};
    for (const sf::Event& event : {step, step, move})
        input.push(event);
    input.apply(io);
    CHECK(io.MouseWheel == Approx(1));
    CHECK(input.is_waiting());
    input.apply(io);
    CHECK_FALSE(input.is_waiting());
    CHECK(io.MousePos.x == 7);
}
