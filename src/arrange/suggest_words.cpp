#include "arrange/suggest_words.h"

#include "arrange/standing.h"
#include "units/length.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <string_view>
#include <vector>

namespace wallwright::arrange {

namespace {

constexpr double kInLine = 0.5;  // mm; nobody measures finer on a wall
constexpr double kTells = 0.15;  // share of the way to the target that is worth a word

/// A true thing about the frame at its place; the heavier, the more it tells (our choice).
struct Fact {
    double weight = 0;
    std::string words;
};
using Facts = std::vector<Fact>;

void add(Facts& facts, double weight, std::string words) {
    facts.emplace_back();
    facts.back().weight = weight;
    facts.back().words = std::move(words);
}

/// From the place to a piece.
enum class Side { left, right, below, above };

/// A piece that faces the place within the reach.
struct Neighbour {
    const Item* item = nullptr;
    WallRect place;
    Side side = Side::left;
    bool at_gap = false;
};

bool in_line(double a, double b) {
    return std::abs(a - b) <= kInLine;
}

bool is_beside(Side side) {
    return side == Side::left || side == Side::right;
}

std::optional<Neighbour> neighbour_of(const Joining& joining, const Spot& spot) {
    const double x = geometry::overlap_x(spot.place, joining.place);
    const double y = geometry::overlap_y(spot.place, joining.place);
    const double across = std::min(x, y);
    if (std::max(x, y) <= kInLine || across < -joining.task.reach)
        return std::nullopt;
    Neighbour one{&joining.task.items[spot.item], spot.place, Side::left,
                  in_line(-across, joining.task.gap)};
    const WallPoint there = spot.place.centre();
    const WallPoint here = joining.place.centre();
    if (x < y)
        one.side = there.x < here.x ? Side::left : Side::right;
    else
        one.side = there.y < here.y ? Side::below : Side::above;
    return one;
}

std::vector<Neighbour> neighbours_of(const Joining& joining) {
    std::vector<Neighbour> neighbours;
    for (const Spot& spot : joining.pieces)
        if (const std::optional<Neighbour> one = neighbour_of(joining, spot))
            neighbours.push_back(*one);
    return neighbours;
}

/// The first at the gap on that side.
const Neighbour* at_gap(const std::vector<Neighbour>& neighbours, Side side) {
    for (const Neighbour& one : neighbours)
        if (one.side == side && one.at_gap)
            return &one;
    return nullptr;
}

/// Where in the bounds the place is: "at the upper left", "in the middle".
std::string where_in(const WallRect& bounds, const WallRect& place) {
    constexpr double kMiddleThird = 1.0 / 3;
    const WallVec off = place.centre() - bounds.centre();
    const double x = off.x / (bounds.width() / 2);
    const double y = off.y / (bounds.height() / 2);
    const std::string across = x > kMiddleThird ? "right" : x < -kMiddleThird ? "left" : "";
    const std::string up = y > kMiddleThird ? "upper" : y < -kMiddleThird ? "lower" : "";
    if (across.empty() && up.empty())
        return "in the middle";
    if (up.empty())
        return fmt::format("at the {}", across);
    if (across.empty())
        return up == "upper" ? "at the top" : "at the bottom";
    return fmt::format("at the {} {}", up, across);
}

/// Three quarters of it within what bounds the group: less is a tower.
bool is_within(const WallRect& bounds, const WallRect& place) {
    const double shared = std::max(0.0, geometry::overlap_x(bounds, place)) *
                          std::max(0.0, geometry::overlap_y(bounds, place));
    return shared >= 0.75 * place.size().area();
}

/// Between two, or in the angle of two.
void add_filling(const Joining& joining, const std::vector<Neighbour>& neighbours, Facts& facts) {
    const Neighbour* left = at_gap(neighbours, Side::left);
    const Neighbour* right = at_gap(neighbours, Side::right);
    const Neighbour* below = at_gap(neighbours, Side::below);
    const Neighbour* above = at_gap(neighbours, Side::above);
    if (left != nullptr && right != nullptr)
        add(facts, 12,
            fmt::format("fits exactly between {} and {}", left->item->title, right->item->title));
    else if (below != nullptr && above != nullptr)
        add(facts, 12,
            fmt::format("fits exactly between {} and {}", below->item->title, above->item->title));
    else if ((left != nullptr || right != nullptr) && (below != nullptr || above != nullptr) &&
             is_within(bounds_of(joining.pieces), joining.place))
        add(facts, 9,
            fmt::format("fills the step {}", where_in(bounds_of(joining.pieces), joining.place)));
}

/// Edges in line with the neighbour's, of those that the eye follows from one to the other.
void add_lines(const Joining& joining, const Neighbour& one, Facts& facts) {
    const WallRect& here = joining.place;
    const bool beside = is_beside(one.side);
    const bool low = beside ? in_line(here.bottom(), one.place.bottom())
                            : in_line(here.left(), one.place.left());
    const bool high =
        beside ? in_line(here.top(), one.place.top()) : in_line(here.right(), one.place.right());
    const bool middle = beside ? in_line(here.centre().y, one.place.centre().y)
                               : in_line(here.centre().x, one.place.centre().x);
    const double nearer = one.at_gap ? 0.5 : 0;
    const std::string& title = one.item->title;
    if (low && high)
        add(facts, 7 + nearer,
            fmt::format("its {} line up with {}", beside ? "upper and lower edges" : "sides",
                        title));
    else if (low || high)
        add(facts, 5 + nearer,
            fmt::format("its {} edge lines up with {}",
                        beside ? (low ? "lower" : "upper") : (low ? "left" : "right"), title));
    else if (middle)
        add(facts, 4 + nearer, fmt::format("its middle lines up with that of {}", title));
}

/// The nearest piece farther off that ends at the same height: the eye finds it all the same.
void add_line_afar(const Joining& joining, const std::vector<Neighbour>& neighbours, Facts& facts) {
    const WallRect& here = joining.place;
    const Spot* nearest = nullptr;
    for (const Spot& spot : joining.pieces) {
        const bool near = std::ranges::any_of(
            neighbours, [&](const Neighbour& one) { return one.place == spot.place; });
        const bool in_row =
            in_line(here.bottom(), spot.place.bottom()) || in_line(here.top(), spot.place.top());
        if (!near && in_row &&
            (nearest == nullptr ||
             distance_between(spot.place, here) < distance_between(nearest->place, here)))
            nearest = &spot;
    }
    if (nearest == nullptr)
        return;
    const bool low = in_line(here.bottom(), nearest->place.bottom());
    add(facts, 3.5,
        fmt::format("its {} edge lines up with {}", low ? "lower" : "upper",
                    joining.task.items[nearest->item].title));
}

/// True when the eye has nothing to follow along this line but the outline.
bool only_ends(double here, double there, const std::vector<Neighbour>& neighbours,
               double (WallRect::*edge)() const) {
    return in_line(here, there) && std::ranges::none_of(neighbours, [&](const Neighbour& one) {
               return in_line((one.place.*edge)(), here);
           });
}

/// What it does to the outline of the group.
void add_outline(const Joining& joining, const std::vector<Neighbour>& neighbours, Facts& facts) {
    const WallRect bounds = bounds_of(joining.pieces);
    const WallRect& here = joining.place;
    if (geometry::hull(bounds, here.grown(-kInLine)) == bounds) {
        add(facts, 6, "the group gets no wider and no higher");
        return;
    }
    const auto ends = [&](double (WallRect::*edge)() const, const char* side) {
        if (only_ends((here.*edge)(), (bounds.*edge)(), neighbours, edge))
            add(facts, 3, fmt::format("ends where the group ends at the {}", side));
    };
    ends(&WallRect::right, "right");
    ends(&WallRect::left, "left");
    ends(&WallRect::top, "top");
    ends(&WallRect::bottom, "bottom");
}

void add_centre_line(const Joining& joining, Facts& facts) {
    const double line = joining.task.centre_height;
    Layout with_it(joining.pieces.begin(), joining.pieces.end());
    with_it.push_back({0, joining.place});
    const double before = std::abs(middle_above_floor(joining.task, joining.pieces) - line);
    const double after = std::abs(middle_above_floor(joining.task, with_it) - line);
    const double tolerance = joining.task.centre_tolerance;
    if (before > tolerance && after <= tolerance)
        add(facts, 8, "brings the middle of the group to the centre line");
    else if (in_line(geometry::above(joining.task.floor, joining.place).centre().y, line))
        add(facts, 4.5, "its middle is on the centre line");
}

void add_width(const Joining& joining, Facts& facts) {
    const WallRect bounds = bounds_of(joining.pieces);
    const Beneath* found = beneath_group(joining.task, bounds);
    if (found == nullptr)
        return;
    const Beneath& beneath = *found;
    const double wide = beneath.place.width();
    const double before = bounds.width() / wide;
    const double after = geometry::hull(bounds, joining.place).width() / wide;
    const auto suits = [&](double share) {
        return share >= beneath.share_least && share <= beneath.share_most;
    };
    if (!suits(before) && suits(after))
        add(facts, 8.5,
            fmt::format("makes the group {:.0f} % as wide as {}", 100 * after, beneath.title));
}

std::string gain_words(const Joining& joining, std::string_view measure) {
    if (measure == "balance")
        return "balances the group";
    if (measure == "ragged_edge")
        return "makes the outline of the group less ragged";
    if (measure == "compactness")
        return "makes the group more compact";
    if (measure == "centred")
        if (const Beneath* beneath = beneath_group(joining.task, bounds_of(joining.pieces)))
            return fmt::format("brings the middle of the group nearer to that of {}",
                               beneath->title);
    return "";
}

/// The measure of the score that it betters most, of those that can be said in words.
void add_gain(const Joining& joining, const Score& before, const Score& after, Facts& facts) {
    constexpr double kTellsFrom = 0.04;
    constexpr double kMostTelling = 8.4;
    double most = kTellsFrom;
    std::string words;
    for (std::size_t i = 0; i < after.parts.size(); ++i) {
        const double gain = after.parts[i].value - before.parts[i].value;
        if (gain < most || after.parts[i].weight <= 0)
            continue;
        const std::string said = gain_words(joining, after.parts[i].measure->name);
        if (said.empty())
            continue;
        most = gain;
        words = said;
    }
    if (!words.empty())
        add(facts, std::min(kMostTelling, 5.8 + 10 * most), words);
}

void add_target(const Joining& joining, Facts& facts) {
    const double led = leads_on(joining.task, joining.pieces, joining.place, joining.target);
    if (led >= kTells)
        add(facts, 6 + 4 * led,
            fmt::format("leads on toward {}",
                        title_of(joining.project, *joining.project.target, joining.project.unit)));
}

/// True of every suggestion, so that no reason is empty.
void add_touching(const Joining& joining, const std::vector<Neighbour>& neighbours, Facts& facts) {
    for (const Neighbour& one : neighbours)
        if (one.at_gap)
            add(facts, 1,
                fmt::format("hangs {} from {}",
                            units::format_length(joining.task.gap, joining.project.unit),
                            one.item->title));
}

/// "its lower edge lines up" of "its lower edge lines up with Gull".
std::string_view claim_of(std::string_view words) {
    return words.substr(0, words.find(" with "));
}

/// The two that tell most without saying the same of two pieces.
std::string sentence_of(const Facts& facts) {
    std::string sentence = facts.front().words;
    const auto other = std::ranges::find_if(facts, [&facts](const Fact& fact) {
        return claim_of(fact.words) != claim_of(facts.front().words);
    });
    if (other != facts.end())
        sentence = fmt::format("{}; {}", sentence, other->words);
    sentence.front() =
        static_cast<char>(std::toupper(static_cast<unsigned char>(sentence.front())));
    return fmt::format("{}.", sentence);
}

}  // namespace

std::string reason_for(const Joining& joining, const Score& before, const Score& after) {
    const std::vector<Neighbour> neighbours = neighbours_of(joining);
    Facts facts;
    add_filling(joining, neighbours, facts);
    for (const Neighbour& one : neighbours)
        add_lines(joining, one, facts);
    add_line_afar(joining, neighbours, facts);
    add_outline(joining, neighbours, facts);
    add_gain(joining, before, after, facts);
    add_centre_line(joining, facts);
    add_width(joining, facts);
    add_target(joining, facts);
    add_touching(joining, neighbours, facts);
    std::ranges::stable_sort(facts, std::greater<>{}, &Fact::weight);
    return sentence_of(facts);
}

}  // namespace wallwright::arrange
