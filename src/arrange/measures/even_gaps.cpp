#include "arrange/measures/all.h"
#include "arrange/measures/slope.h"
#include "arrange/measures/wording.h"

#include <fmt/format.h>

#include <cmath>

namespace wallwright::arrange {

namespace {

constexpr double kHalfAt = 0.1;  ///< A gap that is off by this share of the wanted counts half.

double worth(double off, double gap) {
    return 1 / (1 + seen_off(off) / (kHalfAt * gap));
}

/// Pieces that hang together have at least one gap fewer than they are; those that lack count as
/// off.
double value(const View& view) {
    if (view.size() == 1)
        return 1;
    const double gap = view.task().gap;
    double sum = 0;
    for (const spacing::Facing& pair : view.facing())
        sum += worth(std::abs(pair.size - gap), gap);
    for (const spacing::Facing& pair : view.corners())
        sum += worth(gap - pair.size, gap);
    const std::size_t asked =
        std::max(view.facing().size(), view.size() - 1) + view.corners().size();
    const double mean = sum / static_cast<double>(asked);
    return mean * mean;
}

struct Gaps {
    std::size_t right = 0;
    std::size_t off = 0;
    double least = 0;
    double most = 0;
};

Gaps gaps_of(const View& view) {
    Gaps gaps;
    for (const spacing::Facing& pair : view.facing()) {
        if (std::abs(pair.size - view.task().gap) <= kExact) {
            ++gaps.right;
            continue;
        }
        gaps.least = gaps.off == 0 ? pair.size : std::min(gaps.least, pair.size);
        gaps.most = std::max(gaps.most, pair.size);
        ++gaps.off;
    }
    return gaps;
}

std::string facing_words(const View& view, units::LengthUnit unit) {
    const Gaps gaps = gaps_of(view);
    const std::size_t all = gaps.right + gaps.off;
    const std::string wanted = units::format_length(view.task().gap, unit);
    const std::string others = range_words(gaps.least, gaps.most, unit);
    if (all == 1)
        return gaps.right == 1 ? fmt::format("The gap is {}", wanted)
                               : fmt::format("The gap is {}, not {}", others, wanted);
    if (gaps.off == 0)
        return fmt::format("All {} gaps are {}", all, wanted);
    if (gaps.right == 0)
        return fmt::format("None of {} gaps is {}; they are {}", all, wanted, others);
    return fmt::format("{} of {} gaps {} {}; the {} {}", gaps.right, all,
                       gaps.right == 1 ? "is" : "are", wanted, gaps.off == 1 ? "other" : "others",
                       others);
}

std::string says(const View& view, units::LengthUnit unit) {
    if (view.size() == 1)
        return "One piece alone has no gaps.";
    if (view.facing().empty())
        return fmt::format("No two pieces face each other within {}.",
                           units::format_length(view.task().reach, unit));
    if (view.corners().empty())
        return facing_words(view, unit) + ".";
    return fmt::format("{}; {} nearer than that.", facing_words(view, unit),
                       view.corners().size() == 1
                           ? "the corners of 1 pair are"
                           : fmt::format("the corners of {} pairs are", view.corners().size()));
}

}  // namespace

const Measure kEvenGaps{
    "even_gaps",
    "Even gaps",
    "square of the mean over facing neighbours: 1 where their gap is the wanted one within 1 mm, "
    "1/2 where it is off by a tenth of it",
    "equal gaps inside a group; common practice, no source. The slope is our choice",
    8,
    value,
    says,
};

}  // namespace wallwright::arrange
