#include "mounts/window.h"

namespace wallwright::mounts {

namespace {

Borders borders_of(geometry::Size blank, geometry::Size window, double base_extra) {
    const double side = (blank.width - window.width) / 2;
    const double top = (blank.height - window.height - base_extra) / 2;
    return {side, side, top, top + base_extra};
}

Borders narrower(const Borders& borders, double by) {
    return {borders.left - by, borders.right - by, borders.top - by, borders.bottom - by};
}

}  // namespace

geometry::Size blank_size(const wall::Frame& frame, double clearance) {
    const double growth = 2 * (frame.rebate_width - frame.moulding_width) - clearance;
    return {frame.outside.width + growth, frame.outside.height + growth};
}

MountPlan plan_mount(const wall::Frame& frame, const wall::Mount& mount, const wall::Print& print) {
    MountPlan plan;
    plan.blank = blank_size(frame);
    plan.window = {print.size.width - 2 * mount.overlap, print.size.height - 2 * mount.overlap};
    plan.cut = borders_of(plan.blank, plan.window, mount.base_extra);
    plan.seen = narrower(plan.cut, frame.rebate_width - kRebateClearance / 2);
    return plan;
}

}  // namespace wallwright::mounts
