// The bench of the step mounts: which of its views is shown, and how one looks at each.
#pragma once

#include "desk/view.h"
#include "wall/project.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>

namespace wallwright::desk {

enum class BenchView : std::uint8_t { mount, prints, card };
inline constexpr std::size_t kBenchViews = 3;

/// back: as the boards lie face down while they are marked and cut.
enum class MountSide : std::uint8_t { front, back };

/// What there was to see, and the room for it.
struct Sight {
    std::uint64_t wall = 0;   ///< The session's version, where that counts,
    std::uint64_t found = 0;  ///< and that of what was found for it.
    wall::PieceId piece{};    ///< That is looked at, from this side,
    MountSide side = MountSide::front;
    std::size_t layer = 0;                    ///< and this board of it.
    geometry::Rect<geometry::Screen> area{};  ///< px.
    double text = 1;                          ///< Its scale.
    bool operator==(const Sight&) const = default;
};

/// How one looks at something that is drawn in mm.
struct Look {
    View view;
    /// All of it is kept in sight, however it changes, until the person zooms or pans.
    bool fitted = true;
    std::optional<Sight> fitted_for{};  ///< What it was fitted for last; empty: it is to be anew.
};

struct Bench {
    BenchView view = BenchView::mount;
    MountSide side = MountSide::front;
    std::size_t layer = 0;  ///< Of the mount, whose back is shown; 0 is the top one.
    std::array<Look, kBenchViews> looks;

    /// Of the view that is shown.
    [[nodiscard]] Look& look() { return looks[static_cast<std::size_t>(view)]; }
    [[nodiscard]] const Look& look() const { return looks[static_cast<std::size_t>(view)]; }
};

}  // namespace wallwright::desk
