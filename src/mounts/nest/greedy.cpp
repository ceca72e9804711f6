#include "mounts/nest/greedy.h"

#include "mounts/nest/deck.h"

#include <algorithm>

namespace wallwright::mounts {

namespace {

/// Kinds of sheets as they are taken.
std::vector<std::size_t> as_opened(const Stock& stock) {
    std::vector<std::size_t> kinds;
    for (std::size_t kind = 0; kind < stock.sheets.size(); ++kind)
        if (!stock.sheets[kind].is_extra)
            kinds.push_back(kind);
    std::stable_sort(kinds.begin(), kinds.end(), [&](std::size_t a, std::size_t b) {
        const StockSheet& one = stock.sheets[a];
        const StockSheet& other = stock.sheets[b];
        if (one.to_buy != other.to_buy)
            return other.to_buy;
        return one.usable.area() > other.usable.area();
    });
    return kinds;
}

bool open_for(const Stock& stock, Packing& packing, const StockBlank& blank,
              const std::vector<std::size_t>& kinds) {
    const auto kind = std::find_if(kinds.begin(), kinds.end(), [&](std::size_t wanted) {
        return fits(blank, stock.sheets[wanted]) &&
               opened(packing, wanted) < stock.sheets[wanted].count;
    });
    if (kind == kinds.end())
        return false;
    packing.sheets.push_back({*kind, SheetTree(stock.sheets[*kind].usable)});
    return true;
}

}  // namespace

Packing greedy(const Stock& stock, const Rules& rules, Random& random) {
    Packing packing;
    for (std::size_t kind = 0; kind < stock.sheets.size(); ++kind)
        if (stock.sheets[kind].is_extra && stock.sheets[kind].usable.area() > 0)
            packing.sheets.push_back({kind, SheetTree(stock.sheets[kind].usable)});
    const std::vector<std::size_t> kinds = as_opened(stock);
    std::vector<int> blanks = stock.wanted;
    sort_by(stock, blanks, rules.order, random);
    for (const int blank : blanks) {
        CutSpot spot = best_spot(stock, packing, blank, rules, random);
        if (spot.piece == SheetTree::kNone &&
            open_for(stock, packing, stock.blanks[static_cast<std::size_t>(blank)], kinds))
            spot = best_spot(stock, packing, blank, rules, random);
        if (spot.piece == SheetTree::kNone)
            packing.unplaced.push_back(blank);
        else
            take(stock, packing, blank, spot);
    }
    return packing;
}

Packing best_greedy(const Stock& stock) {
    Packing best;
    bool is_first = true;
    Random random(0);
    for (const Order order : {Order::area, Order::longer})
        for (int fit = 0; fit < kFits; ++fit)
            for (int split = 0; split < kSplits; ++split) {
                const Rules rules{static_cast<Fit>(fit), static_cast<Split>(split), order};
                Packing packing = greedy(stock, rules, random);
                if (is_first || is_better(stock, packing, best))
                    best = std::move(packing);
                is_first = false;
            }
    return best;
}

}  // namespace wallwright::mounts
