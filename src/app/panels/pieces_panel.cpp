#include "app/panels/action_button.h"
#include "app/panels/panels.h"
#include "app/panels/piece_list.h"
#include "app/panels/usual_size_row.h"
#include "desk/naming.h"
#include "edits/edit.h"
#include "units/length.h"

#include <fmt/format.h>

namespace wallwright::app {

namespace {

void add_frame(desk::Session& session, wall::Size size) {
    const units::LengthUnit unit = session.project().unit;
    wall::Piece piece;
    piece.title = fmt::format("Frame {} × {}", units::format_number(size.width, unit),
                              units::format_number(size.height, unit));
    session.apply("Add a frame",
                  edits::add_piece(session.kept(), edits::usual_frame(size), std::move(piece)));
}

void new_frame(Ui& ui, desk::Session& session) {
    heading(ui, "Another frame");
    if (const auto usual =
            usual_size_row(ui, "pieces/usual", session.catalogue().sizes, ui.memory.new_frame))
        ui.memory.new_frame = *usual;
    if (const auto size =
            size_row(ui, "pieces/size", "Outside", ui.memory.new_frame, session.project().unit,
                     "Width and height over the moulding, in any unit: 30 x 40 cm."))
        ui.memory.new_frame = *size;
    if (button(ui, "pieces/add", "Add it to the waiting pieces",
               "Its other measures are the usual ones until you type what you measured.",
               ButtonLook::main, -1))
        add_frame(session, ui.memory.new_frame);
}

}  // namespace

void pieces_panel(Ui& ui, State& state) {
    panel_title(ui, "The pieces", desk::counts_of(state.session.project()));
    new_frame(ui, state.session);
    action_button(ui, state, ActionId::import_frames, "import");
    piece_list(ui, state.session);
}

}  // namespace wallwright::app
