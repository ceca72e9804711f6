// Measures of balance from: Ngo, Teo, Byrne, Modelling interface aesthetics, Information Sciences
// 152 (2003), 25-46.
#pragma once

#include "arrange/task.h"

#include <span>

namespace wallwright::arrange {

/// Area times distance from the frame's axes, mm3, on each side of them. Pieces that an axis cuts
/// count on both sides.
struct Moments {
    double left = 0;
    double right = 0;
    double bottom = 0;
    double top = 0;
};
Moments moments_of(std::span<const Spot> spots, const WallRect& frame);

/// BM = 1 - (|left - right| / max(left, right) + |top - bottom| / max(top, bottom)) / 2.
double balance(const Moments& moments);

/// 1 - (|mass.x - centre.x| / (width / 2) + |mass.y - centre.y| / (height / 2)) / 2: the paper's
/// equilibrium EM without its division by the number of pieces. With it, EM hardly moves for more
/// than a few pieces: five scattered ones score 0.95.
double equilibrium(WallPoint mass, const WallRect& frame);

}  // namespace wallwright::arrange
