#include "app/panels/panels.h"
#include "app/panels/wish_parts.h"
#include "app/scoped.h"
#include "app/widgets.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <array>

namespace wallwright::app {

using desk::CommandId;

void several_panel(Ui& ui, State& state) {
    desk::Session& session = state.session;
    const std::vector<wall::PieceId> ids = session.selection.pieces();
    panel_title(ui, fmt::format("{} pieces", ids.size()), titles_of(session.project(), ids));
    if (state.step == desk::Step::arrange && ids.size() == 2) {
        heading(ui, "Wishes for layouts");
        pair_wishes(ui, state, ids[0], ids[1]);
    }
    heading(ui, "Gaps");
    constexpr std::array kGaps{CommandId::even_gaps, CommandId::distribute_across,
                               CommandId::distribute_up};
    command_buttons(ui, session, kGaps);
    heading(ui, "Line up");
    constexpr std::array kLines{CommandId::align_left,     CommandId::align_right,
                                CommandId::align_top,      CommandId::align_bottom,
                                CommandId::align_centre_x, CommandId::align_centre_y};
    command_buttons(ui, session, kLines, "Line up ");
    heading(ui, "All of them");
    constexpr std::array kRest{
        CommandId::centre_group, CommandId::swap,   CommandId::turn,
        CommandId::pin,          CommandId::hang,   CommandId::take_down,
        CommandId::duplicate,    CommandId::remove, CommandId::select_nothing};
    command_buttons(ui, session, kRest);
}

}  // namespace wallwright::app
