#include "arrange/push_together.h"

#include <numeric>

namespace wallwright::arrange {

namespace {

using Places = std::vector<geometry::Rect<geometry::Wall>>;

/// Pushes left, or down when `down`; true when something moved.
bool push(Places& places, bool down) {
    const auto start = [down](const auto& place) { return down ? place.min.y : place.min.x; };
    const auto end = [down](const auto& place) { return down ? place.max.y : place.max.x; };
    std::vector<std::size_t> order(places.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return start(places[a]) < start(places[b]);
    });
    bool moved = false;
    for (std::size_t i = 0; i < order.size(); ++i) {
        auto& place = places[order[i]];
        double stop = 0;
        for (std::size_t k = 0; k < i; ++k) {
            const auto& other = places[order[k]];
            const double shared = down ? overlap_x(place, other) : overlap_y(place, other);
            if (shared > geometry::kLengthEps)
                stop = std::max(stop, end(other));
        }
        const double way = stop - start(place);
        if (way < -geometry::kLengthEps) {
            place = place.moved(down ? geometry::Vec<geometry::Wall>{0, way}
                                     : geometry::Vec<geometry::Wall>{way, 0});
            moved = true;
        }
    }
    return moved;
}

}  // namespace

Packing push_together(std::span<const Block> blocks, const PackingGoal& goal, Packing packing) {
    Places places;
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        const geometry::Size size = blocks[i].size;
        places.push_back(geometry::Rect<geometry::Wall>::at(
            packing.at[i], packing.turned[i] ? size.turned() : size));
    }
    while (push(places, false) || push(places, true))
        continue;
    Packing pushed = packing;
    pushed.box = {};
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        pushed.at[i] = places[i].min;
        pushed.box = {std::max(pushed.box.width, places[i].max.x),
                      std::max(pushed.box.height, places[i].max.y)};
    }
    pushed.cost = cost_of(goal, pushed.box);
    constexpr double kRounding = 1e-12;
    return pushed.cost <= packing.cost * (1 + kRounding) ? pushed : packing;
}

}  // namespace wallwright::arrange
