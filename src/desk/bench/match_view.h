// The view of prints and frames with all it needs from one frame of the window to the next.
#pragma once

#include "desk/bench/match_hand.h"

#include <cstdint>
#include <vector>

namespace wallwright::desk {

struct MatchView {
    MatchChoice choice{};
    MatchHand hand{};
    MatchLayout layout{};
    std::vector<Link> links{};
    geometry::Size new_print{210, 297};  ///< mm; of the print that would be added next.
    geometry::Size paper{};              ///< What there was, mm on paper,
    std::uint64_t version = 0;           ///< and of which session and match the layout is.
    std::uint64_t match = 0;

    [[nodiscard]] MatchScene scene() const { return {layout, links}; }
};

/// Lays out anew where something has changed.
void refresh(MatchView& view, const Session& session, geometry::Size paper);

/// Before another session comes: none of it is about that.
void give_up(MatchView& view);

}  // namespace wallwright::desk
