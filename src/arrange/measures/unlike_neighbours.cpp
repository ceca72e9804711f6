#include "arrange/measures/all.h"
#include "arrange/measures/likeness.h"
#include "arrange/measures/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::arrange {

namespace {

constexpr double kAlike = 0.92;  ///< The shorter of two sides over the longer.

bool near_equal(double a, double b) {
    return std::min(a, b) >= kAlike * std::max(a, b);
}

Likeness likeness(const View& view) {
    return likeness_of(view, [&view](std::size_t i, std::size_t j) {
        const WallRect& a = view.place(i);
        const WallRect& b = view.place(j);
        return near_equal(a.width(), b.width()) && near_equal(a.height(), b.height());
    });
}

double value(const View& view) {
    return likeness(view).value();
}

std::string says(const View& view, units::LengthUnit /*unit*/) {
    const Likeness found = likeness(view);
    if (found.neighbours == 0)
        return "No two pieces are neighbours.";
    if (found.alike_neighbours > 0 && found.alike_pairs == found.pairs)
        return "All pieces are of one size.";
    return fmt::format(
        "{} of {} much alike in size.", found.alike_neighbours,
        count_words(found.neighbours, "pair of neighbours is", "pairs of neighbours are"));
}

}  // namespace

const Measure kUnlikeNeighbours{
    "unlike_neighbours",
    "Sizes mixed",
    "1 - share of neighbours alike in size (both sides within 8 %) x share of all pairs that are "
    "not",
    "sizes are spread over a group; common practice, no source. The figure is our choice",
    1,
    value,
    says,
};

}  // namespace wallwright::arrange
