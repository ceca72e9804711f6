#include "mounts/window.h"

#include "mounts/design/mount_design.h"

namespace wallwright::mounts {

wall::Frame as_hung(const wall::Frame& frame, bool turned) {
    wall::Frame hung = frame;
    if (!turned)
        return hung;
    hung.outside = frame.outside.turned();
    if (frame.back_board)
        hung.back_board = frame.back_board->turned();
    return hung;
}

geometry::Size blank_size(const wall::Frame& frame, double clearance) {
    if (frame.back_board)
        return *frame.back_board;
    const double growth = 2 * (frame.rebate_width - frame.moulding_width) - clearance;
    return {frame.outside.width + growth, frame.outside.height + growth};
}

geometry::Size sight_size(const wall::Frame& frame) {
    return {frame.outside.width - 2 * frame.moulding_width,
            frame.outside.height - 2 * frame.moulding_width};
}

MountPlan plan_mount(const wall::Frame& frame, const wall::Mount& mount, const wall::Print& print) {
    wall::Mount as_wanted = mount;
    as_wanted.openings.clear();
    as_wanted.overlap_most = as_wanted.overlap;
    const MountDesign design = design_mount(frame, as_wanted, {print});
    const Borders& cut = design.cut;
    return {design.blank,
            {design.blank.width - cut.left - cut.right, design.blank.height - cut.top - cut.bottom},
            cut,
            design.seen};
}

}  // namespace wallwright::mounts
