// Prints put into frames: what has to be changed for it, and by hand.
#pragma once

#include "desk/session.h"
#include "edits/match_edit.h"
#include "mounts/match/match.h"

#include <optional>
#include <string>
#include <vector>

namespace wallwright::desk {

/// Prints that go into frames or out of them, and planned or waiting pieces to turn a quarter.
struct MatchMoves {
    std::vector<edits::PrintWithMount> prints;
    std::vector<wall::PieceId> to_turn;
    [[nodiscard]] bool empty() const { return prints.empty() && to_turn.empty(); }
};

/// What a match would change; what is kept stays as it is.
MatchMoves moves_of(const wall::Project& project, const mounts::Match& match);
/// What putting one print into one frame would change; it leaves the frames it is in, but for those
/// that keep it. Nothing where it will not do.
MatchMoves moves_of(const wall::Project& project, const wall::PrintId& print,
                    const wall::PieceId& piece);

Result<wall::Project> with_moves(const wall::Project& project, const MatchMoves& moves);

/// How a print would sit in this frame, as the match has it: with the piece's mount or a new one,
/// turned where the piece may be moved. Empty where it would not do, or where one of them is not
/// there.
std::optional<mounts::Fitting> fitting_of(const wall::Project& project, const wall::PrintId& print,
                                          const wall::PieceId& piece);
/// What comes of it, as one sentence: the borders, or why it will not do.
std::string fitting_words(const wall::Project& project, const wall::PrintId& print,
                          const wall::PieceId& piece);

/// A hand may put it there, and it would fit.
bool will_do(const wall::Project& project, const wall::PrintId& print, const wall::PieceId& piece);

/// Puts a print into a frame by hand, with the mount it then wants, and takes it out of the one it
/// was in; what is there already goes back into the drawer. A step, or a notice why not.
bool put_by_hand(Session& session, const wall::PrintId& print, const wall::PieceId& piece);
/// Out of its frame, back into the drawer.
bool take_out(Session& session, const wall::PieceId& piece);
/// The piece's print stays in it, or no longer.
bool keep_print(Session& session, const wall::PieceId& piece, bool keeps);

/// The frame's own title; where it has none, its piece's; the id where that is not there.
std::string frame_title(const wall::Project& project, const wall::PieceId& piece);

/// The first piece that has this print in its frame, or none.
std::optional<wall::PieceId> piece_with(const wall::Project& project, const wall::PrintId& print);

}  // namespace wallwright::desk
