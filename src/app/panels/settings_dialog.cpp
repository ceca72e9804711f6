#include "app/actions.h"
#include "app/panels/dialog_parts.h"
#include "app/panels/panels.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace wallwright::app {

namespace {

constexpr std::array kTextScales = {0.75, 0.9, 1.0, 1.15, 1.3, 1.5, 1.75, 2.0, 2.25, 2.5};

std::vector<std::string> scale_words() {
    std::vector<std::string> words;
    for (const double scale : kTextScales)
        words.push_back(fmt::format("{:.0f} %", 100 * scale));
    return words;
}

int nearest_scale(double scale) {
    const auto nearest = std::ranges::min_element(
        kTextScales, {}, [scale](double one) { return std::abs(one - scale); });
    return static_cast<int>(nearest - kTextScales.begin());
}

}  // namespace

void settings_dialog(Ui& ui, State& state) {
    dialog_title(ui, "Settings");
    const std::string looks[] = {"light", "dark"};
    if (const auto look =
            choice_row(ui, "settings/look", "Appearance", state.preferences.dark ? 1 : 0, looks)) {
        state.preferences.dark = *look == 1;
        keep_preferences(state);
    }
    if (const auto size = choice_row(ui, "settings/text", "Size of the text",
                                     nearest_scale(state.preferences.text_scale), scale_words())) {
        state.preferences.text_scale = kTextScales.at(static_cast<std::size_t>(*size));
        keep_preferences(state);
    }
    const DialogButton buttons[] = {{"settings/close", "Close"}};
    if (dialog_buttons(ui, buttons))
        close_dialog(state);
}

}  // namespace wallwright::app
