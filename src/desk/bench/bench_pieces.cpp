#include "desk/bench/bench_pieces.h"

#include "mounts/design/mount_design.h"

#include <algorithm>

namespace wallwright::desk {

namespace {

using wall::Piece;
using wall::PieceId;
using wall::Project;

double left_of(const Piece& piece) {
    return piece.at->x;
}

}  // namespace

std::vector<PieceId> bench_order(const Project& project) {
    std::vector<const Piece*> placed;
    std::vector<PieceId> waiting;
    for (const Piece& piece : project.pieces)
        if (piece.at)
            placed.push_back(&piece);
        else
            waiting.push_back(piece.id);
    std::ranges::stable_sort(placed, {}, [](const Piece* piece) { return left_of(*piece); });
    std::vector<PieceId> order;
    order.reserve(project.pieces.size());
    for (const Piece* piece : placed)
        order.push_back(piece->id);
    order.insert(order.end(), waiting.begin(), waiting.end());
    return order;
}

std::optional<PieceId> piece_on_bench(const Session& session) {
    const auto pieces = session.selection.pieces();
    return pieces.empty() ? std::nullopt : std::optional(pieces.front());
}

void select_mount(Session& session, int by) {
    const std::vector<PieceId> order = bench_order(session.project());
    if (order.empty())
        return;
    const auto piece = piece_on_bench(session);
    const auto now = piece ? std::ranges::find(order, *piece) : order.end();
    const int last = static_cast<int>(order.size()) - 1;
    const int next =
        now == order.end() ? (by > 0 ? 0 : last) : static_cast<int>(now - order.begin()) + by;
    session.selection.set(order[static_cast<std::size_t>(std::clamp(next, 0, last))]);
}

std::size_t layer_count(const Session& session) {
    const auto id = piece_on_bench(session);
    const Piece* piece = id ? wall::find(session.project(), *id) : nullptr;
    const auto design =
        piece == nullptr ? std::nullopt : mounts::design_of(session.project(), *piece);
    return design ? design->layers.size() : 0;
}

}  // namespace wallwright::desk
