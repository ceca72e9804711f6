#include "arrange/evened.h"

#include "spacing/even.h"

namespace wallwright::arrange {

namespace {

/// Where the pieces would be with even gaps; the fixed ones stay.
Layout with_even_gaps(const Task& task, const Layout& layout) {
    std::vector<wall::Placed> pieces;
    for (const Spot& spot : layout)
        pieces.push_back({task.items[spot.item].id, spot.place,
                          task.items[spot.item].fixed.has_value(), task.items[spot.item].title});
    std::vector<spacing::Obstacle> obstacles;
    for (const WallRect& place : task.keep_out)
        obstacles.push_back({"", place});
    spacing::EvenOptions options;
    options.gap = task.gap;
    options.reach = task.reach;
    const spacing::EvenResult result = spacing::even(pieces, obstacles, options);
    Layout even = layout;
    for (std::size_t i = 0; i < even.size(); ++i)
        even[i].place = result.pieces[i].place;
    return even;
}

}  // namespace

Found evened(const Task& task, Found found) {
    if (found.layout.empty())
        return found;
    Layout even = with_even_gaps(task, found.layout);
    if (!is_allowed(task, even))
        return found;
    const double total = total_of(View(task, even));
    if (total > found.total) {
        found.layout = std::move(even);
        found.total = total;
    }
    return found;
}

}  // namespace wallwright::arrange
