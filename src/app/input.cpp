#include "app/input.h"

#include <algorithm>
#include <array>
#include <cfloat>
#include <utility>

namespace wallwright::app {

namespace {

using Key = sf::Keyboard;

constexpr std::array kMapped = {
    std::pair{ImGuiKey_Tab, Key::Tab},
    std::pair{ImGuiKey_LeftArrow, Key::Left},
    std::pair{ImGuiKey_RightArrow, Key::Right},
    std::pair{ImGuiKey_UpArrow, Key::Up},
    std::pair{ImGuiKey_DownArrow, Key::Down},
    std::pair{ImGuiKey_PageUp, Key::PageUp},
    std::pair{ImGuiKey_PageDown, Key::PageDown},
    std::pair{ImGuiKey_Home, Key::Home},
    std::pair{ImGuiKey_End, Key::End},
    std::pair{ImGuiKey_Insert, Key::Insert},
    std::pair{ImGuiKey_Delete, Key::Delete},
    std::pair{ImGuiKey_Backspace, Key::Backspace},
    std::pair{ImGuiKey_Space, Key::Space},
    std::pair{ImGuiKey_Enter, Key::Enter},
    std::pair{ImGuiKey_Escape, Key::Escape},
    std::pair{ImGuiKey_A, Key::A},
    std::pair{ImGuiKey_C, Key::C},
    std::pair{ImGuiKey_V, Key::V},
    std::pair{ImGuiKey_X, Key::X},
    std::pair{ImGuiKey_Y, Key::Y},
    std::pair{ImGuiKey_Z, Key::Z},
};

bool is_for_hand_or_keyboard(const sf::Event& event) {
    switch (event.type) {
        case sf::Event::MouseMoved:
        case sf::Event::MouseButtonPressed:
        case sf::Event::MouseButtonReleased:
        case sf::Event::MouseWheelScrolled:
        case sf::Event::MouseLeft:
        case sf::Event::TextEntered:
        case sf::Event::KeyPressed:
        case sf::Event::KeyReleased:
        case sf::Event::LostFocus:
            return true;
        default:
            return false;
    }
}

/// Enter, Backspace and their like come as text too.
bool is_control_character(sf::Uint32 letter) {
    return letter < 0x20 || (letter >= 0x7F && letter < 0xA0);
}

bool is_known(Key::Key key) {
    return key >= 0 && key < Key::KeyCount;
}

bool is_letter_or_digit_key(Key::Key key) {
    return key >= Key::A && key <= Key::Num9;
}

/// What the key types depends on the keyboard's layout, so that its name is taken from the text.
bool is_known_by_its_text(const std::string& name) {
    return name.size() == 1 && (name[0] < 'A' || name[0] > 'Z');
}

void move_to(ImGuiIO& io, int x, int y) {
    io.MousePos = {static_cast<float>(x), static_cast<float>(y)};
}

}  // namespace

void Input::set_up(ImGuiIO& io) {
    for (const auto& [wanted, code] : kMapped)
        io.KeyMap[wanted] = code;
    io.ConfigFlags |= ImGuiConfigFlags_NavEnableKeyboard;
    io.ConfigDragClickToInputText = true;
    io.ConfigInputTextCursorBlink = false;  // A blinking caret would be a cause for frames.
}

void Input::push(const sf::Event& event) {
    if (!is_for_hand_or_keyboard(event))
        return;
    if (event.type == sf::Event::TextEntered && is_control_character(event.text.unicode))
        return;
    const bool is_key = event.type == sf::Event::KeyPressed || event.type == sf::Event::KeyReleased;
    if (is_key && !is_known(event.key.code))  // -1 for letters such as é and for dead keys
        return;
    waiting_.push_back(event);
}

void Input::apply(ImGuiIO& io) {
    Told told;
    while (!waiting_.empty() && !must_wait(waiting_.front(), told)) {
        hand_over(waiting_.front(), io, told);
        waiting_.pop_front();
    }
}

bool Input::must_wait(const sf::Event& event, const Told& told) const {
    switch (event.type) {
        case sf::Event::MouseMoved:
        case sf::Event::MouseLeft:
            return told.button || told.wheel;
        case sf::Event::MouseButtonPressed:
        case sf::Event::MouseButtonReleased:
            return told.button || told.wheel || told.text || told.key;
        case sf::Event::MouseWheelScrolled:
            return told.button;
        case sf::Event::TextEntered:
            return told.button || told.editing_key;
        case sf::Event::KeyPressed:
            if (ImGui::GetIO().KeysDown[event.key.code] && !is_editing(event.key))
                return told.button;  // A repeat changes no level.
            [[fallthrough]];
        case sf::Event::KeyReleased:
            return told.button || (told.editing_key && is_editing(event.key)) ||
                   std::count(told.keys.begin(), told.keys.end(), event.key.code) > 0;
        default:
            return told.button || told.text || told.key;
    }
}

bool Input::is_editing(const sf::Event::KeyEvent& key) const {
    return !is_letter_or_digit_key(key.code) || control_.any();
}

void Input::hand_over(const sf::Event& event, ImGuiIO& io, Told& told) {
    switch (event.type) {
        case sf::Event::MouseMoved:
            move_to(io, event.mouseMove.x, event.mouseMove.y);
            break;
        case sf::Event::MouseLeft:
            // While a button is held the window system goes on telling where the pointer is.
            if (std::none_of(std::begin(io.MouseDown), std::end(io.MouseDown),
                             [](bool down) { return down; }))
                io.MousePos = {-FLT_MAX, -FLT_MAX};
            break;
        case sf::Event::MouseButtonPressed:
        case sf::Event::MouseButtonReleased:
            button(event, io, told);
            break;
        case sf::Event::MouseWheelScrolled:
            wheel(event, io, told);
            break;
        case sf::Event::TextEntered:
            text(event, io, told);
            break;
        case sf::Event::LostFocus:
            lose_focus(io);
            break;
        default:
            key(event, io, told);
    }
}

void Input::button(const sf::Event& event, ImGuiIO& io, Told& told) {
    const int which = event.mouseButton.button;
    if (which < 0 || which >= static_cast<int>(std::size(io.MouseDown)))
        return;
    move_to(io, event.mouseButton.x, event.mouseButton.y);
    io.MouseDown[which] = event.type == sf::Event::MouseButtonPressed;
    told.button = true;
}

void Input::wheel(const sf::Event& event, ImGuiIO& io, Told& told) {
    if (event.mouseWheelScroll.wheel == sf::Mouse::HorizontalWheel)
        io.MouseWheelH += event.mouseWheelScroll.delta;
    else
        io.MouseWheel += event.mouseWheelScroll.delta;
    told.wheel = true;
}

void Input::text(const sf::Event& event, ImGuiIO& io, Told& told) {
    const sf::Uint32 letter = event.text.unicode;
    io.AddInputCharacter(letter);
    told.text = true;
    const std::string name(1, static_cast<char>(letter < 0x7F ? letter : ' '));
    if (name != " " && is_known_by_its_text(name) && !(name[0] >= 'a' && name[0] <= 'z') &&
        !control_.any() && !alt_.any())
        keys_.push_back(name);
}

void Input::key(const sf::Event& event, ImGuiIO& io, Told& told) {
    const bool down = event.type == sf::Event::KeyPressed;
    const sf::Event::KeyEvent& key = event.key;
    if (std::exchange(flags_wanted_, false))
        believe_flags(key);
    io.KeysDown[key.code] = down;
    told.key = true;
    told.keys.push_back(key.code);
    switch (key.code) {
        case Key::LControl:
            control_.left = down;
            break;
        case Key::RControl:
            control_.right = down;
            break;
        case Key::LShift:
            shift_.left = down;
            break;
        case Key::RShift:
            shift_.right = down;
            break;
        case Key::LAlt:
            alt_.left = down;
            break;
        case Key::RAlt:
            alt_.right = down;
            break;
        case Key::LSystem:
            super_.left = down;
            break;
        case Key::RSystem:
            super_.right = down;
            break;
        default:
            told.editing_key = told.editing_key || (down && is_editing(key));
            if (down)
                note_key(key_name(key.code));
    }
    set_modifiers(io);
}

void Input::believe_flags(const sf::Event::KeyEvent& key) {
    control_.left = key.control;
    shift_.left = key.shift;
    alt_.left = key.alt;
    super_.left = key.system;
}

void Input::set_modifiers(ImGuiIO& io) const {
    io.KeyCtrl = control_.any();
    io.KeyShift = shift_.any();
    io.KeyAlt = alt_.any();
    io.KeySuper = super_.any();
}

void Input::note_key(const std::string& name) {
    const bool commanding = control_.any() || alt_.any();
    if (name.empty() || (!commanding && is_known_by_its_text(name)))
        return;
    std::string whole;
    if (control_.any())
        whole += "Ctrl+";
    if (alt_.any())
        whole += "Alt+";
    if (shift_.any())
        whole += "Shift+";
    keys_.push_back(whole + name);
}

void Input::lose_focus(ImGuiIO& io) {
    io.AddFocusEvent(false);
    std::fill(std::begin(io.KeysDown), std::end(io.KeysDown), false);
    std::fill(std::begin(io.MouseDown), std::end(io.MouseDown), false);
    io.MousePos = {-FLT_MAX, -FLT_MAX};
    control_ = shift_ = alt_ = super_ = {};
    set_modifiers(io);
    flags_wanted_ = true;
    focus_lost_ = true;
}

std::vector<std::string> Input::take_keys() {
    return std::exchange(keys_, {});
}

bool Input::take_focus_lost() {
    return std::exchange(focus_lost_, false);
}

}  // namespace wallwright::app
