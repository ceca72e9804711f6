#include "arrange/spots.h"

#include "spacing/rounding.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace wallwright::arrange {

namespace {

using geometry::kLengthEps;

/// Finds the places around one piece of the layout after the other.
class SpotFinder {
  public:
    SpotFinder(const Task& task, std::span<const Spot> layout, std::uint32_t item,
               std::vector<WallRect>& out)
        : task_(task), layout_(layout), item_(item), size_(task.items[item].size), out_(out) {}

    void around(const WallRect& host) {
        find_near(host);
        beside(host, host.right() + task_.gap);
        beside(host, host.left() - task_.gap - size_.width);
        over_or_under(host, host.top() + task_.gap);
        over_or_under(host, host.bottom() - task_.gap - size_.height);
    }

  private:
    /// All that a place at the host could meet or line up with.
    void find_near(const WallRect& host) {
        near_.clear();
        const double x = size_.width + 2 * task_.gap;
        const double y = size_.height + 2 * task_.gap;
        const WallRect around{{host.min.x - x, host.min.y - y}, {host.max.x + x, host.max.y + y}};
        for (const Spot& spot : layout_)
            if (geometry::overlaps(spot.place, around))
                near_.push_back(spot.place);
    }

    void beside(const WallRect& host, double left) {
        lines_.clear();
        for (const WallRect& one : near_)
            add_lines(one.bottom(), one.top(), size_.height);
        const double floor = task_.floor.at(left + size_.width / 2);
        lines_.push_back(floor + task_.centre_height - size_.height / 2);
        if (!task_.floor.is_level())
            add_climbing_lines(floor);
        for (const double bottom : distinct_lines())
            if (bottom + size_.height > host.bottom() + kLengthEps &&
                bottom < host.top() - kLengthEps)
                offer(WallRect::at({left, bottom}, size_));
    }

    /// Its middle as high over the stair, which is at `floor` under it, as a neighbour's, to the
    /// nearest mm.
    void add_climbing_lines(double floor) {
        for (const WallRect& one : near_)
            lines_.push_back(std::round(floor + geometry::above(task_.floor, one).centre().y -
                                        size_.height / 2));
    }

    void over_or_under(const WallRect& host, double bottom) {
        lines_.clear();
        for (const WallRect& one : near_)
            add_lines(one.left(), one.right(), size_.width);
        for (const double left : distinct_lines())
            if (left + size_.width > host.left() + kLengthEps && left < host.right() - kLengthEps)
                offer(WallRect::at({left, bottom}, size_));
    }

    /// In line with a neighbour's low edge, middle or high edge, or at the gap from it.
    void add_lines(double low, double high, double extent) {
        lines_.insert(lines_.end(), {low, high - extent, (low + high - extent) / 2,
                                     high + task_.gap, low - task_.gap - extent});
    }

    std::span<const double> distinct_lines() {
        std::ranges::sort(lines_);
        const auto is_same = [](double a, double b) {
            return spacing::without_rounding(a) == spacing::without_rounding(b);
        };
        lines_.erase(std::unique(lines_.begin(), lines_.end(), is_same), lines_.end());
        return lines_;
    }

    void offer(const WallRect& place) {
        for (const WallRect& one : near_)
            if (!clear_of_each_other(task_, one, place))
                return;
        if (wall_allows(task_, item_, place))
            out_.push_back(place);
    }

    const Task& task_;
    std::span<const Spot> layout_;
    std::uint32_t item_;
    geometry::Size size_;
    std::vector<WallRect>& out_;
    std::vector<WallRect> near_;
    std::vector<double> lines_;
};

/// Two places that differ by rounding are one.
std::pair<double, double> key_of(const WallRect& place) {
    return {spacing::without_rounding(place.min.x), spacing::without_rounding(place.min.y)};
}

}  // namespace

void touching_spots(const Task& task, std::span<const Spot> layout, std::uint32_t item,
                    std::vector<WallRect>& out) {
    out.clear();
    SpotFinder finder(task, layout, item, out);
    for (const Spot& spot : layout)
        finder.around(spot.place);
    std::ranges::sort(out, {}, key_of);
    const auto is_same = [](const WallRect& a, const WallRect& b) {
        return key_of(a) == key_of(b);
    };
    out.erase(std::unique(out.begin(), out.end(), is_same), out.end());
}

}  // namespace wallwright::arrange
