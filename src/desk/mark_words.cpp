#include "desk/mark_words.h"

#include "wall/titles.h"

#include <fmt/format.h>

#include <cmath>

namespace wallwright::desk {

namespace {

using hanging::Mark;
using hanging::MarkKind;
using units::LengthUnit;

std::string where_words(const wall::Project& project, const Mark& mark) {
    const LengthUnit unit = project.unit;
    const std::string across = units::format_length(mark.across, unit);
    if (mark.kind == MarkKind::rail)
        return fmt::format("{} across on the rail, {} of cord", across,
                           units::format_length(mark.cord, unit));
    const bool is_down = (mark.up < 0) != (project.datum.height == wall::DatumHeight::ceiling);
    return fmt::format("{} across, {} {}", across, units::format_length(std::abs(mark.up), unit),
                       is_down ? "down" : "up");
}

std::string error_words(const Mark& mark, LengthUnit unit) {
    const std::string across = units::format_tolerance(mark.across_error, unit);
    if (mark.kind == MarkKind::rail)
        return fmt::format("± {} across", across);
    const std::string up = units::format_tolerance(mark.up_error, unit);
    if (across == up)
        return fmt::format("± {} each way", up);
    return fmt::format("± {} across, ± {} up and down", across, up);
}

/// To hold against the frame before the nail goes in.
std::string hook_words(const Mark& mark, LengthUnit unit) {
    return fmt::format("{} below the frame's top{}", units::format_length(mark.below_top, unit),
                       mark.assumed ? ", not measured yet" : "");
}

}  // namespace

std::string mark_words(const wall::Project& project, const Mark& mark) {
    std::string words = fmt::format("Mark {}: {}, {}{}\n{}\n{}", mark.number,
                                    wall::title_to_hang(project, mark.piece), mark.what,
                                    mark.kind == MarkKind::corner ? " of the frame" : "",
                                    where_words(project, mark), error_words(mark, project.unit));
    if (mark.kind == MarkKind::hook)
        words += "\n" + hook_words(mark, project.unit);
    if (mark.stage > 0)
        words += fmt::format("\nGoes up in stage {}", mark.stage);
    return words;
}

}  // namespace wallwright::desk
