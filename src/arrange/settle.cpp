#include "arrange/settle.h"

#include "arrange/nearest_place.h"
#include "arrange/score.h"
#include "arrange/touching.h"

#include <algorithm>
#include <cmath>

namespace wallwright::arrange {

namespace {

constexpr std::size_t kLinesMost = 12;  // to line up with, from each side

Layout moved(const Layout& block, WallVec by) {
    Layout there = block;
    for (Spot& spot : there)
        spot.place = spot.place.moved(by);
    return there;
}

Layout with_fixed(const Layout& block, Layout fixed) {
    fixed.insert(fixed.end(), block.begin(), block.end());
    return fixed;
}

std::optional<Layout> best_touching(const Task& task, const Layout& block, const Layout& fixed) {
    View view(task);
    double most = -1;
    std::optional<Layout> best;
    for (const WallVec by : touching_moves(task, block, fixed, kLinesMost)) {
        Layout layout = with_fixed(moved(block, by), fixed);
        if (!is_allowed(task, layout))
            continue;
        view.look(layout);
        if (const double total = total_of(view); total > most) {
            most = total;
            best = std::move(layout);
        }
    }
    return best;
}

/// About the wanted centre; what climbs with a stair hangs as high over it as that.
Layout where_wanted(const Task& task, const Layout& block) {
    const WallRect bounds = bounds_of(block);
    Layout there = moved(block, wanted_centre(task, bounds.height()) - bounds.centre());
    if (task.floor.is_level() || task.beneath)
        return there;
    return moved(there, {0, std::round(task.centre_height - middle_above_floor(task, there))});
}

}  // namespace

WallPoint wanted_centre(const Task& task, double height) {
    const double x = task.beneath ? task.beneath->place.centre().x : task.wall.centre().x;
    WallPoint centre{x, task.floor.at(x) + task.centre_height};
    if (task.beneath) {
        const Beneath& beneath = *task.beneath;
        const double on_it = beneath.place.top() + height / 2;
        centre.y = std::clamp(centre.y, on_it + beneath.clearance_least,
                              on_it + std::max(beneath.clearance_least, beneath.clearance_most));
    }
    centre.y = std::min(centre.y, task.wall.top() - task.gap - height / 2);
    centre.y = std::max(centre.y, task.wall.bottom() + task.gap + height / 2);
    return centre;
}

std::optional<Layout> settle(const Task& task, const Layout& block) {
    const Layout fixed = fixed_part(task);
    if (block.empty())
        return fixed;
    if (!fixed.empty())
        if (std::optional<Layout> touching = best_touching(task, block, fixed))
            return touching;
    const Layout wanted = where_wanted(task, block);
    Layout there = with_fixed(wanted, fixed);
    if (is_allowed(task, there))
        return there;
    const std::optional<WallVec> clearing = shortest_clearing_move(task, wanted);
    if (!clearing)
        return std::nullopt;
    there = with_fixed(moved(wanted, *clearing), fixed);
    return is_allowed(task, there) ? std::optional(there) : std::nullopt;
}

}  // namespace wallwright::arrange
