// The window of a mount: what is cut, and what is seen past the lip of the frame.
#pragma once

#include "wall/project.h"

namespace wallwright::mounts {

/// Four borders in mm, as seen from the front.
struct Borders {
    double left = 0;
    double right = 0;
    double top = 0;
    double bottom = 0;
    bool operator==(const Borders&) const = default;
};

/// A mount worked out. Offsets are from the blank's left and top edge as seen from the front.
struct MountPlan {
    geometry::Size blank;
    geometry::Size window;
    Borders cut;   ///< From the blank's edges to the window.
    Borders seen;  ///< What the frame's lip leaves visible of them.
    bool operator==(const MountPlan&) const = default;
};

/// mm by which glazing, mount and backing are cut smaller than the rebate in each direction, both
/// sides together: 1 to 3 mm in the Fine Art Trade Guild framing standards, read in framers'
/// copies.
inline constexpr double kRebateClearance = 2;

/// The size of what goes into the frame's rebate, mm: outside less the moulding on both sides, plus
/// the lip that covers it, less `clearance` in each direction. For a piece hung a quarter turn from
/// its frame, turn the frame's outside first.
geometry::Size blank_size(const wall::Frame& frame, double clearance = kRebateClearance);

/// Window = print - 2 x overlap; borders split equally, the lower one wider by base_extra; seen =
/// cut - how far the lip covers the blank when it lies in the middle of the rebate. Lengths in mm;
/// a negative border means that this print does not fit this frame.
MountPlan plan_mount(const wall::Frame& frame, const wall::Mount& mount, const wall::Print& print);

}  // namespace wallwright::mounts
