#include "app/bench/prints_parts.h"
#include "app/panels/panels.h"
#include "app/panels/usual_size_row.h"
#include "app/widgets.h"
#include "edits/prints.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

std::string counts(const wall::Project& project) {
    const auto framed = std::ranges::count_if(project.prints, [&](const wall::Print& print) {
        return desk::piece_with(project, print.id).has_value();
    });
    return fmt::format("{} {}, {} of them framed; {} {}. Drag a print onto a frame.",
                       project.prints.size(), project.prints.size() == 1 ? "print" : "prints",
                       framed, project.pieces.size(),
                       project.pieces.size() == 1 ? "frame" : "frames");
}

void take_all_button(Ui& ui, State& state) {
    desk::MatchChoice& choice = state.prints.choice;
    const bool can = choice.changes_anything(state.session);
    const char* why = can ? "Puts every print into the frame that the dashed lines lead to, with "
                            "a mount where it needs one. One step to undo."
                      : choice.is_stale() ? "The match is still being worked out."
                                          : "Every print is where it matches best.";
    if (button(ui, "prints/take-all", "Take all of the match", why, ButtonLook::main, -1, can))
        choice.take_all(state.session);
}

void add_print(State& state) {
    const wall::Size size = state.prints.new_print;
    const units::LengthUnit unit = state.session.kept().unit;
    wall::Print print;
    print.size = size;
    print.title = fmt::format("Print {} × {}", units::format_number(size.width, unit),
                              units::format_number(size.height, unit));
    wall::PrintId made;
    auto changed = edits::add_print(state.session.kept(), print, made);
    if (state.session.apply("Add a print", std::move(changed)))
        state.prints.hand.chosen = made;
}

void new_print(Ui& ui, State& state) {
    if (!section(ui, "prints/another", "Another print", state.session.kept().prints.empty()))
        return;
    wall::Size& size = state.prints.new_print;
    if (const auto usual =
            usual_size_row(ui, "prints/usual", state.session.catalogue().sizes, size))
        size = *usual;
    if (const auto typed =
            size_row(ui, "prints/new-size", "Sheet", size, state.session.kept().unit,
                     "Width and height of the whole sheet, in any unit: 21 x 29.7 cm."))
        size = *typed;
    if (button(ui, "prints/add", "Add it to the drawer", "", ButtonLook::plain, -1))
        add_print(state);
}

}  // namespace

void prints_panel(Ui& ui, State& state) {
    panel_title(ui, "Prints and frames", counts(state.session.kept()));
    const std::string hindrance = desk::MatchChoice::hindrance(state.session);
    if (!hindrance.empty())
        hint(ui, hindrance);
    else
        take_all_button(ui, state);
    chosen_print_part(ui, state);
    match_list(ui, state);
    new_print(ui, state);
}

}  // namespace wallwright::app
