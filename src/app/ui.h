// What every panel draws with.
#pragma once

#include "app/fonts.h"
#include "app/host.h"
#include "app/memory.h"
#include "app/probe.h"
#include "app/theme.h"

namespace wallwright::app {

struct Ui {
    Fonts fonts;
    float scale = 1;  ///< Of text and of all that goes with it.
    bool dark = false;
    Probe probe;
    Memory memory;
    Host* host = nullptr;

    [[nodiscard]] const Theme& theme() const { return app::theme(dark); }
    /// So many pixels at a scale of 1.
    [[nodiscard]] float px(float pixels) const { return pixels * scale; }
};

}  // namespace wallwright::app
