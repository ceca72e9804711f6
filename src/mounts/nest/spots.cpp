#include "mounts/nest/spots.h"

#include <algorithm>
#include <limits>

namespace wallwright::mounts {

namespace {

constexpr double square(double x) {
    return x * x;
}

/// What is left when `cut` comes out of `whole`.
struct Rest {
    double along_x = 0;  ///< mm
    double along_y = 0;
    double squares_x_first = 0;  ///< Sum of squared areas, mm4.
    double squares_y_first = 0;
};

Rest rest_of(const Extent& whole, const Extent& cut) {
    const double x = std::max(0.0, whole[0] - cut[0]);
    const double y = std::max(0.0, whole[1] - cut[1]);
    return {.along_x = x,
            .along_y = y,
            .squares_x_first = square(x * whole[1]) + square(y * cut[0]),
            .squares_y_first = square(y * whole[0]) + square(x * cut[1])};
}

Axis first_axis(const Rest& rest, Split split) {
    switch (split) {
        case Split::short_axis:
            return rest.along_x < rest.along_y ? 1 : 0;
        case Split::long_axis:
            return rest.along_x < rest.along_y ? 0 : 1;
        case Split::squares:
            break;
    }
    return rest.squares_x_first >= rest.squares_y_first ? 0 : 1;
}

double score_of(const Extent& whole, const Rest& rest, Axis first, Fit fit) {
    switch (fit) {
        case Fit::area:
            return whole[0] * whole[1];
        case Fit::short_side:
            return std::min(rest.along_x, rest.along_y);
        case Fit::long_side:
            return std::max(rest.along_x, rest.along_y);
        case Fit::squares:
            break;
    }
    return square(whole[0] * whole[1]) - (first == 0 ? rest.squares_x_first : rest.squares_y_first);
}

void offer(CutSpot& best, const CutSpot& at, const Extent& whole, const Extent& cut,
           const Rules& rules) {
    if (cut[0] > whole[0] + geometry::kLengthEps || cut[1] > whole[1] + geometry::kLengthEps)
        return;
    const Rest rest = rest_of(whole, cut);
    const Axis first = first_axis(rest, rules.split);
    const double score = score_of(whole, rest, first, rules.fit);
    if (score >= best.score)
        return;
    best = at;
    best.first = first;
    best.score = score;
}

double size_by(const StockBlank& blank, Order order) {
    switch (order) {
        case Order::longer:
            return std::max(blank.extent[0], blank.extent[1]);
        case Order::shorter:
            return std::min(blank.extent[0], blank.extent[1]);
        case Order::width:
            return blank.extent[0];
        case Order::height:
            return blank.extent[1];
        case Order::perimeter:
            return blank.extent[0] + blank.extent[1];
        case Order::area:
        case Order::chance:
            break;
    }
    return blank.area;
}

}  // namespace

CutSpot best_spot(const Stock& stock, const Packing& packing, int blank, const Rules& rules,
                  Random& random) {
    const StockBlank& wanted = stock.blanks[static_cast<std::size_t>(blank)];
    CutSpot best{.score = std::numeric_limits<double>::infinity()};
    for (std::size_t i = 0; i < packing.sheets.size(); ++i) {
        const SheetTree& tree = packing.sheets[i].tree;
        const bool may_turn = wanted.may_turn && stock.sheets[packing.sheets[i].kind].may_turn;
        for (const int piece : tree.free()) {
            const Extent& whole = tree.piece(piece).extent;
            if (whole[0] * whole[1] < wanted.area * 0.999999)
                continue;
            if (rules.blink > 0 && random.uniform() < rules.blink)
                continue;
            offer(best, {.sheet = i, .piece = piece}, whole, wanted.extent, rules);
            if (may_turn)
                offer(best, {.sheet = i, .piece = piece, .turned = true}, whole, wanted.turned,
                      rules);
        }
    }
    return best;
}

void take(const Stock& stock, Packing& packing, int blank, const CutSpot& spot) {
    const StockBlank& taken = stock.blanks[static_cast<std::size_t>(blank)];
    packing.sheets[spot.sheet].tree.place(spot.piece, blank,
                                          spot.turned ? taken.turned : taken.extent, spot.first);
}

void sort_by(const Stock& stock, std::vector<int>& blanks, Order order, Random& random) {
    // Sorted first, so that the outcome depends on which they are and not on how they came.
    std::sort(blanks.begin(), blanks.end());
    if (order == Order::chance) {
        for (std::size_t i = blanks.size(); i > 1; --i)
            std::swap(blanks[i - 1], blanks[random.below(i)]);
        return;
    }
    std::stable_sort(blanks.begin(), blanks.end(), [&](int a, int b) {
        return size_by(stock.blanks[static_cast<std::size_t>(a)], order) >
               size_by(stock.blanks[static_cast<std::size_t>(b)], order);
    });
}

}  // namespace wallwright::mounts
