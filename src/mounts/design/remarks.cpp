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

/// Where the least frame crops the print more, also the one that does not.
std::string larger_text(const Remarks& out, const MountDesign& design, const wall::Mount& mount) {
    const bool framed = design.depth.rebate > 0;
    const geometry::Size least = *design.frame_that_serves;
    std::string text =
        fmt::format("the least {} that serves measures {}{}", framed ? "frame" : "blank",
                    out.size(least), framed ? " outside, of the same moulding" : "");
    if (!geometry::is_same_size(least, *design.frame_as_wanted))
        text += fmt::format(", with an overlap of up to {}, and {} keeps the overlap at {}",
                            out.length(mount.overlap_most), out.size(*design.frame_as_wanted),
                            out.length(mount.overlap));
    return text;
}

void on_frame(Remarks& out, const MountDesign& design, const wall::Mount& mount) {
    if (!design.frame_that_serves)
        return;
    const Side thin = thinnest(design.seen);
    const double least = mount.floats ? kFloatClear : mount.border_least;
    const bool hidden = thin.length <= kLengthEps;
    out.add(Trouble::frame_too_small, hidden ? Severity::stop : Severity::mind, thin.length, least,
            fmt::format("This {} leaves {} {} seen {} and {} is wanted; {}.",
                        design.depth.rebate > 0 ? "frame" : "blank", out.length(thin.length),
                        mount.floats ? "of card" : "of the border", thin.name, out.length(least),
                        larger_text(out, design, mount)));
}

void on_lip(Remarks& out, const MountDesign& design) {
    const double lip = std::min(design.lip.left, design.lip.top);
    const bool short_of_it = lip < -kLengthEps;
    if (!short_of_it && (design.depth.rebate <= 0 || lip >= kLipLeast - kLengthEps))
        return;
    constexpr const char* kRemedy = "measure the back board and the moulding's width again";
    const bool none = lip <= kLengthEps;
    std::string text =
        short_of_it
            ? fmt::format("The blank is {} and ends {} short of the frame's lip on each side; {}.",
                          out.size(design.blank), out.length(-lip), kRemedy)
        : none ? fmt::format(
                     "The blank is {}, as large as the opening of the frame, and falls "
                     "through; {}.",
                     out.size(design.blank), kRemedy)
               : fmt::format(
                     "The lip covers {} of the blank on each side and {} is wanted, or the "
                     "blank slips through when it lies off the middle; {}.",
                     board_text(lip), board_text(kLipLeast), kRemedy);
    out.add(Trouble::blank_falls_through, none ? Severity::stop : Severity::mind, lip,
            none ? 0 : kLipLeast, std::move(text));
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

/// Its parts are boards, glass and paper, so it is told in mm whatever the person's unit.
void on_depth(Remarks& out, const MountDesign& design) {
    const Depth& depth = design.depth;
    if (depth.rebate <= 0)
        return;
    const double undermount = undermount_thickness(design);
    if (depth.total() > depth.rebate + kLengthEps)
        out.add(Trouble::too_deep, Severity::mind, depth.total(), depth.rebate,
                fmt::format(
                    "Glazing {}, {}card {}, print {} and backing {} are {} deep together "
                    "and the rebate is {}; choose thinner ones or a deeper frame.",
                    board_text(depth.glazing),
                    depth.spacer > 0 ? fmt::format("spacers {}, ", board_text(depth.spacer)) : "",
                    board_text(depth.layers), board_text(depth.print), board_text(depth.backing),
                    board_text(depth.total()), board_text(depth.rebate)));
    else if (depth.total() + undermount > depth.rebate + kLengthEps)
        out.add(Trouble::undermount_too_deep, Severity::note, depth.total() + undermount,
                depth.rebate,
                fmt::format("With a board of {} that the print is hung on all is {} deep and the "
                            "rebate is {}; take thinner backing or a deeper frame.",
                            board_text(undermount), board_text(depth.total() + undermount),
                            board_text(depth.rebate)));
}

void on_boards(Remarks& out, const MountDesign& design) {
    for (std::size_t i = 0; i < design.layers.size(); ++i) {
        const double thickness = design.layers[i].card.thickness;
        if (thickness < kBoardLeast - kLengthEps)
            out.add(Trouble::board_thin, Severity::note, thickness, kBoardLeast,
                    fmt::format("The card of layer {} is {} thick and the trade's least is {}; "
                                "thinner card bends and leaves the print too near the glass.",
                                i + 1, board_text(thickness), board_text(kBoardLeast)));
    }
}

void on_reveal(Remarks& out, std::size_t layer, double reveal, double bevel) {
    const bool narrow = reveal < kRevealLeast - kLengthEps;
    if (reveal - bevel <= kLengthEps)
        out.add(Trouble::reveal_unusual, Severity::mind, reveal, kRevealLeast,
                fmt::format("Layer {} is revealed by {} and nothing of its colour shows beside the "
                            "bevel in front of it; reveal it by {} to {}.",
                            layer + 1, out.length(reveal), out.length(kRevealLeast),
                            out.length(kRevealMost)));
    else if (narrow || reveal > kRevealMost + kLengthEps)
        out.add(Trouble::reveal_unusual, Severity::note, reveal,
                narrow ? kRevealLeast : kRevealMost,
                fmt::format("Layer {} is revealed by {}, of which {} show its colour; {} to {} is "
                            "usual, and {}.",
                            layer + 1, out.length(reveal), out.length(reveal - bevel),
                            out.length(kRevealLeast), out.length(kRevealMost),
                            narrow ? "on less each small slip of the knife is seen"
                                   : "more looks like a mount of its own"));
}

void on_reveals(Remarks& out, const MountDesign& design) {
    const bool bevelled = design.edge == wall::WindowEdge::bevel;
    for (std::size_t i = 1; i < design.layers.size(); ++i)
        on_reveal(out, i, design.layers[i].reveal,
                  bevelled ? design.layers[i - 1].card.thickness : 0);
}

void on_floating(Remarks& out, const MountDesign& design, const wall::Mount& mount) {
    if (!design.floats)
        return;
    if (design.depth.glazing > 0)
        out.add(Trouble::touches_glazing, Severity::mind, std::nullopt, std::nullopt,
                fmt::format("Without a window nothing keeps the print off the glazing; put spacers "
                            "of {} or more under the frame's lip, for a print that touches it may "
                            "stick to it.",
                            board_text(kSpacerLeast)));
    if (!mount.under.empty())
        out.add(Trouble::layers_unused, Severity::note, std::nullopt, std::nullopt,
                "A floating print lies on the card of the top layer; the layers behind it have no "
                "window to show in and are not cut.");
}

}  // namespace

std::vector<Remark> remarks_on(const MountDesign& design, const wall::Mount& mount,
                               units::LengthUnit unit) {
    Remarks out{unit};
    on_frame(out, design, mount);
    on_lip(out, design);
    on_windows(out, design);
    on_borders(out, design, mount);
    on_prints(out, design, mount);
    on_depth(out, design);
    on_boards(out, design);
    on_reveals(out, design);
    on_floating(out, design, mount);
    return std::move(out).all();
}

}  // namespace wallwright::mounts
