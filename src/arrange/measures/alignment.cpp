#include "arrange/measures/all.h"
#include "arrange/measures/scratch.h"
#include "arrange/measures/slope.h"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <cstdint>

namespace wallwright::arrange {

namespace {

using spacing::Axis;

constexpr double kOneWay = 0.75;  ///< For a piece in line one way of two.

/// Of one piece: to which sides it has neighbours, and whether it is in line with one there.
struct Found {
    bool beside = false;
    bool over_or_under = false;
    bool level = false;
    bool plumb = false;
};

/// Both edges and the middle, across the direction in which the two face each other.
std::array<double, 3> lines_of(const WallRect& place, Axis facing) {
    return facing == Axis::horizontal ? std::array{place.bottom(), place.centre().y, place.top()}
                                      : std::array{place.left(), place.centre().x, place.right()};
}

/// Side by side with the middles equally high over a floor that climbs.
bool climb_together(const View& view, const spacing::Facing& pair) {
    const double a = view.from_floor(pair.first).centre().y;
    const double b = view.from_floor(pair.second).centre().y;
    return pair.axis == Axis::horizontal && std::abs(a - b) <= kExact;
}

bool share_a_line(const View& view, const spacing::Facing& pair) {
    const auto of_a = lines_of(view.place(pair.first), pair.axis);
    const auto of_b = lines_of(view.place(pair.second), pair.axis);
    for (std::size_t i = 0; i < of_a.size(); ++i)
        if (std::abs(of_a[i] - of_b[i]) <= kExact)
            return true;
    return climb_together(view, pair);
}

void note(Found& found, Axis facing, bool in_line) {
    const bool is_beside = facing == Axis::horizontal;
    (is_beside ? found.beside : found.over_or_under) = true;
    if (in_line)
        (is_beside ? found.level : found.plumb) = true;
}

void find_lines(const View& view, std::span<Found> found) {
    for (const spacing::Facing& pair : view.facing()) {
        const bool in_line = share_a_line(view, pair);
        note(found[pair.first], pair.axis, in_line);
        note(found[pair.second], pair.axis, in_line);
    }
}

double worth(const Found& found) {
    const int asked = int{found.beside} + int{found.over_or_under};
    const int in_line = int{found.level} + int{found.plumb};
    if (in_line == 0)
        return 0;
    return in_line == asked ? 1 : kOneWay;
}

double value(const View& view) {
    if (view.size() == 1)
        return 1;
    Scratch<Found, 32> scratch(view.size());
    find_lines(view, scratch.all());
    double sum = 0;
    for (const Found& found : scratch.all())
        sum += worth(found);
    return sum / static_cast<double>(view.size());
}

/// How many different places there are among them, nearer ones than a tape sees taken as one.
std::size_t count_different(std::vector<double> places) {
    std::ranges::sort(places);
    std::size_t count = 0;
    for (std::size_t i = 0; i < places.size(); ++i)
        count += i == 0 || places[i] - places[i - 1] > kExact ? 1U : 0U;
    return count;
}

std::size_t count_shared_lines(const View& view) {
    std::vector<double> level;
    std::vector<double> plumb;
    std::vector<double> climbing;
    for (const spacing::Facing& pair : view.facing()) {
        bool shared = false;
        const auto of_first = lines_of(view.place(pair.first), pair.axis);
        const auto of_second = lines_of(view.place(pair.second), pair.axis);
        for (std::size_t i = 0; i < of_first.size(); ++i)
            if (std::abs(of_first[i] - of_second[i]) <= kExact) {
                (pair.axis == Axis::horizontal ? level : plumb).push_back(of_first[i]);
                shared = true;
            }
        if (!shared && climb_together(view, pair))
            climbing.push_back(view.from_floor(pair.first).centre().y);
    }
    return count_different(std::move(level)) + count_different(std::move(plumb)) +
           count_different(std::move(climbing));
}

std::string says(const View& view, units::LengthUnit /*unit*/) {
    if (view.size() == 1)
        return "One piece alone has nothing to line up with.";
    Scratch<Found, 32> scratch(view.size());
    find_lines(view, scratch.all());
    const auto in_line = static_cast<std::size_t>(
        std::ranges::count_if(scratch.all(), [](const Found& one) { return worth(one) > 0; }));
    if (in_line == 0)
        return "No piece is in line with a neighbour.";
    const std::size_t lines = count_shared_lines(view);
    const std::string who = in_line == view.size()
                                ? fmt::format("All {} pieces are", in_line)
                                : fmt::format("{} of {} pieces are", in_line, view.size());
    return fmt::format("{} in line with a neighbour, on {} of edges or middles.", who,
                       lines == 1 ? "1 line" : fmt::format("{} lines", lines));
}

}  // namespace

const Measure kAlignment{
    "alignment",
    "Alignment",
    "mean over the pieces: 1 where an edge or the middle is in line within 1 mm with that of a "
    "neighbour each way that it has neighbours, 3/4 for one way of two, else 0; on a stair middles "
    "that climb with it are in line",
    "edges and axes in common are counted by Ngo, Teo, Byrne, Modelling interface aesthetics, "
    "Information Sciences 152 (2003), as regularity; that counts starts of objects alone, ours "
    "all lines that an eye follows from piece to piece",
    3,
    value,
    says,
};

}  // namespace wallwright::arrange
