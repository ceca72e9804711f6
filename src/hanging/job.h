// One piece on the wall as the choice of its fixing sees it.
#pragma once

#include "hanging/bearing.h"

namespace wallwright::hanging {

/// Holds on to the project, so it is for use while that stays where it is.
struct Job {
    const wall::Project& project;
    const wall::Piece& piece;
    geometry::Rect<geometry::Wall> place;
    PieceMass mass;
    wall::Hanger hanger;             ///< With all its measures.
    std::optional<Bearing> bearing;  ///< None where the hanger cannot hold the piece.
};

/// A job for every piece with a place, in the project's order.
std::vector<Job> jobs_of(const wall::Project& project, const wall::Catalogue& catalogue);

/// A point of the piece's back, on the wall.
geometry::Point<geometry::Wall> on_wall(const Job& job, const BackPoint& point);

/// The piece's title, or its id where it has none.
const std::string& name_of(const Job& job);

/// A finding about the piece: `text` follows its name and a colon, a full stop follows `text`.
wall::Finding about(const Job& job, const char* rule, wall::Severity severity,
                    const std::string& text);

}  // namespace wallwright::hanging
