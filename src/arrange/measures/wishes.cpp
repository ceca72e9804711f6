#include "arrange/measures/all.h"
#include "arrange/measures/slope.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>

namespace wallwright::arrange {

namespace {

using wall::WishKind;

constexpr double kNearly =
    0.6;  ///< The most for a wish that is not kept, so that keeping it shows.

std::optional<std::size_t> spot_of(const View& view, std::uint32_t item) {
    for (std::size_t i = 0; i < view.size(); ++i)
        if (view.spots()[i].item == item)
            return i;
    return std::nullopt;
}

bool face(const View& view, std::size_t a, std::size_t b) {
    return std::ranges::any_of(view.facing(), [a, b](const spacing::Facing& pair) {
        return (pair.first == a && pair.second == b) || (pair.first == b && pair.second == a);
    });
}

/// The less, the farther apart they are, as a share of the bounds' diagonal.
double nearness(const View& view, std::size_t a, std::size_t b) {
    return falling(distance_between(view.place(a), view.place(b)),
                   std::hypot(view.bounds().width(), view.bounds().height()));
}

/// Left and right of each other, over at least half the height of the smaller: what one calls side
/// by side.
bool are_side_by_side(const View& view, std::size_t a, std::size_t b) {
    const double shared = geometry::overlap_y(view.place(a), view.place(b));
    return face(view, a, b) &&
           shared >= std::min(view.place(a).height(), view.place(b).height()) / 2;
}

/// Nothing about a piece that is not hung in this layout. One that hangs in another group is no
/// neighbour.
std::optional<double> kept_by_two(const View& view, const ItemWish& wish) {
    const std::optional<std::size_t> first = spot_of(view, wish.first);
    const std::optional<std::size_t> second = spot_of(view, wish.second);
    const bool apart = wish.kind == WishKind::apart;
    if (first && second) {
        if (apart)
            return face(view, *first, *second) ? 0 : 1;
        return are_side_by_side(view, *first, *second) ? 1
                                                       : kNearly * nearness(view, *first, *second);
    }
    const bool one_here = first.has_value() != second.has_value();
    const Item& other = view.task().items[first ? wish.second : wish.first];
    if (one_here && other.fixed)
        return apart ? 1 : 0;
    return std::nullopt;
}

/// Its middle is near the group's, each way by so much of the group's size.
constexpr double kInTheMiddle = 0.15;

double kept_middle(const View& view, const WallRect& place) {
    const WallPoint middle = view.bounds().centre();
    const double x = std::abs(place.centre().x - middle.x) / (view.bounds().width() / 2);
    const double y = std::abs(place.centre().y - middle.y) / (view.bounds().height() / 2);
    if (std::max(x, y) <= 2 * kInTheMiddle)
        return 1;
    return kNearly * falling(std::hypot(x, y), std::hypot(1, 1));
}

/// No neighbour under (over) it, and its own middle not over (under) the group's.
double kept_at_edge(const View& view, std::size_t spot, bool low) {
    const bool has_beyond = std::ranges::any_of(view.facing(), [&](const spacing::Facing& pair) {
        return pair.axis == spacing::Axis::vertical && (low ? pair.second : pair.first) == spot;
    });
    const double from_middle = view.place(spot).centre().y - view.bounds().centre().y;
    const double toward = low ? -from_middle : from_middle;
    if (!has_beyond && toward >= -kExact)
        return 1;
    return kNearly * std::clamp(0.5 + toward / view.bounds().height(), 0.0, 1.0);
}

/// 1 when it is kept, less when not; nothing when the layout does not hold the piece.
std::optional<double> kept(const View& view, const ItemWish& wish) {
    if (wall::is_about_two(wish.kind))
        return kept_by_two(view, wish);
    const std::optional<std::size_t> spot = spot_of(view, wish.first);
    if (!spot)
        return std::nullopt;
    if (wish.kind == WishKind::middle)
        return kept_middle(view, view.place(*spot));
    return kept_at_edge(view, *spot, wish.kind == WishKind::low);
}

double value(const View& view) {
    double sum = 0;
    double judged = 0;
    for (const ItemWish& wish : view.task().wishes) {
        const std::optional<double> how_far = kept(view, wish);
        sum += how_far.value_or(0);
        judged += how_far ? 1 : 0;
    }
    return judged > 0 ? sum / judged : 1;
}

const std::string& name_of(const Item& item) {
    return item.title.empty() ? item.id.text : item.title;
}

std::string broken_words(const Task& task, const ItemWish& wish) {
    const std::string& first = name_of(task.items[wish.first]);
    switch (wish.kind) {
        case WishKind::side_by_side:
            return fmt::format("{} is not beside {}", first, name_of(task.items[wish.second]));
        case WishKind::apart:
            return fmt::format("{} is beside {}", first, name_of(task.items[wish.second]));
        case WishKind::middle:
            return fmt::format("{} is not in the middle", first);
        case WishKind::low:
            return fmt::format("{} is not low", first);
        case WishKind::high:
            return fmt::format("{} is not high", first);
        case WishKind::not_over:
            break;
    }
    return fmt::format("{} is not where it was wished", first);
}

/// Wishes not to hang over a thing, which every layout keeps.
std::size_t kept_clear(const View& view) {
    std::size_t wishes = 0;
    for (std::size_t i = 0; i < view.size(); ++i)
        wishes += view.item(i).not_over.size();
    return wishes;
}

bool any_wished(const Task& task) {
    return !task.wishes.empty() ||
           std::ranges::any_of(task.items, [](const Item& item) { return !item.not_over.empty(); });
}

std::string says(const View& view, units::LengthUnit /*unit*/) {
    std::size_t judged = kept_clear(view);
    std::string broken;
    std::size_t broken_count = 0;
    for (const ItemWish& wish : view.task().wishes) {
        const std::optional<double> how_far = kept(view, wish);
        judged += how_far ? 1U : 0U;
        if (how_far.value_or(1) >= 1)
            continue;
        ++broken_count;
        broken += fmt::format("{}{}", broken.empty() ? "" : ", ", broken_words(view.task(), wish));
    }
    if (judged == 0)
        return "Nothing was wished of these pieces.";
    if (broken_count == 0)
        return judged == 1 ? "The wish is kept." : fmt::format("All {} wishes are kept.", judged);
    return fmt::format("{} of {} kept: {}.", judged - broken_count,
                       judged == 1 ? "1 wish is" : fmt::format("{} wishes are", judged), broken);
}

}  // namespace

const Measure kWishes{
    "wishes",
    "Wishes kept",
    "share of the person's wishes that are kept; one that is not counts by how near it comes, 0.6 "
    "at most; 1 where there are none",
    "the person's own",
    6,
    value,
    says,
    any_wished,
};

}  // namespace wallwright::arrange
