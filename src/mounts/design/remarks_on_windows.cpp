#include "mounts/design/remark_list.h"

#include <algorithm>

namespace wallwright::mounts {

namespace {

using geometry::kLengthEps;
using wall::Severity;

/// How far `inner` reaches out of `outer` on its worst side, mm; negative while it is inside.
double reach_out(const Rect<Front>& outer, const Rect<Front>& inner) {
    return std::max({outer.min.x - inner.min.x, outer.min.y - inner.min.y,
                     inner.max.x - outer.max.x, inner.max.y - outer.max.y});
}

Rect<Front> whole(const MountDesign& design) {
    return Rect<Front>::at({0, 0}, design.blank);
}

void on_closed(Remarks& out, const MountDesign& design) {
    for (std::size_t i = 0; i < design.prints.size(); ++i) {
        const Rect<Front>& open = design.layers.back().windows[i].back;
        const double least = std::min(open.width(), open.height());
        if (least <= kLengthEps)
            out.add(Trouble::window_closed, Severity::stop, least, 0,
                    fmt::format("The overlap, the reveals and the bevel leave nothing of the "
                                "window for {}; lessen the overlap or take a larger print.",
                                design.prints[i].title));
    }
}

void on_leaving(Remarks& out, const MountDesign& design) {
    const std::vector<Window>& windows = design.layers.front().windows;
    for (std::size_t i = 0; i < windows.size(); ++i) {
        const double out_by = reach_out(whole(design), windows[i].face);
        if (out_by > -kLengthEps)
            out.add(Trouble::window_leaves_blank, Severity::stop, -out_by, 0,
                    fmt::format("The window for {} reaches {} past the edge of the blank; move it, "
                                "or take a larger frame.",
                                design.prints[i].title, out.length(std::max(0.0, out_by))));
    }
}

void on_pair(Remarks& out, const MountDesign& design, std::size_t i, std::size_t j) {
    const std::vector<Window>& windows = design.layers.front().windows;
    const Rect<Front>& a = windows[i].face;
    const Rect<Front>& b = windows[j].face;
    const std::string names =
        fmt::format("{} and {}", design.prints[i].title, design.prints[j].title);
    const double apart = distance_between(a, b);
    if (touch(a, b))
        out.add(Trouble::windows_meet, Severity::stop, 0, kBarLeast,
                fmt::format("The windows for {} run into each other; move them apart.", names));
    else if (apart < kBarLeast - kLengthEps)
        out.add(Trouble::bar_thin, Severity::mind, apart, kBarLeast,
                fmt::format("The card between the windows for {} is {} wide and tears easily; give "
                            "it {} or more.",
                            names, out.length(apart), out.length(kBarLeast)));
}

}  // namespace

void on_windows(Remarks& out, const MountDesign& design) {
    if (design.floats)
        return;
    on_closed(out, design);
    on_leaving(out, design);
    for (std::size_t i = 0; i < design.prints.size(); ++i)
        for (std::size_t j = i + 1; j < design.prints.size(); ++j)
            on_pair(out, design, i, j);
}

}  // namespace wallwright::mounts
