#include "hanging/strip_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

namespace {

using geometry::Rect;
using geometry::Wall;

bool nearly(double a, double b) {
    return std::abs(a - b) < 0.05;
}

/// Strips at one height: how far in they are and how far from the nearer end.
struct Level {
    double side = 0;
    double end = 0;
    bool upper = true;
    int count = 0;
};

Level level_of(const Rect<Wall>& strip, const Rect<Wall>& place) {
    Level level;
    level.side = std::min(strip.min.x - place.min.x, place.max.x - strip.max.x);
    level.upper = strip.centre().y >= place.centre().y - geometry::kLengthEps;
    level.end = level.upper ? place.max.y - strip.max.y : strip.min.y - place.min.y;
    level.count = 1;
    return level;
}

/// "3 mm from the top", or "close to the top" where the unit shows no distance.
std::string distance_words(double mm, const char* edge, units::LengthUnit unit) {
    if (units::format_number(mm, unit) == "0")
        return fmt::format("close to {}", edge);
    return fmt::format("{} from {}", units::format_length(mm, unit), edge);
}

}  // namespace

std::vector<std::string> strip_words(const Hanging& hanging, const Rect<Wall>& place,
                                     units::LengthUnit unit) {
    std::vector<Level> levels;
    for (const Fixing& fixing : hanging.fixings) {
        const Level next = level_of(covered_by(fixing), place);
        const auto same = std::find_if(levels.begin(), levels.end(), [&next](const Level& one) {
            return one.upper == next.upper && nearly(one.end, next.end) &&
                   nearly(one.side, next.side);
        });
        if (same == levels.end())
            levels.push_back(next);
        else
            ++same->count;
    }
    std::vector<std::string> words;
    for (const Level& level : levels)
        words.push_back(fmt::format(
            "{} {}: {}, {}", level.count, level.count == 1 ? "strip" : "strips",
            distance_words(level.side, level.count == 1 ? "the side" : "the sides", unit),
            distance_words(level.end, level.upper ? "the top" : "the bottom", unit)));
    return words;
}

}  // namespace wallwright::hanging
