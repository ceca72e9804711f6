// The buttons of the top bar: flat, with the chosen one filled.
#pragma once

#include "app/state.h"
#include "app/ui.h"

#include <functional>
#include <string>
#include <vector>

namespace wallwright::app {

struct BarButton {
    std::string name;  ///< For the probe: "bar/undo".
    std::string words;
    std::string why;  ///< The tooltip.
    bool chosen = false;
    bool enabled = true;
    std::function<void(State&)> press;
};

/// px from the left edge of one to that of the next, but for the last.
float width_of(const Ui& ui, const std::vector<BarButton>& buttons);
/// In the middle of the height of a bar that begins `top` px below the window's upper edge, from
/// `x` px on.
void show_buttons(Ui& ui, State& state, const std::vector<BarButton>& buttons, float x,
                  float top = 0);

}  // namespace wallwright::app
