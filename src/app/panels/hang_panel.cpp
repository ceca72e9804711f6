#include "app/panels/action_button.h"
#include "app/panels/marks_list.h"
#include "app/panels/panels.h"
#include "app/scoped.h"
#include "edits/room.h"
#include "edits/stock.h"
#include "hanging/needs.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using wall::Datum;
using wall::Project;

void change(desk::Session& session, const char* label,
            const std::function<void(Project&)>& by_hand) {
    session.apply(label, edits::change_project(session.kept(), by_hand));
}

void level_line_row(Ui& ui, desk::Session& session) {
    const Project& project = session.project();
    if (project.datum.height != wall::DatumHeight::level_line)
        return;
    if (const auto height =
            measure_row(ui, "hang/line", "Level line", project.datum.level_line, project.unit,
                        "Above the wall's lowest floor. Draw it lightly with a spirit level."))
        change(session, "Move the level line",
               [height](Project& changed) { changed.datum.level_line = *height; });
}

void datum_rows(Ui& ui, desk::Session& session) {
    const Datum datum = session.project().datum;
    const std::vector<std::string> heights = spoken_names<wall::DatumHeight>();
    if (const auto height =
            choice_row(ui, "hang/height", "Up or down from", static_cast<int>(datum.height),
                       heights, "Floors and ceilings are seldom level; a level line is."))
        change(session, "Change the datum",
               [height](Project& project) { project.datum.height = wall::DatumHeight(*height); });
    level_line_row(ui, session);
    const std::vector<std::string> sides = spoken_names<wall::DatumSide>();
    if (const auto side =
            choice_row(ui, "hang/side", "Across from the", static_cast<int>(datum.side), sides,
                       "The corner at which the tape begins."))
        change(session, "Change the datum",
               [side](Project& project) { project.datum.side = wall::DatumSide(*side); });
}

void tape_row(Ui& ui, desk::Session& session) {
    const std::vector<std::string> classes = spoken_names<wall::TapeClass>();
    const int now = static_cast<int>(session.project().tape);
    if (const auto tape = choice_row(
            ui, "hang/tape", "Tape class", now, classes,
            "Printed on the tape in an oval: Measuring Instruments Directive 2014/32/EU, Annex X."))
        change(session, "Change the tape",
               [tape](Project& project) { project.tape = wall::TapeClass(*tape); });
}

using Needs = std::vector<hanging::Need>;

/// How many are in the drawer is asked once a type, where it comes first.
void need_row(Ui& ui, desk::Session& session, const hanging::Need& need, bool asks) {
    const ScopedId id(need.type.text.c_str());
    value_row(ui, need.title.c_str(), fmt::format("{}", need.count));
    if (!asks)
        return;
    const std::string name = fmt::format("hang/stock/{}", need.type.text);
    if (const auto count = count_row(ui, name.c_str(), "   in the drawer", need.in_drawer,
                                     "How many you have. Fixings at hand are used first."))
        session.apply("Count the fixings", edits::set_stock(session.kept(), need.type, *count));
}

/// Those that other needs before them have named are not asked for again.
void needs_rows(Ui& ui, desk::Session& session, const char* words, const Needs& needs,
                const Needs& before) {
    if (needs.empty())
        return;
    const ScopedId id(words);
    heading(ui, words);
    ui.probe.note(fmt::format("hang/needs/{}", words));
    for (const hanging::Need& need : needs)
        need_row(ui, session, need,
                 std::ranges::find(before, need.type, &hanging::Need::type) == before.end());
}

void all_needs(Ui& ui, desk::Session& session) {
    const auto of = [&session](hanging::Bought bought) {
        return hanging::needs(session.project(), session.assessment().hangings, bought);
    };
    const Needs now = of(hanging::Bought::yes);
    const Needs later = of(hanging::Bought::not_yet);
    needs_rows(ui, session, "To have at hand", now, {});
    needs_rows(ui, session, "For frames not bought yet", later, now);
}

}  // namespace

void hang_panel(Ui& ui, State& state) {
    desk::Session& session = state.session;
    panel_title(ui, "Hanging", "Marks, fixings and what to print.");
    action_button(ui, state, ActionId::sheets, "sheets", ButtonLook::main);
    action_button(ui, state, ActionId::marks, "marks");
    action_button(ui, state, ActionId::elevation, "elevation");
    heading(ui, "Measured from");
    datum_rows(ui, session);
    tape_row(ui, session);
    marks_list(ui, session);
    all_needs(ui, session);
}

}  // namespace wallwright::app
