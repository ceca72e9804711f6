#include "arrange/measures/all.h"
#include "arrange/measures/likeness.h"
#include "arrange/measures/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::arrange {

namespace {

constexpr double kAlike = 15;  ///< CIE 1976 colour difference under which two are much alike.

using ColourOf = const wall::Lab& (View::*)(std::size_t) const;

Likeness likeness(const View& view, ColourOf colour) {
    return likeness_of(view, [&view, colour](std::size_t i, std::size_t j) {
        return difference_squared((view.*colour)(i), (view.*colour)(j)) < kAlike * kAlike;
    });
}

/// True when some two differ in colour.
bool are_mixed(const Task& task) {
    const auto differ = [&task](wall::Colour Item::*colour) {
        return std::ranges::any_of(task.items, [&](const Item& item) {
            return difference_squared(lab_of(item.*colour), lab_of(task.items.front().*colour)) >=
                   kAlike * kAlike;
        });
    };
    return differ(&Item::frame) || differ(&Item::picture);
}

double value(const View& view) {
    if (view.facing().empty())
        return 1;
    return (likeness(view, &View::frame_colour).value() +
            likeness(view, &View::picture_colour).value()) /
           2;
}

std::string says(const View& view, units::LengthUnit /*unit*/) {
    const Likeness frames = likeness(view, &View::frame_colour);
    if (frames.neighbours == 0)
        return "No two pieces are neighbours.";
    return fmt::format("Of {}, {} much alike in the frame's colour and {} in the picture's.",
                       count_words(frames.neighbours, "pair of neighbours", "pairs of neighbours"),
                       count_words(frames.alike_neighbours, "is", "are"),
                       likeness(view, &View::picture_colour).alike_neighbours);
}

}  // namespace

const Measure kColours{
    "colours",
    "Colours mixed",
    "mean for frames and for pictures of: 1 - share of neighbours alike in colour x share of all "
    "pairs that are not; alike: CIE 1976 colour difference under 15",
    "colours are spread over a group; common practice, no source. The figure is our choice",
    0.5,
    value,
    says,
    are_mixed,
};

}  // namespace wallwright::arrange
