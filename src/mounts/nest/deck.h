// The sheets a plan takes: what makes one choice of them better, and which to try next.
#pragma once

#include "mounts/nest/packing.h"

#include <compare>

namespace wallwright::mounts {

/// What a plan costs, before its offcuts count. Less is better, the first member first.
struct DeckCost {
    double unplaced = 0;     ///< mm2 of blanks.
    std::size_t bought = 0;  ///< Sheets; drop-outs count nowhere.
    std::size_t count = 0;
    double area = 0;  ///< mm2 of the sheets.
    double price = 0;
    auto operator<=>(const DeckCost&) const = default;
};

/// Empty sheets cost nothing.
DeckCost cost_of(const Stock& stock, const Packing& packing);
bool is_better(const Stock& stock, const Packing& packing, const Packing& than);

/// How many sheets of a kind are open.
std::size_t opened(const Packing& packing, std::size_t kind);

/// `from` with one sheet less, or one exchanged for one that makes the plan better, its blanks
/// unplaced; only where there is area enough and no fewer sheets than `bound`. The best first, at
/// most `most`. Where blanks are unplaced: `from` with every sheet open that may help.
std::vector<Packing> better_decks(const Stock& stock, const Packing& from, std::size_t bound,
                                  std::size_t most);

}  // namespace wallwright::mounts
