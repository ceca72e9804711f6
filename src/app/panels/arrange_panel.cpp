#include "app/actions.h"
#include "app/layouts.h"
#include "app/panels/groups_list.h"
#include "app/panels/panels.h"
#include "app/panels/score_part.h"
#include "app/panels/wish_parts.h"
#include "app/widgets.h"
#include "base/contract.h"
#include "edits/edit.h"
#include "edits/room.h"
#include "wall/style.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using wall::HangingStyle;
using Value = double HangingStyle::*;

/// What the value means and where its default comes from.
std::string why(Value value) {
    const auto fields = wall::style_fields();
    const auto found = std::ranges::find(fields, value, &wall::StyleField::value);
    WW_EXPECT(found != fields.end(), "every value of the style is in its table");
    return fmt::format("{}.\nWhy {}: {}.", capital(std::string(found->meaning)),
                       HangingStyle{}.*value, found->source);
}

void style_row(Ui& ui, desk::Session& session, const char* name, const char* label, Value value) {
    const wall::Project& project = session.project();
    if (const auto mm = length_row(ui, name, label, project.style.*value, project.unit, why(value)))
        session.apply(fmt::format("Change: {}", label),
                      edits::change_project(session.kept(), [value, mm](wall::Project& changed) {
                          changed.style.*value = *mm;
                      }));
}

void style_rows(Ui& ui, desk::Session& session) {
    const wall::Project& project = session.project();
    if (const auto gap = measure_row(ui, "arrange/gap", "Gap wanted", project.style.gap,
                                     project.unit, why(&HangingStyle::gap)))
        session.apply("Change the wanted gap", edits::set_gap(session.kept(), *gap));
    style_row(ui, session, "arrange/centre", "Centre height", &HangingStyle::centre_height);
    style_row(ui, session, "arrange/clearance-least", "Clearance, least",
              &HangingStyle::clearance_least);
    style_row(ui, session, "arrange/clearance-most", "Clearance, most",
              &HangingStyle::clearance_most);
}

void try_button(Ui& ui, State& state) {
    const Action& what = action(ActionId::layouts);
    const std::string hindrance = desk::LayoutChoice::hindrance(state.session);
    std::string why = fmt::format("{}\nKey: {}", what.help, what.key);
    if (!hindrance.empty())
        why += fmt::format("\nNot now: {}.", hindrance);
    if (button(ui, "layouts/try", std::string(what.name).c_str(), why, ButtonLook::main, -1,
               hindrance.empty()))
        try_layouts(state);
}

}  // namespace

void arrange_panel(Ui& ui, State& state) {
    desk::Session& session = state.session;
    panel_title(ui, "The arrangement",
                "Drag pieces on the wall; they come to rest at the wanted gap.");
    try_button(ui, state);
    command_button(ui, session, desk::CommandId::even_gaps, ButtonLook::plain, -1);
    command_button(ui, session, desk::CommandId::centre_group, ButtonLook::plain, -1);
    command_button(ui, session, desk::CommandId::centre_over, ButtonLook::plain, -1);
    wishes_list(ui, state);
    score_part(ui, state);
    if (section(ui, "arrange/wanted", "Gap and heights", true))
        style_rows(ui, session);
    growth_panel(ui, state);
    suggestions_panel(ui, state);
    groups_list(ui, session);
}

}  // namespace wallwright::app
