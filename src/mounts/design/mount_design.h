// What is cut for one mount: its blank, the windows of each layer, and where each print lies.
#pragma once

#include "mounts/window.h"

#include <optional>
#include <vector>

namespace wallwright::mounts {

/// mm on a blank seen from the front: x right from its left edge, y down from its top edge.
struct Front {
    static constexpr bool kUpward = false;
};

using geometry::Rect;

/// A window through one board. Seen from the front the opening at the board's back is smaller than
/// the one at its face by the bevel: at 45 degrees one thickness of the board on each side. A
/// straight cut has two equal openings.
struct Window {
    Rect<Front> face;
    Rect<Front> back;
    bool operator==(const Window&) const = default;
};

/// One board of the mount.
struct CutLayer {
    wall::Layer card;
    wall::Colour colour;
    double reveal = 0;  ///< mm by which its windows are smaller than those of the layer in front.
    std::vector<Window> windows;  ///< In the order of the prints; none where the print floats.
    bool operator==(const CutLayer&) const = default;
};

struct LaidPrint {
    wall::PrintId id;
    std::string title;     ///< The id stands in for an empty one.
    Rect<Front> place;     ///< Of the sheet.
    double across = 0;     ///< mm of overlap at left and right, after growing.
    double down = 0;       ///< mm of overlap at top and bottom, after growing.
    Borders covered;       ///< mm of it behind the lowest layer, measured at that layer's face.
    Borders out_of_sight;  ///< The same at the opening that touches it: with the bevel's share.
    bool operator==(const LaidPrint&) const = default;
};

/// mm from the lip backward.
struct Depth {
    double glazing = 0;
    double spacer = 0;  ///< Under the lip, where a print that floats lies behind glazing.
    double layers = 0;
    double print = 0;
    double backing = 0;
    double rebate = 0;  ///< 0 where there is no frame.
    [[nodiscard]] double total() const { return glazing + spacer + layers + print + backing; }
    bool operator==(const Depth&) const = default;
};

struct MountDesign {
    geometry::Size blank;
    std::vector<CutLayer> layers;   ///< From the top one toward the print; a floating print lies on
                                    ///< the only one.
    std::vector<LaidPrint> prints;  ///< One for each window, or that float.
    Borders cut;  ///< From the blank's edges to the outermost windows of the top layer at its face,
                  ///< or to the prints that float.
    Borders lip;  ///< What the frame's lip covers of the blank in the middle of its rebate.
    Borders seen;  ///< cut - lip.
    Depth depth;
    wall::WindowEdge edge = wall::WindowEdge::bevel;
    bool floats = false;
    /// Outside of the least frame of this moulding, as it hangs and in whole mm, that keeps the
    /// borders as wanted, if need be with the most overlap; only where this frame cannot.
    std::optional<geometry::Size> frame_that_serves;
    /// The same for one that keeps the overlap as wanted too.
    std::optional<geometry::Size> frame_as_wanted;
    bool operator==(const MountDesign&) const = default;
};

/// mm between a floating print and the frame's lip; common practice, no source.
inline constexpr double kFloatClear = 3;
/// mm between a floating print and the glazing at least; common practice, no source.
inline constexpr double kSpacerLeast = 3;

/// Paper of this weight, mm. With the 0.8 g/cm3 that GNU units gives for paper.
double paper_thickness(double grams_per_square_metre);

/// `frame` is taken as_hung(), `prints` are those of the mount's openings in their order, or one
/// where it has none.
///
/// The overlap is measured at the face of the lowest layer's window, since that layer touches the
/// print: lowest window = print - 2 x overlap, and each layer in front of it is larger by the
/// reveal on each side, face to face. A bevel covers one thickness more of the print.
/// Borders, base and bars are those of the top layer. Where a border would be thinner than
/// border_least past the lip, the overlap grows in that direction, to overlap_most at most.
MountDesign design_mount(const wall::Frame& frame, const wall::Mount& mount,
                         const std::vector<wall::Print>& prints);

/// Of a piece of the project, its blank taken down to the rule_step() of the project's unit; empty
/// where it has no mount, or the mount no print.
std::optional<MountDesign> design_of(const wall::Project& project, const wall::Piece& piece);

/// mm of the board of mount card that a print in a window is hung on, between it and the backing:
/// as thick as the top layer; 0 where the print floats on its card.
double undermount_thickness(const MountDesign& design);

/// A frame that covers nothing of its contents, for a mount of a given blank without one.
wall::Frame frame_around(geometry::Size blank);

}  // namespace wallwright::mounts
