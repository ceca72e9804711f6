// What a person should know about a mount before cutting it.
#pragma once

#include "mounts/design/mount_design.h"
#include "units/length.h"
#include "wall/finding.h"

#include <optional>
#include <string>
#include <vector>

namespace wallwright::mounts {

enum class Trouble {
    frame_too_small,      ///< Even the most overlap leaves a border too thin.
    blank_falls_through,  ///< The lip does not hold the blank all round.
    window_closed,        ///< The overlap leaves nothing of a window.
    window_leaves_blank,
    windows_meet,
    bar_thin,
    border_thin,  ///< As placed by hand, or beside a floating print.
    print_uncovered,
    print_leaves_blank,
    prints_meet,
    overlap_grew,
    too_deep,
    board_thin,
    reveal_unusual,
    touches_glazing,
    undermount_too_deep,  ///< There is no room for the board that the print is hung on.
    layers_unused,        ///< A floating print lies on the top layer's card alone.
};

/// The measures are in mm.
struct Remark {
    Trouble trouble = Trouble::frame_too_small;
    wall::Severity severity = wall::Severity::note;
    std::optional<double> measured;
    std::optional<double> wanted;  ///< The bound that `measured` passed.
    std::string text;              ///< A sentence with the numbers in the person's unit.
    bool operator==(const Remark&) const = default;
};

/// mm by which a window is to cover a print at least; 1/8 in, common practice, no source.
inline constexpr double kOverlapLeast = 3;
/// mm of card that is to stand between two windows so that it does not tear or bend while the
/// second is cut; common practice, no source.
inline constexpr double kBarLeast = 10;
/// mm, the least thickness of mount board in the Fine Art Trade Guild (UK) framing standards,
/// commended and conservation level, read in framers' copies.
inline constexpr double kBoardLeast = 1.1;
/// mm of the blank that the lip is to cover on each side, for the blank may lie as far off the
/// middle; common practice, no source.
inline constexpr double kLipLeast = 1;
/// mm; the ends are of an article in the trade magazine 4Walls, issue 40 (3 mm), and of Westfall
/// Framing's printed Framing Guide (1/4 in, 6.35 mm).
inline constexpr double kRevealLeast = 3;
inline constexpr double kRevealMost = 6.35;

/// On the frame first, then windows, borders, prints and boards; empty where all is well. `mount`
/// is the one the design was made of.
std::vector<Remark> remarks_on(const MountDesign& design, const wall::Mount& mount,
                               units::LengthUnit unit);

}  // namespace wallwright::mounts

/// As words of files and JSON.
template <>
struct wallwright::wall::Names<wallwright::mounts::Trouble> {
    static constexpr std::string_view values[] = {
        "frame_too_small",     "blank_falls_through", "window_closed",
        "window_leaves_blank", "windows_meet",        "bar_thin",
        "border_thin",         "print_uncovered",     "print_leaves_blank",
        "prints_meet",         "overlap_grew",        "too_deep",
        "board_thin",          "reveal_unusual",      "touches_glazing",
        "undermount_too_deep", "layers_unused"};
};
