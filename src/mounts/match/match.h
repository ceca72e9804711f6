// Which print goes into which frame, at the least cost in all.
#pragma once

#include "mounts/match/fitting.h"

#include <optional>
#include <string>
#include <vector>

namespace wallwright::mounts {

/// What it would mean to put a print into another frame and all others where they then do best.
struct Alternative {
    wall::PieceId piece;
    Cost total = 0;                   ///< Of all pairs, in 0.01 points.
    std::vector<wall::PrintId> left;  ///< Prints that would lose their frame by it.
    std::string text;                 ///< One sentence.
    bool operator==(const Alternative&) const = default;
};

struct Pair {
    wall::PrintId print;
    wall::PieceId piece;
    /// Empty where a kept print does not fit; such a pair costs nothing.
    std::optional<Fitting> fitting;
    bool kept = false;                      ///< Because its piece keeps its print.
    bool moves = false;                     ///< It is not in this piece today.
    std::string text;                       ///< One sentence.
    std::vector<Alternative> alternatives;  ///< Two at most, the better first; none for a kept one.
    bool operator==(const Pair&) const = default;
};

struct LeftPrint {
    wall::PrintId print;
    bool fits_none = false;  ///< No frame here would do; otherwise all that would are taken.
    std::string text;        ///< One sentence.
    bool operator==(const LeftPrint&) const = default;
};

struct LeftPiece {
    wall::PieceId piece;
    std::string text;  ///< One sentence.
    bool operator==(const LeftPiece&) const = default;
};

struct Match {
    std::vector<Pair> pairs;             ///< In the order of the prints.
    std::vector<LeftPrint> left_prints;  ///< In the order of the prints.
    std::vector<LeftPiece> left_pieces;  ///< In the order of the pieces.
    Cost total = 0;                      ///< Of all pairs, in 0.01 points.
    bool operator==(const Match&) const = default;
};

/// As many prints in frames as can be, then at the least cost, then with the fewest prints moved.
/// Prints and pieces of mounts with several windows take no part; all other pieces do, those not
/// bought yet among them.
Match match_prints(const wall::Project& project);

/// A frame that one could get, with the size of the sheet it takes as its name.
struct FrameOnOffer {
    std::string size_name;  ///< As a catalogue writes it: "4x6in".
    wall::Frame frame;
};

/// What one more frame would solve.
struct OneMore {
    std::string size_name;
    wall::PrintId print;                ///< That would be in it,
    bool mounted = true;                ///< behind a mount; otherwise it fills the frame.
    std::vector<wall::PrintId> framed;  ///< Left over without it.
    Cost total = 0;                     ///< Of all pairs with it, in 0.01 points.
    Cost saved = 0;    ///< Against the match without it; negative where a further print is framed.
    std::string text;  ///< One sentence.
    bool operator==(const OneMore&) const = default;
};

/// The frames on offer that would help, `count` at most: those first that frame most prints more,
/// of these the ones that leave the least cost in all, of these the smaller.
std::vector<OneMore> one_more_frame(const wall::Project& project,
                                    const std::vector<FrameOnOffer>& offered,
                                    std::size_t count = 3);

}  // namespace wallwright::mounts
