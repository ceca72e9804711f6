#include "mounts/design/remarks.h"

#include "mounts/design/remark_list.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::mounts {

namespace {

using geometry::kLengthEps;
using wall::Severity;

struct Side {
    const char* name;
    double length;
};

Side thinnest(const Borders& borders) {
    const Side sides[] = {{"on the left", borders.left},
                          {"on the right", borders.right},
                          {"above", borders.top},
                          {"below", borders.bottom}};
    return *std::ranges::min_element(sides, {}, &Side::length);
}

void on_frame(Remarks& out, const MountDesign& design, const wall::Mount& mount) {
    const Side thin = thinnest(design.seen);
    const double least = mount.floats ? kFloatClear : mount.border_least;
    if (design.frame_that_serves) {
        const bool framed = design.depth.rebate > 0;
        const bool hidden = thin.length <= kLengthEps;
        out.add(Trouble::frame_too_small, hidden ? Severity::stop : Severity::mind, thin.length,
                least,
                fmt::format("This {0} leaves {1} {2} seen {3} and {4} is wanted; the least {0} "
                            "that serves measures {5}{6}.",
                            framed ? "frame" : "blank", out.length(thin.length),
                            mount.floats ? "of card" : "of the border", thin.name,
                            out.length(least), out.size(*design.frame_that_serves),
                            framed ? " outside, of the same moulding" : ""));
    }
    const double lip = std::min(design.lip.left, design.lip.top);
    if (lip < -kLengthEps)
        out.add(Trouble::blank_falls_through, Severity::stop, lip, 0,
                fmt::format("The blank is {} and ends {} short of the frame's lip on each side; "
                            "measure the back board and the moulding's width again.",
                            out.size(design.blank), out.length(-lip)));
}

void on_borders(Remarks& out, const MountDesign& design, const wall::Mount& mount) {
    const Side thin = thinnest(design.seen);
    if (design.frame_that_serves || thin.length >= mount.border_least - kLengthEps)
        return;
    out.add(Trouble::border_thin, Severity::mind, thin.length, mount.border_least,
            fmt::format("The border {} is {} seen and {} is wanted; move the {} away from that "
                        "edge or take a larger frame.",
                        thin.name, out.length(thin.length), out.length(mount.border_least),
                        mount.floats ? "print" : "window"));
}

void on_depth(Remarks& out, const MountDesign& design) {
    const Depth& depth = design.depth;
    if (depth.rebate <= 0 || depth.total() <= depth.rebate + kLengthEps)
        return;
    out.add(Trouble::too_deep, Severity::mind, depth.total(), depth.rebate,
            fmt::format("Glazing {}, card {}, print {} and backing {} are {} deep together and the "
                        "rebate is {}; choose thinner ones or a deeper frame.",
                        out.length(depth.glazing), out.length(depth.layers),
                        out.length(depth.print), out.length(depth.backing),
                        out.length(depth.total()), out.length(depth.rebate)));
}

void on_boards(Remarks& out, const MountDesign& design) {
    for (std::size_t i = 0; i < design.layers.size(); ++i) {
        const double thickness = design.layers[i].card.thickness;
        if (thickness < kBoardLeast - kLengthEps)
            out.add(Trouble::board_thin, Severity::note, thickness, kBoardLeast,
                    fmt::format("The card of layer {} is {} thick and the trade's least is {}; "
                                "thinner card bends and leaves the print too near the glass.",
                                i + 1, out.length(thickness), out.length(kBoardLeast)));
    }
}

void on_reveals(Remarks& out, const MountDesign& design) {
    if (design.floats)
        return;
    for (std::size_t i = 1; i < design.layers.size(); ++i) {
        const double reveal = design.layers[i].reveal;
        const bool narrow = reveal < kRevealLeast - kLengthEps;
        if (!narrow && reveal <= kRevealMost + kLengthEps)
            continue;
        const double bevel =
            design.edge == wall::WindowEdge::bevel ? design.layers[i - 1].card.thickness : 0;
        out.add(Trouble::reveal_unusual, Severity::note, reveal,
                narrow ? kRevealLeast : kRevealMost,
                fmt::format("Layer {} is revealed by {}, of which {} show its colour; {} to {} is "
                            "usual, and {}.",
                            i + 1, out.length(reveal), out.length(std::max(0.0, reveal - bevel)),
                            out.length(kRevealLeast), out.length(kRevealMost),
                            narrow ? "on less each small slip of the knife is seen"
                                   : "more looks like a mount of its own"));
    }
}

void on_glazing(Remarks& out, const MountDesign& design) {
    if (design.floats && design.depth.glazing > 0)
        out.add(Trouble::touches_glazing, Severity::mind, std::nullopt, std::nullopt,
                "Without a window nothing keeps the print off the glazing; put spacers under the "
                "frame's lip, for a print that touches it may stick to it.");
}

}  // namespace

std::vector<Remark> remarks_on(const MountDesign& design, const wall::Mount& mount,
                               units::LengthUnit unit) {
    Remarks out{unit};
    on_frame(out, design, mount);
    on_windows(out, design);
    on_borders(out, design, mount);
    on_prints(out, design, mount);
    on_depth(out, design);
    on_boards(out, design);
    on_reveals(out, design);
    on_glazing(out, design);
    return std::move(out).all();
}

}  // namespace wallwright::mounts
