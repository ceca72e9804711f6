// Marks in whole steps of the ruler, rounded together so that what should be even stays even.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace wallwright::hanging {

/// The marks of one piece along one axis, in mm from the datum. They move together: what lies
/// between them is rounded once, so that two marks at one height keep one. A piece without marks
/// hangs already and stays.
struct Body {
    std::vector<double> marks;
};

/// Two bodies that face each other, or whose edges or middles are meant to be in line.
struct Tie {
    std::size_t first = 0;  ///< On the same side of `second` for all ties.
    std::size_t second = 0;
    bool in_line = false;
};

/// The marks of each body as whole multiples of `step`, in the order given. By how much the gaps
/// across the ties change, and by how much what is in line parts to either side, then differs as
/// little as can be among those that hang together: solved exactly, as difference constraints over
/// whole numbers for every span of changes that might be the least. No mark goes farther than two
/// steps and no gap changes by more than one. Of what is equally even the first found near the
/// exact marks is taken. Never less even than rounding each body alone.
std::vector<std::vector<double>> rounded_together(std::span<const Body> bodies,
                                                  std::span<const Tie> ties, double step);

}  // namespace wallwright::hanging
