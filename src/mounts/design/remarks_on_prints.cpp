#include "mounts/design/remark_list.h"

#include <algorithm>

namespace wallwright::mounts {

namespace {

using geometry::kLengthEps;
using wall::Severity;

double least_of(const Borders& borders) {
    return std::min({borders.left, borders.right, borders.top, borders.bottom});
}

void on_cover(Remarks& out, const LaidPrint& print) {
    const double least = least_of(print.covered);
    if (least >= kOverlapLeast - kLengthEps)
        return;
    const bool bare = least <= kLengthEps;
    out.add(Trouble::print_uncovered, bare ? Severity::stop : Severity::mind, least, kOverlapLeast,
            fmt::format("The window covers {} by {} only; give it an overlap of {} or more, or its "
                        "edge may come into sight.",
                        print.title, out.length(least), out.length(kOverlapLeast)));
}

void on_place(Remarks& out, const MountDesign& design, const LaidPrint& print) {
    const Rect<Front>& place = print.place;
    const double over = std::max({-place.min.x, -place.min.y, place.max.x - design.blank.width,
                                  place.max.y - design.blank.height});
    if (over <= kLengthEps)
        return;
    out.add(Trouble::print_leaves_blank, Severity::stop, -over, 0,
            fmt::format("{} reaches {} past the edge of the blank and does not go into the frame; "
                        "trim its paper, move its window or take a larger frame.",
                        print.title, out.length(over)));
}

void on_growth(Remarks& out, const LaidPrint& print, const wall::Mount& mount) {
    const double most = std::max(print.across, print.down);
    if (mount.floats || most <= mount.overlap + kLengthEps)
        return;
    out.add(Trouble::overlap_grew, Severity::note, most, mount.overlap,
            fmt::format("The overlap on {} grows from {} to {} at the sides and {} above and "
                        "below, so that the borders keep their width.",
                        print.title, out.length(mount.overlap), out.length(print.across),
                        out.length(print.down)));
}

void on_meeting(Remarks& out, const MountDesign& design) {
    const std::vector<LaidPrint>& prints = design.prints;
    for (std::size_t i = 0; i < prints.size(); ++i)
        for (std::size_t j = i + 1; j < prints.size(); ++j)
            if (overlaps(prints[i].place, prints[j].place)) {
                const double by = std::min(overlap_x(prints[i].place, prints[j].place),
                                           overlap_y(prints[i].place, prints[j].place));
                out.add(Trouble::prints_meet, Severity::mind, -by, 0,
                        fmt::format("The papers of {} and {} lie on each other by {}; widen the "
                                    "bar, lessen the overlap or trim them.",
                                    prints[i].title, prints[j].title, out.length(by)));
            }
}

}  // namespace

void on_prints(Remarks& out, const MountDesign& design, const wall::Mount& mount) {
    if (!design.floats)
        for (const LaidPrint& print : design.prints)
            on_cover(out, print);
    for (const LaidPrint& print : design.prints)
        on_place(out, design, print);
    on_meeting(out, design);
    if (design.frame_that_serves)
        return;  // The overlap grew in vain.
    for (const LaidPrint& print : design.prints)
        on_growth(out, print, mount);
}

}  // namespace wallwright::mounts
