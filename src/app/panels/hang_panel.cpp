#include "app/panels/action_button.h"
#include "app/panels/marks_list.h"
#include "app/panels/panels.h"
#include "app/scoped.h"
#include "edits/room.h"

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

/// What must be at hand for the planned pieces.
struct Need {
    wall::FixingTypeId type;
    std::string title;
    int count = 0;
    int in_stock = 0;
};

std::vector<Need> needs_of(const Project& project, const rules::Assessment& found) {
    std::vector<Need> needs;
    for (const hanging::Hanging& hanging : found.hangings) {
        const wall::Piece* piece = wall::find(project, hanging.piece);
        if (piece == nullptr || piece->state != wall::PieceState::planned ||
            hanging.fixings.empty())
            continue;
        const wall::FixingTypeId& type = hanging.fixings.front().type;
        auto need = std::ranges::find(needs, type, &Need::type);
        if (need == needs.end())
            need = needs.insert(needs.end(), {type, hanging.fixing_title});
        need->count += static_cast<int>(hanging.fixings.size());
    }
    for (Need& need : needs) {
        const auto stock = std::ranges::find(project.stock, need.type, &wall::Stock::fixing);
        need.in_stock = stock == project.stock.end() ? 0 : stock->count;
    }
    return needs;
}

void set_stock(Project& project, const wall::FixingTypeId& type, int count) {
    const auto stock = std::ranges::find(project.stock, type, &wall::Stock::fixing);
    if (stock != project.stock.end() && count == 0)
        project.stock.erase(stock);
    else if (stock != project.stock.end())
        stock->count = count;
    else if (count > 0)
        project.stock.push_back({type, count, {}});
}

void needs_rows(Ui& ui, desk::Session& session) {
    const std::vector<Need> needs = needs_of(session.project(), session.assessment());
    if (needs.empty())
        return;
    heading(ui, "To have at hand");
    for (const Need& need : needs) {
        const ScopedId id(need.type.text.c_str());
        value_row(ui, need.title.c_str(), fmt::format("{}", need.count));
        const std::string name = fmt::format("hang/stock/{}", need.type.text);
        if (const auto count = count_row(ui, name.c_str(), "   in the drawer", need.in_stock,
                                         "How many you have. Fixings at hand are used first."))
            change(session, "Count the fixings",
                   [&need, count](Project& project) { set_stock(project, need.type, *count); });
    }
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
    needs_rows(ui, session);
}

}  // namespace wallwright::app
