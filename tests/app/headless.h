// The real panels and the real input path with no window and no display: items are found by the
// name that the probe has recorded.
#pragma once

#include "app/input.h"
#include "app/ui.h"

#include <functional>
#include <string>
#include <string_view>

namespace wallwright::app {

/// One ImGui context, destroyed with it; have one at a time. Each deed pushes events and then draws
/// frames until all has been taken in, with what frame() was given last.
class Headless {
  public:
    using Draw = std::function<void(Ui&)>;

    explicit Headless(ImVec2 size = {1280, 800}, float scale = 1, bool dark = false);
    ~Headless();
    Headless(const Headless&) = delete;
    Headless& operator=(const Headless&) = delete;

    Ui ui;
    /// Told each key that was pressed, before the frame is drawn; may stay empty.
    std::function<void(std::string_view)> on_key;
    /// Told when another window took the keyboard, before the keys; may stay empty.
    std::function<void()> on_focus_lost;

    /// Draws one frame, and from now on draws this.
    void frame(const Draw& draw);
    void frame();
    /// Frames until no event is waiting, and three more.
    void settle();

    [[nodiscard]] bool has(const std::string& name) const;
    /// Throws std::runtime_error when the last frame did not show it.
    [[nodiscard]] const ItemBox& item(const std::string& name) const;
    /// All of it inside what its window shows.
    [[nodiscard]] bool is_in_sight(const std::string& name) const;

    /// In the middle of the item, which is scrolled into sight. With modifiers as in "Ctrl+Shift".
    void click(const std::string& name, std::string_view modifiers = "");
    void double_click(const std::string& name);
    void right_click(const std::string& name);
    /// Rests on it long enough for a tooltip.
    void hover(const std::string& name);

    void click_at(ImVec2 at, std::string_view modifiers = "");
    void move_to(ImVec2 at);
    void press(sf::Mouse::Button button = sf::Mouse::Left);
    void release(sf::Mouse::Button button = sf::Mouse::Left);
    void drag(ImVec2 from, ImVec2 to, std::string_view modifiers = "");
    void wheel(float clicks, bool horizontal = false);

    /// Letters as a keyboard sends them, in UTF-8.
    void type(std::string_view text);
    /// One key with its modifiers: "Ctrl+Z", "Enter", "?".
    void key(std::string_view name);
    /// Takes all of a field's text out and puts this in: click, Ctrl+A, type, Enter.
    void fill_in(const std::string& name, std::string_view text);

    /// Puts an event into the queue and draws nothing.
    void push(const sf::Event& event) { input_.push(event); }
    /// Nothing happens for so many seconds.
    void rest(float seconds);
    /// Another window takes the keyboard.
    void lose_focus();

  private:
    void push_button(bool down, sf::Mouse::Button button);
    void push_key(bool down, sf::Keyboard::Key code, const sf::Event::KeyEvent& modifiers);
    void push_modifiers(bool down, const sf::Event::KeyEvent& modifiers);
    void push_text(std::string_view text);
    /// Longer than a double click takes.
    void pause() { rest(0.5F); }
    [[nodiscard]] ImVec2 middle_in_sight(const std::string& name);

    ImGuiContext* context_ = nullptr;
    Input input_;
    Draw draw_;
    ImVec2 pointer_{-1, -1};
};

}  // namespace wallwright::app
