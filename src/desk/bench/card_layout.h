// Where the sheets of a card plan lie beside each other, all at one scale, those of one card
// together.
#pragma once

#include "draw/drawing.h"
#include "mounts/card/card_plan.h"

#include <optional>
#include <string>
#include <vector>

namespace wallwright::desk {

/// A sheet of the plan, by its card and by its number in that card's plan.
struct SheetAt {
    std::size_t lot = 0;
    std::size_t sheet = 0;
    bool operator==(const SheetAt&) const = default;
};

struct LaidSheet {
    SheetAt at;
    geometry::Rect<geometry::Wall> place;  ///< Of the card itself, mm of the board, y up.
    std::string title;                     ///< Under it.
};

/// Two lines of words over the sheets of a card.
struct CardHeading {
    std::size_t lot = 0;
    geometry::Point<geometry::Wall> at;  ///< Left end of the upper base line.
    std::string title;                   ///< As of card_title(),
    std::string words;                   ///< and of mounts::sum_words().
};

struct CardLayout {
    std::vector<CardHeading> headings;
    std::vector<LaidSheet> sheets;
    geometry::Rect<geometry::Wall> extent;
    double scale = 1;  ///< mm on paper for a mm of the board, at which all just fits.
    [[nodiscard]] const LaidSheet* find(const SheetAt& at) const;
};

/// `paper` is what there is, mm on paper. Words keep their size on paper, so they have the room
/// they need at this scale and at larger ones.
CardLayout lay_out_card(const mounts::CardPlan& plan, geometry::Size paper);

/// "Card 1: mount board, 1.4 mm, as Warm white", as mounts::card_name() has it.
std::string card_title(const mounts::CardPlan& plan, std::size_t lot);

/// The blank of a lot where it lies on the board; empty for one that is left out.
struct LaidBlank {
    SheetAt at;
    std::size_t blank = 0;  ///< Of the lot's task.
    geometry::Rect<geometry::Wall> place;
    bool turned = false;
};
std::vector<LaidBlank> blanks_of(const mounts::CardPlan& plan, const CardLayout& layout);

}  // namespace wallwright::desk
