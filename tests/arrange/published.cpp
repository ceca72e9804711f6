#include "arrange/published.h"

#include <array>
#include <cmath>
#include <set>

namespace wallwright::published {

namespace {

using arrange::Spot;

double area_of(const Layout& layout) {
    double area = 0;
    for (const Spot& spot : layout)
        area += spot.place.size().area();
    return area;
}

void add_steps(const std::set<double>& starts, std::set<double>& steps) {
    for (auto one = starts.begin(); one != starts.end() && std::next(one) != starts.end(); ++one)
        steps.insert(*std::next(one) - *one);
}

double factorial(double number) {
    return std::tgamma(number + 1);
}

}  // namespace

double equilibrium(const Layout& layout, const WallRect& frame) {
    double x = 0;
    double y = 0;
    for (const Spot& spot : layout) {
        x += spot.place.size().area() * (spot.place.centre().x - frame.centre().x);
        y += spot.place.size().area() * (spot.place.centre().y - frame.centre().y);
    }
    const double scale = 2 / (static_cast<double>(layout.size()) * area_of(layout));
    return 1 - (std::abs(scale * x / frame.width()) + std::abs(scale * y / frame.height())) / 2;
}

double regularity(const Layout& layout) {
    const auto count = static_cast<double>(layout.size());
    if (layout.size() == 1)
        return 1;
    std::set<double> lefts;
    std::set<double> tops;
    for (const Spot& spot : layout) {
        lefts.insert(spot.place.left());
        tops.insert(spot.place.top());
    }
    std::set<double> steps;
    add_steps(lefts, steps);
    add_steps(tops, steps);
    const double alignment = 1 - static_cast<double>(lefts.size() + tops.size()) / (2 * count);
    const double spacing = 1 - (static_cast<double>(steps.size()) - 1) / (2 * (count - 1));
    return (alignment + spacing) / 2;
}

double density(const Layout& layout, const WallRect& frame) {
    return 1 - 2 * std::abs(0.5 - area_of(layout) / frame.size().area());
}

double homogeneity(const Layout& layout, const WallRect& frame) {
    std::array<double, 4> in_quarter{};
    for (const Spot& spot : layout) {
        const bool right = spot.place.centre().x >= frame.centre().x;
        const bool upper = spot.place.centre().y >= frame.centre().y;
        in_quarter[(right ? 1U : 0U) + (upper ? 2U : 0U)] += 1;
    }
    const auto count = static_cast<double>(layout.size());
    double ways = std::pow(factorial(count / 4), 4);
    for (const double quarter : in_quarter)
        ways /= factorial(quarter);
    return ways;
}

}  // namespace wallwright::published
