// The things to do on the day, in order: draw the line, make the marks, fix, hang.
#pragma once

#include "rules/assess.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace wallwright::desk {

/// line: the level line that all marks are measured from.
enum class DeedKind : std::uint8_t { line, mark, fix, hang };

/// One thing to do. What was ticked for it holds as long as is_same() says so.
struct Deed {
    DeedKind kind = DeedKind::mark;
    wall::PieceId piece{};  ///< None for the line.
    std::string what{};     ///< A mark's own words, or the type of the fixings.
    /// Of the mark, of each fixing, of the piece's corner; the line's height.
    std::vector<geometry::Point<geometry::Wall>> places{};
    std::size_t mark = 0;  ///< For DeedKind::mark: its index in the table of marks.
};

/// The same thing at the same places, whatever the mark's number is now.
bool is_same(const Deed& one, const Deed& other);

/// The first stage of growth among the planned pieces that are bought and have marks; 0 where none
/// is of a stage.
int first_stage(const wall::Project& project, const rules::Assessment& assessment);

/// All that is to be done for that stage, in the order of hanging: the line first where the datum
/// wants one; then for each piece its marks, fixing it, hanging it. What is not bought yet and what
/// has no fixing that carries it is left out.
std::vector<Deed> deeds_of(const wall::Project& project, const rules::Assessment& assessment,
                           int stage);

}  // namespace wallwright::desk
