#include "headless.h"

#include <SFML/System/Utf.hpp>
#include <fmt/format.h>

#include <map>
#include <memory>
#include <optional>
#include <stdexcept>
#include <utility>
#include <vector>

namespace wallwright::app {

namespace {

/// Letters are costly to build, so that all tests of one scale share them.
struct Letters {
    ImFontAtlas atlas;
    Fonts fonts;
};

Letters& letters_of(float scale) {
    static std::map<float, std::unique_ptr<Letters>> built;
    std::unique_ptr<Letters>& letters = built[scale];
    if (!letters) {
        letters = std::make_unique<Letters>();
        ImGuiContext* context = ImGui::CreateContext(&letters->atlas);
        ImGui::SetCurrentContext(context);
        letters->fonts = build_fonts(scale);
        unsigned char* pixels = nullptr;
        int width = 0;
        int height = 0;
        letters->atlas.GetTexDataAsRGBA32(&pixels, &width, &height);
        letters->atlas.SetTexID(reinterpret_cast<ImTextureID>(1));
        ImGui::DestroyContext(context);
    }
    return *letters;
}

struct KeyWish {
    sf::Event::KeyEvent key{};
    std::string text;  ///< What the keyboard types with it.
};

/// The name's parts; throws for a name that no key has.
KeyWish key_wish(std::string_view name) {
    KeyWish wish;
    wish.key.code = sf::Keyboard::Unknown;
    const auto take = [&name](std::string_view prefix) {
        const bool has = name.size() > prefix.size() && name.substr(0, prefix.size()) == prefix;
        if (has)
            name.remove_prefix(prefix.size());
        return has;
    };
    wish.key.control = take("Ctrl+");
    wish.key.alt = take("Alt+");
    wish.key.shift = take("Shift+");
    for (int code = 0; code < sf::Keyboard::KeyCount; ++code)
        if (key_name(static_cast<sf::Keyboard::Key>(code)) == name) {
            wish.key.code = static_cast<sf::Keyboard::Key>(code);
            break;
        }
    if (name.size() == 1 && !wish.key.control && !wish.key.alt)
        wish.text = name;
    if (name == "Space")
        wish.text = " ";
    if (wish.key.code == sf::Keyboard::Unknown && wish.text.empty())
        throw std::runtime_error(fmt::format("no key is named {}", name));
    return wish;
}

sf::Event::KeyEvent modifiers_of(std::string_view names) {
    return names.empty() ? sf::Event::KeyEvent{} : key_wish(fmt::format("{}+A", names)).key;
}

}  // namespace

Headless::Headless(ImVec2 size, float scale, bool dark) {
    Letters& letters = letters_of(scale);
    context_ = ImGui::CreateContext(&letters.atlas);
    ImGui::SetCurrentContext(context_);
    ImGuiIO& io = ImGui::GetIO();
    io.IniFilename = nullptr;
    io.LogFilename = nullptr;
    io.DisplaySize = size;
    io.FontDefault = letters.fonts.body;
    io.BackendFlags |= ImGuiBackendFlags_RendererHasVtxOffset;
    Input::set_up(io);
    apply_theme(app::theme(dark), scale);
    ui.fonts = letters.fonts;
    ui.scale = scale;
    ui.dark = dark;
}

Headless::~Headless() {
    ImGui::DestroyContext(context_);
}

void Headless::frame(const Draw& draw) {
    draw_ = draw;
    frame();
}

void Headless::frame() {
    ImGuiIO& io = ImGui::GetIO();
    if (io.DeltaTime < 0.1F)
        io.DeltaTime = 1.0F / 60;
    input_.apply(io);
    ui.probe.begin_frame();
    ImGui::NewFrame();
    io.DeltaTime = 1.0F / 60;
    if (input_.take_focus_lost() && on_focus_lost)
        on_focus_lost();
    for (const std::string& pressed : input_.take_keys())
        if (on_key)
            on_key(pressed);
    if (draw_)
        draw_(ui);
    ImGui::Render();
}

void Headless::settle() {
    constexpr int kAfter = 3;
    while (input_.is_waiting())
        frame();
    for (int i = 0; i < kAfter; ++i)
        frame();
}

bool Headless::has(const std::string& name) const {
    return ui.probe.items().count(name) > 0;
}

const ItemBox& Headless::item(const std::string& name) const {
    const auto found = ui.probe.items().find(name);
    if (found != ui.probe.items().end())
        return found->second;
    std::string others;
    for (const auto& [other, box] : ui.probe.items())
        others += fmt::format(" {}", other);
    throw std::runtime_error(fmt::format("\"{}\" is not shown; there are:{}", name, others));
}

bool Headless::is_in_sight(const std::string& name) const {
    const ItemBox& box = item(name);
    return box.min.x >= box.clip.x && box.min.y >= box.clip.y && box.max.x <= box.clip.z &&
           box.max.y <= box.clip.w;
}

ImVec2 Headless::middle_in_sight(const std::string& name) {
    constexpr int kMost = 200;
    for (int i = 0; i < kMost; ++i) {
        const ItemBox box = item(name);
        const ImVec2 middle{(box.min.x + box.max.x) / 2, (box.min.y + box.max.y) / 2};
        if (middle.y >= box.clip.y && middle.y < box.clip.w)
            return middle;
        move_to({(box.clip.x + box.clip.z) / 2, (box.clip.y + box.clip.w) / 2});
        wheel(middle.y < box.clip.y ? 1.0F : -1.0F);
    }
    throw std::runtime_error(fmt::format("\"{}\" could not be scrolled into sight", name));
}

void Headless::rest(float seconds) {
    ImGui::GetIO().DeltaTime = seconds;
    frame();
}

void Headless::lose_focus() {
    sf::Event event{};
    event.type = sf::Event::LostFocus;
    push(event);
    settle();
}

void Headless::move_to(ImVec2 at) {
    sf::Event event{};
    event.type = sf::Event::MouseMoved;
    event.mouseMove = {static_cast<int>(at.x), static_cast<int>(at.y)};
    push(event);
    pointer_ = at;
    settle();
}

void Headless::push_button(bool down, sf::Mouse::Button button) {
    sf::Event event{};
    event.type = down ? sf::Event::MouseButtonPressed : sf::Event::MouseButtonReleased;
    event.mouseButton = {button, static_cast<int>(pointer_.x), static_cast<int>(pointer_.y)};
    push(event);
}

void Headless::press(sf::Mouse::Button button) {
    push_button(true, button);
    settle();
}

void Headless::release(sf::Mouse::Button button) {
    push_button(false, button);
    settle();
}

void Headless::click_at(ImVec2 at, std::string_view modifiers) {
    const sf::Event::KeyEvent held = modifiers_of(modifiers);
    pause();
    move_to(at);
    push_modifiers(true, held);
    push_button(true, sf::Mouse::Left);
    push_button(false, sf::Mouse::Left);
    push_modifiers(false, held);
    settle();
}

void Headless::click(const std::string& name, std::string_view modifiers) {
    click_at(middle_in_sight(name), modifiers);
}

void Headless::double_click(const std::string& name) {
    click(name);
    push_button(true, sf::Mouse::Left);
    push_button(false, sf::Mouse::Left);
    settle();
}

void Headless::right_click(const std::string& name) {
    move_to(middle_in_sight(name));
    push_button(true, sf::Mouse::Right);
    push_button(false, sf::Mouse::Right);
    settle();
}

void Headless::hover(const std::string& name) {
    move_to(middle_in_sight(name));
    pause();
    pause();
    settle();
}

void Headless::drag(ImVec2 from, ImVec2 to, std::string_view modifiers) {
    constexpr int kSteps = 8;
    const sf::Event::KeyEvent held = modifiers_of(modifiers);
    pause();
    move_to(from);
    push_modifiers(true, held);
    press();
    for (int i = 1; i <= kSteps; ++i) {
        const float share = static_cast<float>(i) / kSteps;
        move_to({from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share});
    }
    release();
    push_modifiers(false, held);
    settle();
}

void Headless::wheel(float clicks, bool horizontal) {
    sf::Event event{};
    event.type = sf::Event::MouseWheelScrolled;
    event.mouseWheelScroll = {horizontal ? sf::Mouse::HorizontalWheel : sf::Mouse::VerticalWheel,
                              clicks, static_cast<int>(pointer_.x), static_cast<int>(pointer_.y)};
    push(event);
    settle();
}

void Headless::push_text(std::string_view text) {
    const char* at = text.data();
    const char* end = at + text.size();
    while (at < end) {
        sf::Event event{};
        event.type = sf::Event::TextEntered;
        at = sf::Utf8::decode(at, end, event.text.unicode);
        push(event);
    }
}

void Headless::type(std::string_view text) {
    push_text(text);
    settle();
}

void Headless::push_key(bool down, sf::Keyboard::Key code, const sf::Event::KeyEvent& modifiers) {
    sf::Event event{};
    event.type = down ? sf::Event::KeyPressed : sf::Event::KeyReleased;
    event.key = modifiers;
    event.key.code = code;
    push(event);
}

void Headless::push_modifiers(bool down, const sf::Event::KeyEvent& modifiers) {
    if (modifiers.control)
        push_key(down, sf::Keyboard::LControl, {});
    if (modifiers.alt)
        push_key(down, sf::Keyboard::LAlt, {});
    if (modifiers.shift)
        push_key(down, sf::Keyboard::LShift, {});
}

void Headless::key(std::string_view name) {
    const KeyWish wish = key_wish(name);
    push_modifiers(true, wish.key);
    push_key(true, wish.key.code, wish.key);
    push_text(wish.text);
    push_key(false, wish.key.code, wish.key);
    push_modifiers(false, wish.key);
    settle();
}

void Headless::fill_in(const std::string& name, std::string_view text) {
    click(name);
    key("Ctrl+A");
    type(text);
    key("Enter");
}

}  // namespace wallwright::app
