#include "desk/command_functions.h"

#include <algorithm>
#include <tuple>

namespace wallwright::desk {

namespace {

/// Placed pieces from left to right, of those at one place the upper first, then the waiting ones.
std::vector<wall::PieceId> in_reading_order(const wall::Project& project) {
    std::vector<wall::Placed> placed = wall::placed_pieces(project);
    std::ranges::stable_sort(placed, {}, [](const wall::Placed& one) {
        return std::tuple(one.place.left(), -one.place.top());
    });
    std::vector<wall::PieceId> ids;
    for (const wall::Placed& one : placed)
        ids.push_back(one.id);
    for (const wall::Piece& piece : project.pieces)
        if (!wall::place_of(project, piece))
            ids.push_back(piece.id);
    return ids;
}

/// `way` places on from the piece that was selected last, past the end from the start again.
void select_along(Session& session, std::ptrdiff_t way) {
    const std::vector<wall::PieceId> order = in_reading_order(session.kept());
    const std::vector<wall::PieceId> selected = session.selection.pieces();
    const auto count = std::ssize(order);
    std::ptrdiff_t index = way > 0 ? 0 : count - 1;
    if (!selected.empty()) {
        const auto found = std::ranges::find(order, selected.back());
        index = (found - order.begin() + way + count) % count;
    }
    session.selection.set(Thing(order[static_cast<std::size_t>(index)]));
}

}  // namespace

std::string hinders_undo(const Session& session) {
    return session.history().can_undo() ? "" : "There is nothing to undo";
}

void do_undo(Session& session) {
    session.undo();
}

std::string hinders_redo(const Session& session) {
    return session.history().can_redo() ? "" : "There is nothing to redo";
}

void do_redo(Session& session) {
    session.redo();
}

std::string hinders_select(const Session& session) {
    return session.kept().pieces.empty() ? "There are no pieces yet; add one first" : "";
}

void do_select_all(Session& session) {
    session.selection.set(in_reading_order(session.kept()));
}

std::string hinders_select_nothing(const Session& session) {
    return session.selection.empty() && !session.pointed_out ? "Nothing is selected" : "";
}

void do_select_nothing(Session& session) {
    session.selection.clear();
    session.pointed_out.reset();
}

void do_select_next(Session& session) {
    select_along(session, 1);
}

void do_select_previous(Session& session) {
    select_along(session, -1);
}

}  // namespace wallwright::desk
