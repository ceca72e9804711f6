// The bench of the step mounts: which of its views is shown, and how one looks at each.
#pragma once

#include "desk/view.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace wallwright::desk {

enum class BenchView : std::uint8_t { mount, prints, card };
inline constexpr std::size_t kBenchViews = 3;

/// back: as the boards lie face down while they are marked and cut.
enum class MountSide : std::uint8_t { front, back };

/// How one looks at something that is drawn in mm.
struct Look {
    View view;
    /// All of it is kept in sight, however it changes, until the person zooms or pans.
    bool fitted = true;
    std::vector<double> fitted_for{};  ///< For which state of things it was fitted last.
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
