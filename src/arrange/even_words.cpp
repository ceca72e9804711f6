#include "arrange/even_words.h"

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
    return fmt::format("Every gap between neighbours is {}.",
                       units::format_length(evened.project.style.gap, unit));
}

}  // namespace wallwright::arrange
