#include "app/panels/action_button.h"
#include "app/panels/hang_sections.h"
#include "app/panels/marks_list.h"
#include "app/panels/panels.h"

namespace wallwright::app {

void hang_panel(Ui& ui, State& state) {
    panel_title(ui, "Hanging", "Marks, fixings and what to print.");
    action_button(ui, state, ActionId::sheets, "sheets", ButtonLook::main);
    layers_part(ui, state);
    datum_part(ui, state.session);
    marks_list(ui, state.session);
    loads_part(ui, state.session);
    needs_part(ui, state.session);
    heading(ui, "As files");
    action_button(ui, state, ActionId::marks, "marks");
    action_button(ui, state, ActionId::elevation, "elevation");
}

}  // namespace wallwright::app
