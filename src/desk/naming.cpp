#include "desk/naming.h"

#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::desk {

std::string name_of(const wall::Project& project, std::span<const wall::PieceId> pieces) {
    return pieces.size() == 1 ? wall::title_of(project, pieces.front())
                              : fmt::format("{} pieces", pieces.size());
}

std::string name_of(const wall::Project& project, const Selection& selection) {
    const std::vector<wall::PieceId> pieces = selection.pieces();
    return pieces.empty() ? title_of(project, selection.things().front())
                          : name_of(project, std::span<const wall::PieceId>(pieces));
}

std::string counts_of(const wall::Project& project) {
    const auto count = [&project](wall::PieceState state) {
        return std::ranges::count(project.pieces, state, &wall::Piece::state);
    };
    return fmt::format("{} hung, {} planned, {} waiting", count(wall::PieceState::hung),
                       count(wall::PieceState::planned), count(wall::PieceState::waiting));
}

std::string why_fixed(const wall::Piece& piece) {
    return piece.state == wall::PieceState::hung
               ? fmt::format("{} hangs already; call it planned to move it", title_of(piece))
               : fmt::format("{} is pinned; unpin it to move it", title_of(piece));
}

std::string move_words(const wall::Project& project, const std::string& name,
                       geometry::Vec<geometry::Wall> by) {
    std::string words = fmt::format("Move {}", name);
    if (by.x != 0)
        words += fmt::format(" {} to the {}", units::format_length(std::abs(by.x), project.unit),
                             by.x > 0 ? "right" : "left");
    if (by.y != 0)
        words += fmt::format(" {} {}", units::format_length(std::abs(by.y), project.unit),
                             by.y > 0 ? "up" : "down");
    return words;
}

}  // namespace wallwright::desk
