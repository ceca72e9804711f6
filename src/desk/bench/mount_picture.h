// One mount as the bench shows it, kept until something changes.
#pragma once

#include "desk/bench/bench.h"
#include "desk/bench/mount_tool.h"
#include "draw/drawing.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace wallwright::desk {

struct MountPicture {
    draw::WallDrawing drawing;
    /// Empty where the piece has no mount or no print: then the drawing is of its frame alone.
    std::optional<mounts::MountDesign> design;
    /// Where the blank lies in the drawing, seen from the front.
    geometry::Rect<geometry::Wall> blank;
    MountSide side = MountSide::front;  ///< The front where there is no design.
    std::size_t layer = 0;              ///< One that the mount has.
    units::LengthUnit unit = units::LengthUnit::mm;

    std::uint64_t version = 0;  ///< Of the session, 0 before the first.
    wall::PieceId piece;
    double scale = 0;  ///< mm on paper for a mm of mount.
};

/// Draws anew when the session's version, the piece, what the bench shows of it or the scale is
/// another. The piece is one of the session's. True when it was drawn.
bool refresh(MountPicture& picture, const Session& session, const wall::PieceId& piece,
             const Bench& bench, double scale);

/// From what is drawn from the front to the blank, and back.
geometry::Point<mounts::Front> on_blank(const MountPicture& picture,
                                        geometry::Point<geometry::Wall> at);
geometry::Rect<geometry::Wall> on_drawing(const MountPicture& picture,
                                          const geometry::Rect<mounts::Front>& place);

/// What the hand holds or could take, where it rests, and the number that changes; over the drawing
/// of the front.
std::vector<draw::Shape<geometry::Wall>> overlay(const MountPicture& picture,
                                                 const MountShowing& showing);

}  // namespace wallwright::desk
