// The view of card with all it needs from one frame of the window to the next.
#pragma once

#include "desk/bench/card_board.h"
#include "desk/bench/card_hand.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace wallwright::desk {

struct CardView {
    CardChoice choice{};
    CardHand hand{};
    CardLayout layout{};
    std::vector<LaidBlank> blanks{};
    CardShapes shapes{};                            ///< Of the sheets, at `scale`.
    double scale = 0;                               ///< mm on paper for a mm of the board.
    std::optional<wall::CardSheetId> open_sheet{};  ///< Whose rows the column shows.
    geometry::Size paper{};                         ///< What there was, mm on paper,
    std::uint64_t plan = 0;                         ///< and of which plan the layout is.

    [[nodiscard]] CardScene scene() const { return {choice, layout, blanks, 1 / scale}; }
};

/// Lays out anew where the plan or the room is another. Without a plan there is nothing.
void lay_out(CardView& view, geometry::Size paper);
/// Draws anew where the layout or the scale is another.
void draw(CardView& view, double scale);

/// Before another session comes: none of it is about that.
void give_up(CardView& view);

}  // namespace wallwright::desk
