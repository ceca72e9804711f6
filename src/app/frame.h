// What the loop runs: the app, or a stand-in in tests.
#pragma once

#include "app/ui.h"

#include <string_view>

namespace wallwright::app {

/// How the window should look; the loop builds fonts and style anew when it changes.
struct Look {
    float scale = 1;  ///< Of text and all that goes with it.
    bool dark = false;
    bool operator==(const Look&) const = default;
};

class Frame {
  public:
    Frame() = default;
    Frame(const Frame&) = delete;
    Frame& operator=(const Frame&) = delete;
    virtual ~Frame() = default;

    [[nodiscard]] virtual Look look() const = 0;
    /// Everything, between ImGui::NewFrame and ImGui::Render.
    virtual void draw(Ui& ui) = 0;
    /// A key as in desk/command.h, before the frame is drawn; also one that a text field is to
    /// have.
    virtual void key(std::string_view key) = 0;
    /// Another window has the keyboard now: what is being dragged is to be given up.
    virtual void focus_lost() = 0;
    /// The person wants to close the window.
    virtual void close_wanted() = 0;
    /// Called some 20 to 100 times a second, whether or not anything is drawn, for what does not
    /// wait for the hand. True when there is something new to show.
    virtual bool tick() = 0;
    [[nodiscard]] virtual bool wants_quit() const = 0;
};

}  // namespace wallwright::app
