#include "app/panels/action_button.h"

#include <fmt/format.h>

namespace wallwright::app {

void action_button(Ui& ui, State& state, ActionId id, const char* name, ButtonLook look,
                   const std::string& hindrance) {
    const Action& what = action(id);
    std::string why(what.help);
    if (!hindrance.empty())
        why = hindrance;
    else if (!what.key.empty())
        why += fmt::format("\nKey: {}", what.key);
    if (button(ui, fmt::format("action/{}", name).c_str(), std::string(what.name).c_str(), why,
               look, -1, hindrance.empty()))
        what.run(state);
}

}  // namespace wallwright::app
