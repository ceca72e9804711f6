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
    geometry::Size window;  ///< Of the top layer, at its face.
    Borders cut;            ///< From the blank's edges to the window.
    Borders seen;           ///< What the frame's lip leaves visible of them.
    bool operator==(const MountPlan&) const = default;
};

/// mm by which glazing, mount and backing are cut smaller than the rebate in each direction, both
/// sides together: 1 to 3 mm in the Fine Art Trade Guild framing standards, read in framers'
/// copies.
inline constexpr double kRebateClearance = 2;

/// The frame as it hangs: a turned one has the sides of its outside and of its back board swapped.
wall::Frame as_hung(const wall::Frame& frame, bool turned);

/// The size of what goes into the frame's rebate, mm: the back board where it was measured;
/// otherwise outside less the moulding on both sides, plus the lip that covers it, less `clearance`
/// in each direction. The frame is taken as_hung().
geometry::Size blank_size(const wall::Frame& frame, double clearance = kRebateClearance);

/// What the moulding leaves open to the eye, mm.
geometry::Size sight_size(const wall::Frame& frame);

/// design_mount() for one print alone and with the overlap as wanted, however thin that leaves the
/// borders. Without under-layers the window is print - 2 x overlap; a floating print counts as a
/// window of its own size. A negative border means that this print does not fit this frame.
MountPlan plan_mount(const wall::Frame& frame, const wall::Mount& mount, const wall::Print& print);

}  // namespace wallwright::mounts
