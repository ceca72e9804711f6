#include "desk/command_functions.h"
#include "desk/naming.h"
#include "edits/room.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::desk {

namespace {

using geometry::Wall;
using Vec = geometry::Vec<Wall>;
using wall::PieceState;

constexpr const char* kSelectPiece = "Select a piece first";

bool all_are(const wall::Project& project, edits::PieceIds ids, bool (*is)(const wall::Piece&)) {
    return std::ranges::all_of(
        ids, [&](const wall::PieceId& id) { return is(*wall::find(project, id)); });
}

bool is_hung(const wall::Piece& piece) {
    return piece.state == PieceState::hung;
}

bool is_pinned(const wall::Piece& piece) {
    return piece.pinned;
}

std::vector<wall::PieceId> selected_planned(const Session& session) {
    std::vector<wall::PieceId> ids = session.selection.pieces();
    std::erase_if(ids, [&session](const wall::PieceId& id) {
        return wall::find(session.kept(), id)->state != PieceState::planned;
    });
    return ids;
}

/// Beside the originals where that is on the wall: to the right, or else to the left, above or
/// below; a little aside where there is no room.
Vec way_for_copies(const wall::Project& project, edits::PieceIds originals) {
    const double gap = project.style.gap;
    if (originals.empty())
        return {gap, 0};
    const geometry::Rect<Wall> bounds = bounds_of(project, originals);
    const double across = bounds.width() + gap;
    const double up = bounds.height() + gap;
    for (const Vec by : {Vec{across, 0}, Vec{-across, 0}, Vec{0, up}, Vec{0, -up}})
        if (geometry::contains(project.room.outline, bounds.moved(by)))
            return by;
    return {gap, -gap};
}

Result<wall::Project> without_selected(const Session& session) {
    if (const auto furniture = session.selection.furniture())
        return edits::remove(session.kept(), *furniture);
    if (const auto fixture = session.selection.fixture())
        return edits::remove(session.kept(), *fixture);
    return edits::remove_pieces(session.kept(), session.selection.pieces());
}

}  // namespace

std::string hinders_turn(const Session& session) {
    const std::vector<wall::PieceId> pieces = session.selection.pieces();
    if (pieces.empty())
        return kSelectPiece;
    const wall::Piece* fixed = first_fixed(session.kept(), pieces);
    return fixed == nullptr ? "" : why_fixed(*fixed);
}

void do_turn(Session& session) {
    const std::vector<wall::PieceId> pieces = session.selection.pieces();
    session.apply(fmt::format("Turn {}", name_of(session.kept(), pieces)),
                  edits::turn(session.kept(), pieces));
}

std::string hinders_swap(const Session& session) {
    const std::vector<wall::PieceId> pieces = session.selection.pieces();
    if (pieces.size() != 2)
        return "Select two pieces first";
    if (const wall::Piece* fixed = first_fixed(session.kept(), pieces))
        return why_fixed(*fixed);
    return selected_on_wall(session).empty() ? "Put one of them on the wall first" : "";
}

void do_swap(Session& session) {
    const std::vector<wall::PieceId> pieces = session.selection.pieces();
    session.apply(fmt::format("Swap {} and {}", title_of(session.kept(), pieces[0]),
                              title_of(session.kept(), pieces[1])),
                  edits::swap_places(session.kept(), pieces[0], pieces[1]));
}

std::string hinders_pin(const Session& session) {
    if (session.selection.pieces().empty())
        return kSelectPiece;
    if (!selected_planned(session).empty())
        return "";
    return selected_on_wall(session).empty() ? "Put it on the wall first"
                                             : "What hangs already stays where it is anyway";
}

void do_pin(Session& session) {
    const std::vector<wall::PieceId> pieces = selected_planned(session);
    const bool unpin = all_are(session.kept(), pieces, is_pinned);
    session.apply(fmt::format("{} {}", unpin ? "Unpin" : "Pin", name_of(session.kept(), pieces)),
                  edits::set_pinned(session.kept(), pieces, !unpin));
}

std::string hinders_hang(const Session& session) {
    if (session.selection.pieces().empty())
        return kSelectPiece;
    return selected_on_wall(session).empty() ? "Put it on the wall first" : "";
}

void do_hang(Session& session) {
    const std::vector<wall::PieceId> pieces = selected_on_wall(session);
    const bool plan = all_are(session.kept(), pieces, is_hung);
    const std::string name = name_of(session.kept(), pieces);
    session.apply(
        fmt::format("Call {} {}", name, plan ? "planned" : "hung"),
        edits::set_state(session.kept(), pieces, plan ? PieceState::planned : PieceState::hung));
}

std::string hinders_take_down(const Session& session) {
    if (session.selection.pieces().empty())
        return kSelectPiece;
    return selected_on_wall(session).empty() ? "It waits on the floor already" : "";
}

void do_take_down(Session& session) {
    const std::vector<wall::PieceId> pieces = selected_on_wall(session);
    session.apply(fmt::format("Take {} down", name_of(session.kept(), pieces)),
                  edits::take_down(session.kept(), pieces));
}

std::string hinders_duplicate(const Session& session) {
    return session.selection.pieces().empty() ? kSelectPiece : "";
}

void do_duplicate(Session& session) {
    const std::vector<wall::PieceId> pieces = session.selection.pieces();
    std::vector<wall::PieceId> made;
    const Vec by = way_for_copies(session.kept(), selected_on_wall(session));
    auto copied = edits::duplicate(session.kept(), pieces, by, made);
    if (session.apply(fmt::format("Duplicate {}", name_of(session.kept(), pieces)),
                      std::move(copied)))
        session.selection.set(made);
}

std::string hinders_remove(const Session& session) {
    return session.selection.empty() ? "Select something first" : "";
}

void do_remove(Session& session) {
    session.apply(fmt::format("Remove {}", name_of(session.kept(), session.selection)),
                  without_selected(session));
}

}  // namespace wallwright::desk
