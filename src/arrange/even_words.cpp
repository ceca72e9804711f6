#include "arrange/even_words.h"

#include "spacing/group.h"
#include "wall/titles.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <cmath>

namespace wallwright::arrange {

std::vector<std::string> shortfalls(const EvenedWall& evened, units::LengthUnit unit) {
    std::vector<std::string> sentences;
    const auto title = [&evened](const wall::PieceId& id) { return title_of(evened.project, id); };
    for (const spacing::UnevenGap& one : evened.result.uneven)
        sentences.push_back(fmt::format("The gap between {} and {} comes out at {}: {}.",
                                        title(one.gap.first), title(one.gap.second),
                                        units::format_length(one.gap.size, unit),
                                        fmt::join(one.because, "; ")));
    for (const spacing::Unaligned& one : evened.result.unaligned)
        sentences.push_back(fmt::format("The {} of {} and {} stay {} apart: {}.", one.lines,
                                        title(one.first), title(one.second),
                                        units::format_length(std::abs(one.off), unit),
                                        fmt::join(one.because, "; ")));
    for (const auto& [piece, by] : evened.result.blocked)
        sentences.push_back(fmt::format("{} cannot get clear of {}.", title(piece), by));
    return sentences;
}

std::string all_even_words(const EvenedWall& evened, units::LengthUnit unit) {
    const double gap = evened.project.style.gap;
    const double reach = spacing::group_reach(gap);
    const std::string all =
        fmt::format("Every gap between neighbours is {}.", units::format_length(gap, unit));
    if (spacing::find_groups(wall::placed_pieces(evened.project), reach).size() < 2)
        return all;
    return fmt::format("{} Pieces over {} apart are groups of their own and stay apart.", all,
                       units::format_length(reach, unit));
}

}  // namespace wallwright::arrange
