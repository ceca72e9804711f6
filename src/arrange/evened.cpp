#include "arrange/evened.h"

#include "arrange/settle.h"
#include "spacing/even.h"

#include <algorithm>
#include <cmath>

namespace wallwright::arrange {

namespace {

/// Little, as the search asks often.
constexpr std::uint64_t kEffort = 20'000;

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
    options.effort = kEffort;
    const spacing::EvenResult result = spacing::even(pieces, obstacles, options);
    Layout even = layout;
    for (std::size_t i = 0; i < even.size(); ++i)
        even[i].place = result.pieces[i].place;
    return even;
}

/// Told by a tape: the gaps as they are, and no corner too near.
bool is_even(const View& view) {
    return view.corners().empty() &&
           std::ranges::all_of(view.facing(), [&view](const spacing::Facing& pair) {
               return std::abs(pair.size - view.task().gap) < geometry::kLengthEps;
           });
}

/// A group that nothing holds goes back to where it is wanted.
Layout settled_again(const Task& task, Layout even) {
    if (!fixed_part(task).empty())
        return even;
    std::optional<Layout> settled = settle(task, even);
    return settled ? *std::move(settled) : even;
}

}  // namespace

Found evened(const Task& task, Found found) {
    if (found.layout.empty() || is_even(View(task, found.layout)))
        return found;
    Layout even = settled_again(task, with_even_gaps(task, found.layout));
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
