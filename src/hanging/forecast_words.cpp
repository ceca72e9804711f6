// What the errors of marks come to, as sentences: command line and paper say the same.
#include "hanging/marks.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::hanging {

std::string chain_words(const ChainCompared& chain, units::LengthUnit unit) {
    if (chain.marks < 3)
        return "";
    return fmt::format(
        "In the row of {} marks the farthest may be {} off; measured from mark to mark it would "
        "likely be {} off, and {} at worst.",
        chain.marks, units::format_tolerance(chain.from_datum, unit),
        units::format_tolerance(chain.chain_likely, unit),
        units::format_tolerance(chain.chain_worst, unit));
}

std::string gaps_words(const MarksTable& table, units::LengthUnit unit) {
    if (table.gaps.empty())
        return "";
    const auto [least, most] = std::ranges::minmax_element(table.gaps, {}, &GapForecast::gap);
    const double spread = std::ranges::max_element(table.gaps, {}, &GapForecast::spread)->spread;
    const std::string low = units::format_number(least->gap, unit);
    const std::string high = units::format_length(most->gap, unit);
    const bool alike = units::format_length(least->gap, unit) == high;
    return fmt::format("By these marks the gaps come out at {}{}, each to within {}.",
                       alike ? std::string() : fmt::format("{} to ", low), high,
                       units::format_tolerance(spread, unit));
}

}  // namespace wallwright::hanging
