// One function a kind of thing to buy; shopping.cpp puts them together.
#pragma once

#include "buying/shopping.h"

#include <string>
#include <vector>

namespace wallwright::buying {

/// What the list is made from. `card` may be null.
struct Job {
    const wall::Project& project;
    const rules::Assessment& assessment;
    const mounts::CardPlan* card = nullptr;
};

using Items = std::vector<Item>;

/// In packs, what the drawer and an earlier pack leave over used first.
Items fixings_to_buy(const Job& job);
/// For hangers with a cord and for hooks on a rail.
Items cord_to_buy(const Job& job);
/// Those that are wished for, alike ones together.
Items frames_to_buy(const Job& job);
/// Sheets that the plan buys, and the boards that prints are hung on.
Items card_to_buy(const Job& job);
/// What the layers of mounts are stuck and joined by, and what prints are hung by.
Items tape_to_buy(const Job& job);
/// Mounts that no sheet has room for.
Items cutting_to_buy(const Job& job);
/// What strips are put on with, what keeps frames still and off the wall.
Items besides(const Job& job);

/// The planned pieces that have fixings, of today or for later.
std::vector<hanging::Hanging> hangings_to_come(const Job& job, bool later);

/// A length as it is cut from a roll: whole metres, or whole feet beside inches, never less than
/// `mm`.
struct OffTheRoll {
    std::string amount;  ///< "3 m", "10 ft".
    double metres = 0;
};
OffTheRoll off_the_roll(double mm, units::LengthUnit unit);

/// "1 sheet", "3 sheets".
std::string counted(std::size_t count, const std::string& one, const std::string& several);

/// "300 × 400 mm".
std::string size_words(geometry::Size size, units::LengthUnit unit);

}  // namespace wallwright::buying
