#include "mounts/nest/deck.h"

#include <algorithm>

namespace wallwright::mounts {

namespace {

using Sheets = std::vector<std::size_t>;  // kinds

DeckCost cost_of_kinds(const Stock& stock, const Sheets& kinds) {
    DeckCost cost = {};
    for (const std::size_t kind : kinds) {
        const StockSheet& sheet = stock.sheets[kind];
        if (sheet.is_extra)
            continue;
        cost.bought += sheet.to_buy ? 1 : 0;
        cost.count += 1;
        cost.area += sheet.area;
        cost.price += sheet.to_buy ? sheet.price : 0;
    }
    return cost;
}

double blank_area(const Stock& stock, const std::vector<int>& blanks) {
    double area = 0;
    for (const int blank : blanks)
        area += stock.blanks[static_cast<std::size_t>(blank)].area;
    return area;
}

bool has_room(const Stock& stock, const Sheets& kinds, double area) {
    double room = 0;
    for (const std::size_t kind : kinds)
        room += stock.sheets[kind].usable.area();
    return room > area * (1 - 1e-9);
}

/// The sheet of each kind with the least cut from it.
Sheets emptiest_of_each(const Stock& stock, const Packing& from) {
    std::vector<double> least_used(stock.sheets.size(), -1);
    Sheets which(stock.sheets.size(), from.sheets.size());
    for (std::size_t i = 0; i < from.sheets.size(); ++i) {
        const OpenSheet& sheet = from.sheets[i];
        double used = sheet.tree.area();
        for (const int piece : sheet.tree.free())
            used -= sheet.tree.area_of(piece);
        if (stock.sheets[sheet.kind].is_extra ||
            (least_used[sheet.kind] >= 0 && least_used[sheet.kind] <= used))
            continue;
        least_used[sheet.kind] = used;
        which[sheet.kind] = i;
    }
    which.erase(std::remove(which.begin(), which.end(), from.sheets.size()), which.end());
    return which;
}

struct Step {
    std::size_t sheet = 0;
    std::size_t kind = 0;  // put in its place; all kinds' count: none
    DeckCost cost = {};
};

/// The step as it would be, if it makes the plan better at all.
void offer(std::vector<Step>& steps, const Stock& stock, const Sheets& kinds, Step step,
           std::size_t bound) {
    const DeckCost now = cost_of_kinds(stock, kinds);
    Sheets then = kinds;
    if (step.kind == stock.sheets.size())
        then.erase(then.begin() + static_cast<std::ptrdiff_t>(step.sheet));
    else
        then[step.sheet] = step.kind;
    step.cost = cost_of_kinds(stock, then);
    if (step.cost < now && step.cost.count >= bound &&
        has_room(stock, then, blank_area(stock, stock.wanted)))
        steps.push_back(step);
}

Packing taken(const Stock& stock, const Packing& from, const Step& step) {
    Packing next = from;
    const auto sheet = next.sheets.begin() + static_cast<std::ptrdiff_t>(step.sheet);
    sheet->tree.clear(next.unplaced);
    if (step.kind == stock.sheets.size())
        next.sheets.erase(sheet);
    else
        *sheet = {step.kind, SheetTree(stock.sheets[step.kind].usable)};
    return next;
}

/// With as many more of each kind as are there and can be of use: to what is unplaced, or to what
/// makes room for it.
Packing all_open(const Stock& stock, const Packing& from) {
    Packing all = from;
    for (std::size_t kind = 0; kind < stock.sheets.size(); ++kind) {
        const StockSheet& sheet = stock.sheets[kind];
        const bool helps = !sheet.is_extra &&
                           std::any_of(stock.wanted.begin(), stock.wanted.end(), [&](int blank) {
                               return fits(stock.blanks[static_cast<std::size_t>(blank)], sheet);
                           });
        const std::size_t open = opened(from, kind);
        const std::size_t most = std::min(sheet.count, open + from.unplaced.size());
        for (std::size_t i = open; helps && i < most; ++i)
            all.sheets.push_back({kind, SheetTree(sheet.usable)});
    }
    return all;
}

}  // namespace

std::size_t opened(const Packing& packing, std::size_t kind) {
    return static_cast<std::size_t>(
        std::count_if(packing.sheets.begin(), packing.sheets.end(),
                      [kind](const OpenSheet& sheet) { return sheet.kind == kind; }));
}

DeckCost cost_of(const Stock& stock, const Packing& packing) {
    Sheets kinds;
    for (const OpenSheet& sheet : packing.sheets)
        if (!sheet.tree.is_empty())
            kinds.push_back(sheet.kind);
    DeckCost cost = cost_of_kinds(stock, kinds);
    cost.unplaced = blank_area(stock, packing.unplaced);
    return cost;
}

bool is_better(const Stock& stock, const Packing& packing, const Packing& than) {
    return cost_of(stock, packing) < cost_of(stock, than);
}

std::vector<Packing> better_decks(const Stock& stock, const Packing& from, std::size_t bound,
                                  std::size_t most) {
    if (!from.unplaced.empty())
        return {all_open(stock, from)};
    Sheets kinds;
    for (const OpenSheet& sheet : from.sheets)
        kinds.push_back(sheet.kind);
    std::vector<Step> steps;
    for (const std::size_t sheet : emptiest_of_each(stock, from)) {
        offer(steps, stock, kinds, {.sheet = sheet, .kind = stock.sheets.size()}, bound);
        for (std::size_t kind = 0; kind < stock.sheets.size(); ++kind)
            if (!stock.sheets[kind].is_extra && opened(from, kind) < stock.sheets[kind].count)
                offer(steps, stock, kinds, {.sheet = sheet, .kind = kind}, bound);
    }
    std::stable_sort(steps.begin(), steps.end(),
                     [](const Step& a, const Step& b) { return a.cost < b.cost; });
    steps.resize(std::min(most, steps.size()));
    std::vector<Packing> decks;
    for (const Step& step : steps)
        decks.push_back(taken(stock, from, step));
    return decks;
}

}  // namespace wallwright::mounts
