#include "app/panels/action_button.h"
#include "app/panels/panels.h"
#include "app/panels/piece_list.h"
#include "edits/edit.h"
#include "units/length.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using wall::PieceState;

std::string counts(const wall::Project& project) {
    const auto count = [&project](PieceState state) {
        return std::ranges::count(project.pieces, state, &wall::Piece::state);
    };
    return fmt::format("{} hung, {} planned, {} waiting", count(PieceState::hung),
                       count(PieceState::planned), count(PieceState::waiting));
}

/// "a4" is a sheet's name in capitals; the others are measures already.
std::string words_for(const wall::NamedSize& named) {
    return capital(named.name);
}

void usual_size_row(Ui& ui, const desk::Session& session) {
    wall::Size& size = ui.memory.new_frame;
    const std::vector<wall::NamedSize> sizes = session.catalogue().sizes;
    std::vector<std::string> words{"as typed"};
    int chosen = 0;
    for (const wall::NamedSize& named : sizes) {
        words.push_back(words_for(named));
        if (named.size == size && chosen == 0)
            chosen = static_cast<int>(words.size()) - 1;
    }
    const auto picked = choice_row(ui, "pieces/usual", "Usual size", chosen, words,
                                   "Sizes that frames and sheets are sold in, upright.");
    if (picked && *picked > 0)
        size = sizes[static_cast<std::size_t>(*picked) - 1].size;
}

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
    usual_size_row(ui, session);
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
    panel_title(ui, "The pieces", counts(state.session.project()));
    new_frame(ui, state.session);
    action_button(ui, state, ActionId::import_frames, "import");
    piece_list(ui, state.session);
}

}  // namespace wallwright::app
