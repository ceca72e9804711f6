#include "app/panels/piece_parts.h"
#include "edits/edit.h"
#include "edits/pieces.h"
#include "edits/usual_place.h"

#include <fmt/format.h>

#include <array>

namespace wallwright::app {

namespace {

using Spot = geometry::Point<geometry::Wall>;

/// A number that is typed for a piece that hangs already is a better measure of where it is, no
/// move.
void put_at(State& state, const OnePiece& one, Spot at) {
    if (one.piece.state == wall::PieceState::hung) {
        change_piece(state, one, "Measure the place of",
                     [at](wall::Piece& piece) { piece.at = at; });
        return;
    }
    const std::array moves{edits::Move{one.piece.id, at}};
    state.session.apply(fmt::format("Move {}", one.title),
                        edits::place(state.session.kept(), moves));
}

void place_rows(Ui& ui, State& state, const OnePiece& one) {
    if (!one.piece.at)
        return hint(ui, "It waits on the floor. Drag it up onto the wall.");
    const Spot at = *one.piece.at;
    if (const auto left = length_row(ui, "piece/left", "Left edge", at.x, one.unit,
                                     "From the left corner of the wall."))
        put_at(state, one, {*left, at.y});
    if (const auto bottom = length_row(ui, "piece/bottom", "Bottom edge", at.y, one.unit,
                                       "Above the floor at the left corner."))
        put_at(state, one, {at.x, *bottom});
}

}  // namespace

void place_part(Ui& ui, State& state, const OnePiece& one) {
    if (const auto title = text_row(ui, "piece/title", "Title", one.piece.title))
        change_piece(state, one, "Rename", [&title](wall::Piece& piece) { piece.title = *title; });
    const bool turned = one.piece.turned;
    const wall::Size size = wall::outside_size(one.frame, one.piece);
    if (const auto typed = size_row(ui, "piece/size", "Outside", size, one.unit,
                                    "Width and height over the moulding, as it hangs."))
        change_frame(state, one, "Resize", [turned, typed](wall::Frame& frame) {
            frame.outside = turned ? typed->turned() : *typed;
        });
    place_rows(ui, state, one);
    if (!one.piece.at && button(ui, "piece/put", "Put it on the wall",
                                "In the middle, on the centre line.", ButtonLook::main, -1))
        put_at(state, one, edits::usual_place(state.session.kept(), size));
}

}  // namespace wallwright::app
