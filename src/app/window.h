// The window: where it is shown, what it lends the frame, and the only place that speaks to the
// display.
#pragma once

#include "app/host.h"
#include "app/renderer.h"
#include "app/textures.h"
#include "base/problem.h"

#include <SFML/Graphics/RenderWindow.hpp>
#include <SFML/Window/Cursor.hpp>

#include <array>
#include <chrono>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>

namespace wallwright::app {

/// Fails with a sentence when there is no display to open a window on. Ask before anything of SFML:
/// that ends the program without a word.
Outcome find_display();

struct WindowSize {
    unsigned width = 1280;  ///< px
    unsigned height = 800;
};

/// Lends the current ImGui context the clipboard and the cursor for as long as it lives.
class Window final : public Host {
  public:
    /// Needs a display. A size larger than the desktop is made smaller, except one that was asked
    /// for.
    explicit Window(std::optional<WindowSize> wanted, float scale);
    ~Window() override;

    bool poll(sf::Event& event) { return window_.pollEvent(event); }
    /// True when there is something to paint on.
    [[nodiscard]] bool has_room() const;
    [[nodiscard]] ImVec2 size() const;
    void resized();

    /// Pictures that are new to this frame are loaded only for as long as this; the others wait for
    /// the next, so that no frame stands still.
    void load_pictures_for(std::chrono::milliseconds time);
    /// True when a picture of this frame waits for the next.
    [[nodiscard]] bool is_picture_waiting() const { return picture_waits_; }

    void upload_fonts() { renderer_.upload_fonts(); }
    void paint(const ImDrawData& data, ImU32 ground);
    /// What was painted, before it is shown.
    Outcome save_picture(const std::filesystem::path& file);
    void show() { window_.display(); }
    /// The cursor that ImGui wishes for; the display is told only when that changes.
    void set_cursor(ImGuiMouseCursor wish);

    std::optional<Texture> texture(const std::filesystem::path& file) override;
    void set_title(const std::string& title) override;

  private:
    void lend_clipboard();

    /// Before the window, which sets the last one again when it closes.
    std::array<std::unique_ptr<sf::Cursor>, ImGuiMouseCursor_COUNT> cursors_;
    sf::RenderWindow window_;
    Renderer renderer_;
    Textures textures_;
    ImGuiMouseCursor cursor_ = ImGuiMouseCursor_Arrow;
    std::string title_;
    std::chrono::steady_clock::time_point loading_until_{};
    bool picture_waits_ = false;
    std::string clipboard_;  ///< ImGui is given a pointer to it.
};

}  // namespace wallwright::app
