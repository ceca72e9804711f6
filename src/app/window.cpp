#include "app/window.h"

#include <SFML/System/Err.hpp>
#include <SFML/Window/Clipboard.hpp>
#include <dlfcn.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace wallwright::app {

namespace {

enum class Display { good, silent, without_gl };

/// Whether X answers under DISPLAY, and can be painted on. The libraries are SFML's own; they are
/// asked by name so that this program need not be linked to them as well.
Display display_there() {
    using OpenDisplay = void* (*)(const char*);
    using CloseDisplay = int (*)(void*);
    using QueryExtension = int (*)(void*, int*, int*);
    const auto open = reinterpret_cast<OpenDisplay>(dlsym(RTLD_DEFAULT, "XOpenDisplay"));
    const auto close = reinterpret_cast<CloseDisplay>(dlsym(RTLD_DEFAULT, "XCloseDisplay"));
    const auto query = reinterpret_cast<QueryExtension>(dlsym(RTLD_DEFAULT, "glXQueryExtension"));
    if (open == nullptr || close == nullptr)
        return Display::good;
    void* display = open(nullptr);
    if (display == nullptr)
        return Display::silent;
    int ignored = 0;
    const bool has_gl = query == nullptr || query(display, &ignored, &ignored) != 0;
    // Where it is good it stays open: a server that starts anew once its last client has gone would
    // not answer SFML a moment later, which ends the program then.
    if (has_gl)
        return Display::good;
    close(display);
    return Display::without_gl;
}

sf::VideoMode mode_of(std::optional<WindowSize> wanted, float scale) {
    if (wanted)
        return {wanted->width, wanted->height};
    const WindowSize usual;
    const sf::VideoMode desktop = sf::VideoMode::getDesktopMode();
    const auto fitted = [scale](unsigned side, unsigned room) {
        const auto scaled = static_cast<unsigned>(std::lround(static_cast<float>(side) * scale));
        return std::min(scaled, std::max(room, 1U));
    };
    return {fitted(usual.width, desktop.width), fitted(usual.height, desktop.height)};
}

std::optional<sf::Cursor::Type> system_cursor(ImGuiMouseCursor wish) {
    switch (wish) {
        case ImGuiMouseCursor_Arrow:
            return sf::Cursor::Arrow;
        case ImGuiMouseCursor_TextInput:
            return sf::Cursor::Text;
        case ImGuiMouseCursor_ResizeNS:
            return sf::Cursor::SizeVertical;
        case ImGuiMouseCursor_ResizeEW:
            return sf::Cursor::SizeHorizontal;
        case ImGuiMouseCursor_ResizeAll:
        case ImGuiMouseCursor_ResizeNESW:  // X11 has no diagonal ones
        case ImGuiMouseCursor_ResizeNWSE:
            return sf::Cursor::SizeAll;
        case ImGuiMouseCursor_Hand:
            return sf::Cursor::Hand;
        case ImGuiMouseCursor_NotAllowed:
            return sf::Cursor::NotAllowed;
        default:
            return std::nullopt;
    }
}

sf::Color colour_of(ImU32 colour) {
    const auto channel = [colour](int shift) { return static_cast<sf::Uint8>(colour >> shift); };
    return {channel(IM_COL32_R_SHIFT), channel(IM_COL32_G_SHIFT), channel(IM_COL32_B_SHIFT)};
}

sf::String from_utf8(const std::string& text) {
    return sf::String::fromUtf8(text.begin(), text.end());
}

}  // namespace

Outcome find_display() {
    const char* display = std::getenv("DISPLAY");
    if (display == nullptr || *display == '\0')
        return fail(
            {"", "there is no display to open a window on",
             "start it from a desktop, or set DISPLAY; the command line wallwright needs none",
             ""});
    switch (display_there()) {
        case Display::silent:
            return fail({"", fmt::format("the display \"{}\" does not answer", display),
                         "check DISPLAY; the command line wallwright needs none", ""});
        case Display::without_gl:
            return fail({"", fmt::format("the display \"{}\" has no OpenGL (GLX)", display),
                         "choose another in DISPLAY; the command line wallwright needs none", ""});
        case Display::good:
            break;
    }
    return {};
}

Window::Window(std::optional<WindowSize> wanted, float scale) {
    sf::err().rdbuf(nullptr);  // What matters to the person is said in the window.
    title_ = "Wallwright";
    window_.create(mode_of(wanted, scale), title_);
    // SFML 2.5 places it by the display's width alone, half below the screen.
    const sf::VideoMode desktop = sf::VideoMode::getDesktopMode();
    const sf::Vector2u size = window_.getSize();
    window_.setPosition({static_cast<int>(desktop.width - std::min(size.x, desktop.width)) / 2,
                         static_cast<int>(desktop.height - std::min(size.y, desktop.height)) / 2});
    window_.setVerticalSyncEnabled(true);
    ImGuiIO& io = ImGui::GetIO();
    io.BackendFlags |= ImGuiBackendFlags_RendererHasVtxOffset | ImGuiBackendFlags_HasMouseCursors;
    lend_clipboard();
}

Window::~Window() {
    ImGuiIO& io = ImGui::GetIO();
    io.GetClipboardTextFn = nullptr;
    io.SetClipboardTextFn = nullptr;
    io.ClipboardUserData = nullptr;
}

void Window::lend_clipboard() {
    ImGuiIO& io = ImGui::GetIO();
    io.ClipboardUserData = this;
    io.GetClipboardTextFn = [](void* window) {
        std::string& kept = static_cast<Window*>(window)->clipboard_;
        const auto text = sf::Clipboard::getString().toUtf8();
        kept.assign(text.begin(), text.end());
        return static_cast<const char*>(kept.c_str());
    };
    io.SetClipboardTextFn = [](void*, const char* text) {
        sf::Clipboard::setString(from_utf8(text));
    };
}

ImVec2 Window::size() const {
    return {static_cast<float>(window_.getSize().x), static_cast<float>(window_.getSize().y)};
}

bool Window::has_room() const {
    return window_.isOpen() && window_.getSize().x > 0 && window_.getSize().y > 0;
}

void Window::resized() {
    const ImVec2 now = size();
    window_.setView(sf::View(sf::FloatRect(0, 0, now.x, now.y)));
}

void Window::paint(const ImDrawData& data, ImU32 ground) {
    window_.setActive(true);
    window_.clear(colour_of(ground));
    Renderer::paint(window_, data);
}

Outcome Window::save_picture(const std::filesystem::path& file) {
    sf::Texture shown;
    shown.create(window_.getSize().x, window_.getSize().y);
    shown.update(window_);
    if (shown.copyToImage().saveToFile(file.string()))
        return {};
    return fail({file.string(), "the picture could not be written",
                 "choose a folder that can be written to and a name ending in .png", ""});
}

void Window::set_cursor(ImGuiMouseCursor wish) {
    if (wish == cursor_)
        return;
    cursor_ = wish;
    window_.setMouseCursorVisible(wish != ImGuiMouseCursor_None);
    const auto type = system_cursor(wish);
    if (!type)
        return;
    std::unique_ptr<sf::Cursor>& cursor = cursors_.at(static_cast<std::size_t>(wish));
    if (!cursor) {
        auto loaded = std::make_unique<sf::Cursor>();
        if (!loaded->loadFromSystem(*type))
            return;
        cursor = std::move(loaded);
    }
    window_.setMouseCursor(*cursor);
}

std::optional<Texture> Window::texture(const std::filesystem::path& file) {
    if (!textures_.has(file) && std::chrono::steady_clock::now() >= loading_until_) {
        picture_waits_ = true;
        return std::nullopt;
    }
    return textures_.find(file);
}

void Window::load_pictures_for(std::chrono::milliseconds time) {
    loading_until_ = std::chrono::steady_clock::now() + time;
    picture_waits_ = false;
}

void Window::set_title(const std::string& title) {
    if (title != title_)
        window_.setTitle(from_utf8(title));
    title_ = title;
}

}  // namespace wallwright::app
