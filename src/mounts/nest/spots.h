// Which free piece a blank is cut from, and which of the two cuts comes first.
#pragma once

#include "base/random.h"
#include "mounts/nest/packing.h"

namespace wallwright::mounts {

/// What a free piece is judged by; the least is taken. squares: what is lost of the sum of squared
/// free areas.
enum class Fit { squares, area, short_side, long_side };
inline constexpr int kFits = 4;

/// squares: the cut that leaves the larger piece; the others: by which side leaves less.
enum class Split { squares, short_axis, long_axis };
inline constexpr int kSplits = 3;

/// Which blank is cut first, the largest by: area, longer side, shorter side, width, height, both
/// sides together, chance.
enum class Order { area, longer, shorter, width, height, perimeter, chance };
inline constexpr int kOrders = 7;

struct Rules {
    Fit fit = Fit::squares;
    Split split = Split::squares;
    Order order = Order::area;
    double blink = 0;  ///< The share of free pieces that are overlooked.
};

struct CutSpot {
    std::size_t sheet = 0;
    int piece = SheetTree::kNone;  ///< kNone: there is none.
    bool turned = false;
    Axis first = 0;
    double score = 0;
};

/// The best place for the blank among the open sheets.
CutSpot best_spot(const Stock& stock, const Packing& packing, int blank, const Rules& rules,
                  Random& random);

void take(const Stock& stock, Packing& packing, int blank, const CutSpot& spot);

/// In the order in which they are to be cut.
void sort_by(const Stock& stock, std::vector<int>& blanks, Order order, Random& random);

}  // namespace wallwright::mounts
