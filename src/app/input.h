// Events of the window, handed to Dear ImGui 1.86 so that none is lost. It reads levels once a
// frame: a press and a release between two frames would cancel out. So events wait here and trickle
// in, as many a frame as cannot undo each other.
#pragma once

#include <SFML/Window/Event.hpp>
#include <imgui.h>

#include <deque>
#include <string>
#include <vector>

namespace wallwright::app {

class Input {
  public:
    /// Tells ImGui which codes its keys have, and that they reach every item. Once for each ImGui
    /// context.
    static void set_up(ImGuiIO& io);

    /// Any event; what is not for the hand or the keyboard is dropped.
    void push(const sf::Event& event);
    /// Hands the next events to ImGui; call before each ImGui::NewFrame.
    void apply(ImGuiIO& io);
    /// True when events are left for another frame.
    [[nodiscard]] bool is_waiting() const { return !waiting_.empty(); }

    /// The keys pressed in what apply() has handed over, in order, as in desk/command.h:
    /// "Ctrl+Shift+Z", "Left", "?". Also those meant for a text field: the reader asks
    /// io.WantTextInput. Empty afterwards.
    [[nodiscard]] std::vector<std::string> take_keys();
    /// True once after the window has lost the keyboard: what is being dragged is to be given up.
    [[nodiscard]] bool take_focus_lost();

  private:
    /// What this frame has been told already.
    struct Told {
        bool button = false;
        bool wheel = false;
        bool text = false;
        bool key = false;
        bool editing_key = false;  ///< One that changes a text field.
        std::vector<int> keys;
    };
    struct Held {
        bool left = false;
        bool right = false;
        [[nodiscard]] bool any() const { return left || right; }
    };

    [[nodiscard]] bool must_wait(const sf::Event& event, const Told& told) const;
    [[nodiscard]] bool is_editing(const sf::Event::KeyEvent& key) const;
    void hand_over(const sf::Event& event, ImGuiIO& io, Told& told);
    void key(const sf::Event& event, ImGuiIO& io, Told& told);
    void text(const sf::Event& event, ImGuiIO& io, Told& told);
    void button(const sf::Event& event, ImGuiIO& io, Told& told);
    void wheel(const sf::Event& event, ImGuiIO& io, Told& told);
    void lose_focus(ImGuiIO& io);
    /// The flags are right again for all but the key itself, which they leave out on X11.
    void believe_flags(const sf::Event::KeyEvent& key);
    void set_modifiers(ImGuiIO& io) const;
    void note_key(const std::string& name);

    std::deque<sf::Event> waiting_;
    std::vector<std::string> keys_;
    Held control_;
    Held shift_;
    Held alt_;
    Held super_;
    bool flags_wanted_ =
        true;  ///< Modifiers may have changed while another window had the keyboard.
    bool focus_lost_ = false;
};

/// "Left", "F5", "Z"; empty for a key that has no name here.
std::string key_name(sf::Keyboard::Key key);

}  // namespace wallwright::app
