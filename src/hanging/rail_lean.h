// How far a piece that hangs from a rail by a cord leans out from the wall.
#pragma once

namespace wallwright::hanging {

/// A piece seen from its side, in mm.
struct SideView {
    double depth = 0;   ///< From the wall to the centre of gravity, as it stands flat.
    double tied = 0;    ///< From the lower edge up to where the cord is tied, above its middle.
    double cord = 0;    ///< From there up to the hook on the rail.
    double height = 0;  ///< Of the piece.
};

/// mm from the wall to where the cord is tied, t. The lower back edge rests on the wall without
/// friction, and the hook on the rail stands straight above it (our assumptions; what holds the
/// hook out farther adds to it). Leaning by t / y the weight W acts x + h t / (2 y) off the wall,
/// the cord carries W at t and pulls back with W t / L at y; their moments about the lower edge,
/// W (x + h t / (2 y)) = W t + W t y / L, give t = x / (y / L + 1 - h / (2 y)) for a small lean.
double lean_out(const SideView& side);

}  // namespace wallwright::hanging
