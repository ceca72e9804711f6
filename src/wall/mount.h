// The card between a frame and its print, in one layer or several, with a window for each print.
#pragma once

#include "wall/colour.h"
#include "wall/layer.h"
#include "wall/names.h"

#include <optional>
#include <string>
#include <vector>

namespace wallwright::wall {

/// bevel: at 45 degrees, the white core seen all round; straight: through at a right angle.
enum class WindowEdge { bevel, straight };
template <>
struct Names<WindowEdge> {
    static constexpr std::string_view values[] = {"bevel", "straight"};
};

/// How several windows lie by each other.
enum class WindowOrder { row, column, by_hand };
template <>
struct Names<WindowOrder> {
    static constexpr std::string_view values[] = {"row", "column", "by_hand"};
};

/// mm from the blank's left and top edge, as seen from the front, to those of a window.
struct FromCorner {
    double left = 0;
    double top = 0;
    bool operator==(const FromCorner&) const = default;
};

/// A layer behind the top one. Its window is smaller by the reveal on each side.
struct UnderLayer {
    double reveal =
        4;  ///< mm; 3 to 6 mm is usual, a trade magazine (3) and a framing guide (1/4 in).
    Layer card{MaterialId{"mount_board"}, 1.4};
    Colour colour{0x3A, 0x33, 0x2B};
    UnknownKeys unknown = {};
    bool operator==(const UnderLayer&) const = default;
};

/// One of several windows, for a print of its own.
struct Opening {
    PrintId print;
    std::optional<FromCorner> at;  ///< Counts where the order is by_hand.
    UnknownKeys unknown = {};
    bool operator==(const Opening&) const = default;
};

/// A mount as it is wanted; what is cut follows from it, the frame and the print.
struct Mount {
    MountId id;
    std::string title;
    double overlap = 5;  ///< mm by which the window covers the print on each side.
    /// mm to which the overlap may grow where the print is too large for the borders: what may be
    /// lost of the picture on each side.
    double overlap_most = 10;
    double base_extra = 0;  ///< mm by which the border below is wider than the border above.
    std::optional<double> base_ratio;   ///< Border below over border above; before base_extra.
    std::optional<FromCorner> by_hand;  ///< Where a single window is; before both.
    double border_least = 25;           ///< mm seen, on each side.
    Layer card{MaterialId{"mount_board"}, 1.4};
    Colour colour{0xFA, 0xF7, 0xF0};
    std::vector<UnderLayer> under;  ///< From the top layer toward the print.
    WindowEdge edge = WindowEdge::bevel;
    bool floats = false;            ///< No window: the print lies on the card, its edges in sight.
    std::vector<Opening> openings;  ///< None: one window, for the piece's print.
    WindowOrder order = WindowOrder::row;
    double bar = 30;  ///< mm of card between two windows.
    UnknownKeys unknown;
    bool operator==(const Mount&) const = default;
};

/// mm of all its boards one on the other.
inline double thickness_of(const Mount& mount) {
    double sum = mount.card.thickness;
    for (const UnderLayer& layer : mount.under)
        sum += layer.card.thickness;
    return sum;
}

}  // namespace wallwright::wall
