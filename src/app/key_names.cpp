#include "app/input.h"

#include <array>
#include <string_view>
#include <utility>

namespace wallwright::app {

namespace {

using Key = sf::Keyboard;

constexpr std::array kNamed = {
    std::pair{Key::Left, std::string_view("Left")},
    std::pair{Key::Right, std::string_view("Right")},
    std::pair{Key::Up, std::string_view("Up")},
    std::pair{Key::Down, std::string_view("Down")},
    std::pair{Key::Home, std::string_view("Home")},
    std::pair{Key::End, std::string_view("End")},
    std::pair{Key::PageUp, std::string_view("PageUp")},
    std::pair{Key::PageDown, std::string_view("PageDown")},
    std::pair{Key::Insert, std::string_view("Insert")},
    std::pair{Key::Delete, std::string_view("Delete")},
    std::pair{Key::Backspace, std::string_view("Backspace")},
    std::pair{Key::Tab, std::string_view("Tab")},
    std::pair{Key::Enter, std::string_view("Enter")},
    std::pair{Key::Escape, std::string_view("Escape")},
    std::pair{Key::Space, std::string_view("Space")},
    // Only with Ctrl or Alt: alone they come as text, which knows the keyboard's layout.
    std::pair{Key::Equal, std::string_view("=")},
    std::pair{Key::Hyphen, std::string_view("-")},
    std::pair{Key::Add, std::string_view("+")},
    std::pair{Key::Subtract, std::string_view("-")},
    std::pair{Key::Comma, std::string_view(",")},
    std::pair{Key::Period, std::string_view(".")},
    std::pair{Key::Slash, std::string_view("/")},
};

}  // namespace

std::string key_name(sf::Keyboard::Key key) {
    if (key >= Key::A && key <= Key::Z)
        return {static_cast<char>('A' + (key - Key::A))};
    if (key >= Key::Num0 && key <= Key::Num9)
        return {static_cast<char>('0' + (key - Key::Num0))};
    if (key >= Key::Numpad0 && key <= Key::Numpad9)
        return {static_cast<char>('0' + (key - Key::Numpad0))};
    if (key >= Key::F1 && key <= Key::F12)
        return "F" + std::to_string(key - Key::F1 + 1);
    for (const auto& [code, name] : kNamed)
        if (code == key)
            return std::string(name);
    return {};
}

}  // namespace wallwright::app
