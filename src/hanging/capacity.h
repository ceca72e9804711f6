// What one fixing may carry in this wall, at this place.
#pragma once

#include "hanging/weight.h"

#include <optional>

namespace wallwright::hanging {

/// Why a fixing cannot go into the wall at a place. core: it is made for walls of another kind.
/// stud: it holds only in a stud, and there is none. hollow: it opens behind the board, and there
/// is a stud. rail: there is no picture rail above the piece.
enum class Unfit { no, core, stud, hollow, rail };

struct Capacity {
    Kilograms rated;       ///< Before any margin.
    bool on_stud = false;  ///< It goes into a stud, or into a wall of wood.
    std::optional<Newtons>
        nails_hold;  ///< Straight out of the wood; none where it holds otherwise.
    Unfit unfit = Unfit::no;
};

/// What is behind the surface; behind a wall with studs there is board even where nobody has said
/// so.
wall::Core core_behind(const wall::Room& room);

/// Where its point is `across` mm from the wall's left end. In plasterboard and lath that its
/// packet does not name it keeps style.weak_wall_share of its rating, unless it goes into a stud
/// (test, and count on half: trade articles on wall fixings; common practice, no source). Nails
/// behind a board must reach 10 mm into the stud (our choice).
Capacity capacity_at(const wall::Room& room, const wall::HangingStyle& style,
                     const wall::FixingType& type, double across);

/// True for what is made for hollow walls and no others.
bool only_hollow(const wall::FixingType& type);

}  // namespace wallwright::hanging
