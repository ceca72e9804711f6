#include "desk/bench/match_moves.h"

#include "mounts/match/match_words.h"
#include "mounts/window.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::desk {

namespace {

using mounts::Fitting;
using wall::Piece;
using wall::PieceId;
using wall::PrintId;
using wall::Project;

const wall::Mount* mount_of(const Project& project, const Piece& piece) {
    return piece.mount ? find(project, *piece.mount) : nullptr;
}

/// The print, and the mount or none that it needs in this frame.
void add_pair(MatchMoves& moves, const Project& project, const PrintId& print, const Piece& piece,
              const Fitting& fitting) {
    const bool is_so =
        piece.print == print && fitting.mounted == (mount_of(project, piece) != nullptr);
    if (!is_so)
        moves.prints.push_back(
            {piece.id, print, fitting.mounted ? std::optional(wall::Mount{}) : std::nullopt});
    if (!is_fixed(piece) && fitting.turned != piece.turned)
        moves.to_turn.push_back(piece.id);
}

const wall::Mount* with_windows(const Project& project, const PrintId& print) {
    for (const Piece& piece : project.pieces) {
        const wall::Mount* mount = mount_of(project, piece);
        if (mount != nullptr && std::ranges::count(mount->openings, print, &wall::Opening::print))
            return mount;
    }
    return nullptr;
}

/// Why a hand may not put them together; empty when it may.
std::string hindrance(const Project& project, const PrintId& print, const PieceId& piece) {
    const Piece* into = find(project, piece);
    const wall::Mount* mount = into == nullptr ? nullptr : mount_of(project, *into);
    if (into != nullptr && into->keeps_print && into->print && into->print != print)
        return fmt::format("The frame {} keeps {}; let that go first.", frame_title(project, piece),
                           title_of(project, *into->print));
    if (mount != nullptr && !mount->openings.empty())
        return fmt::format(
            "The frame {} has a mount with several windows; choose its prints with "
            "the mount.",
            frame_title(project, piece));
    if (with_windows(project, print) != nullptr)
        return fmt::format("{} has a window of its own in a mount; take that out first.",
                           title_of(project, print));
    const auto from = piece_with(project, print);
    if (from && *from != piece && find(project, *from)->keeps_print)
        return fmt::format("{} is kept in the frame {}; let it go first.", title_of(project, print),
                           frame_title(project, *from));
    return "";
}

}  // namespace

MatchMoves moves_of(const Project& project, const mounts::Match& match) {
    MatchMoves moves;
    for (const mounts::LeftPiece& left : match.left_pieces)
        if (const Piece* piece = find(project, left.piece); piece != nullptr && piece->print)
            moves.prints.push_back({left.piece, std::nullopt, std::nullopt});
    for (const mounts::Pair& pair : match.pairs)
        if (const Piece* piece = find(project, pair.piece);
            piece != nullptr && !pair.kept && pair.fitting)
            add_pair(moves, project, pair.print, *piece, *pair.fitting);
    return moves;
}

MatchMoves moves_of(const Project& project, const PrintId& print, const PieceId& piece) {
    MatchMoves moves;
    const std::optional<Fitting> fitting = fitting_of(project, print, piece);
    if (!fitting)
        return moves;
    for (const Piece& other : project.pieces)
        if (other.print == print && other.id != piece && !other.keeps_print)
            moves.prints.push_back({other.id, std::nullopt, std::nullopt});
    add_pair(moves, project, print, *find(project, piece), *fitting);
    return moves;
}

Result<Project> with_moves(const Project& project, const MatchMoves& moves) {
    auto with = edits::put_prints_with_mounts(project, moves.prints);
    return with && !moves.to_turn.empty() ? edits::turn(std::move(*with), moves.to_turn) : with;
}

std::optional<Fitting> fitting_of(const Project& project, const PrintId& print,
                                  const PieceId& piece) {
    const wall::Print* one = find(project, print);
    const Piece* into = find(project, piece);
    if (one == nullptr || into == nullptr)
        return std::nullopt;
    const wall::Mount* mount = mount_of(project, *into);
    return mounts::best_fitting(
        {frame_of(project, *into), mount != nullptr ? *mount : wall::Mount{}, into->turned,
         !is_fixed(*into)},
        *one);
}

std::string fitting_words(const Project& project, const PrintId& print, const PieceId& piece) {
    const Piece* into = find(project, piece);
    if (into == nullptr || find(project, print) == nullptr)
        return "";
    if (std::string why = hindrance(project, print, piece); !why.empty())
        return why;
    const std::optional<Fitting> fitting = fitting_of(project, print, piece);
    if (!fitting) {
        const geometry::Size takes =
            mounts::blank_size(mounts::as_hung(frame_of(project, *into), into->turned));
        return fmt::format(
            "{} would not do in this frame, which takes {} x {}; trim it or "
            "choose another.",
            title_of(project, print), units::format_number(takes.width, project.unit),
            units::format_length(takes.height, project.unit));
    }
    return mounts::pair_text(project, {print, piece, fitting, false, into->print != print, {}, {}});
}

bool will_do(const Project& project, const PrintId& print, const PieceId& piece) {
    return hindrance(project, print, piece).empty() && fitting_of(project, print, piece);
}

bool put_by_hand(Session& session, const PrintId& print, const PieceId& piece) {
    const Project& project = session.kept();
    if (!will_do(project, print, piece)) {
        session.notice = Notice{true, fitting_words(project, print, piece)};
        return false;
    }
    const MatchMoves moves = moves_of(project, print, piece);
    if (moves.empty())
        return false;
    return session.apply(fmt::format("Put {} into the frame {}", title_of(project, print),
                                     frame_title(project, piece)),
                         with_moves(project, moves));
}

bool take_out(Session& session, const PieceId& piece) {
    const Piece* from = find(session.kept(), piece);
    if (from == nullptr || !from->print)
        return false;
    return session.apply(
        fmt::format("Take {} out of its frame", title_of(session.kept(), *from->print)),
        edits::put_print(session.kept(), piece, std::nullopt));
}

bool keep_print(Session& session, const PieceId& piece, bool keeps) {
    const PieceId ids[] = {piece};
    const Piece* of = find(session.kept(), piece);
    const std::string print = of != nullptr && of->print ? title_of(session.kept(), *of->print)
                                                         : title_of(session.kept(), piece);
    return session.apply(keeps ? fmt::format("Keep {} in its frame", print)
                               : fmt::format("Let {} go from its frame", print),
                         edits::set_keeps_print(session.kept(), ids, keeps));
}

std::string frame_title(const Project& project, const PieceId& id) {
    const Piece* piece = find(project, id);
    if (piece == nullptr)
        return id.text;
    const wall::Frame& frame = frame_of(project, *piece);
    return frame.title.empty() ? title_of(*piece) : frame.title;
}

std::optional<PieceId> piece_with(const Project& project, const PrintId& print) {
    const auto found = std::ranges::find(project.pieces, std::optional(print), &Piece::print);
    return found == project.pieces.end() ? std::nullopt : std::optional(found->id);
}

}  // namespace wallwright::desk
