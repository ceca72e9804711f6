// The app itself: what it is started with, and how it comes to be.
#pragma once

#include "app/frame.h"
#include "base/problem.h"
#include "desk/hang_view.h"
#include "desk/step.h"

#include <filesystem>
#include <memory>
#include <optional>

namespace wallwright::app {

struct AppOptions {
    std::filesystem::path file;       ///< The wall to open; empty for what was open last.
    std::optional<float> text_scale;  ///< Instead of the person's own setting.
    float display_scale = 1;          ///< Of the display; the text's scale comes on top.
    std::optional<desk::Step> step;   ///< To start in.
    /// Of the step hang, which is then the one to start in.
    std::optional<desk::HangView> hang_view;
    bool dark = false;  ///< Whatever the person's setting is.
};

/// A file that cannot be opened is a Problem. Without one: the wall that was open last, or the demo
/// wall. Work that an earlier run left behind is offered.
Result<std::unique_ptr<Frame>> make_app(const AppOptions& options);

}  // namespace wallwright::app
