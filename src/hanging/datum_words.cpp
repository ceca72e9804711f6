// The words for what marks are measured from, in one place.
#include "base/contract.h"
#include "hanging/datum_label.h"
#include "hanging/marks.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <cmath>

namespace wallwright::hanging {

namespace {

using wall::DatumHeight;

/// A piece without a place is no datum; then it is the floor, as for the marks.
DatumHeight height_of(const wall::Project& project) {
    const bool lost =
        project.datum.height == DatumHeight::piece && !datum_place(project).has_value();
    return lost ? DatumHeight::floor : project.datum.height;
}

/// What measuring a floor or a ceiling at both ends of the wall brought to light: `rise` mm upward
/// to the right.
std::string slope_sentence(const wall::Project& project, std::string_view what, double rise) {
    if (units::rounded(std::abs(rise), project.unit) <= 0)
        return fmt::format("The {} was measured at both ends and is level.", what);
    return fmt::format(
        "The {} was measured at both ends and is {} {} at the right than at the left; the marks "
        "follow a true level.",
        what, units::format_length(std::abs(rise), project.unit), rise > 0 ? "higher" : "lower");
}

}  // namespace

std::string datum_words(const wall::Project& project) {
    const std::string_view side = wall::name_of(project.datum.side);
    switch (height_of(project)) {
        case DatumHeight::floor:
            return fmt::format("the floor and the {} corner", side);
        case DatumHeight::ceiling:
            return fmt::format("the ceiling and the {} corner", side);
        case DatumHeight::level_line:
            return fmt::format("a level line {} above the floor and the {} corner",
                               units::format_length(project.datum.level_line, project.unit), side);
        case DatumHeight::piece:
            return fmt::format("the top and the {} edge of {}", side,
                               title_of(project, *project.datum.piece));
    }
    broken_contract("every datum has its words", __FILE__, __LINE__);
}

std::string datum_label(const wall::Project& project) {
    const std::string_view side = wall::name_of(project.datum.side);
    switch (height_of(project)) {
        case DatumHeight::floor:
            return fmt::format("floor, {} corner", side);
        case DatumHeight::ceiling:
            return fmt::format("ceiling, {} corner", side);
        case DatumHeight::level_line:
            return fmt::format("level line {}, {} corner",
                               units::format_length(project.datum.level_line, project.unit), side);
        case DatumHeight::piece:
            return fmt::format("{}, {} edge", title_of(project, *project.datum.piece), side);
    }
    broken_contract("every datum has its words", __FILE__, __LINE__);
}

std::string up_words(DatumHeight height) {
    switch (height) {
        case DatumHeight::floor:
            return "up from the floor";
        case DatumHeight::ceiling:
            return "down from the ceiling";
        case DatumHeight::level_line:
            return "up from the level line";
        case DatumHeight::piece:
            return "up from its top edge";
    }
    broken_contract("every datum has its words", __FILE__, __LINE__);
}

std::string across_words(const wall::Datum& datum) {
    if (datum.height == DatumHeight::piece)
        return fmt::format("across from its {} edge", wall::name_of(datum.side));
    return fmt::format("across from the {} corner", wall::name_of(datum.side));
}

std::string slope_words(const wall::Project& project) {
    const wall::Datum& datum = project.datum;
    const DatumHeight height = height_of(project);
    if (height == DatumHeight::floor && datum.floor)
        return slope_sentence(project, "floor", datum.floor->left - datum.floor->right);
    if (height == DatumHeight::ceiling && datum.ceiling)
        return slope_sentence(project, "ceiling", datum.ceiling->right - datum.ceiling->left);
    return "";
}

std::string how_to_measure(const wall::Project& project) {
    const wall::Datum& datum = project.datum;
    const std::string corner =
        fmt::format("Across: level, from the {} corner. ", wall::name_of(datum.side));
    switch (height_of(project)) {
        case DatumHeight::floor:
            return corner + "Up: plumb, from the floor right below the mark.";
        case DatumHeight::ceiling:
            return corner + "Down: plumb, from the ceiling right above the mark.";
        case DatumHeight::level_line:
            return corner +
                   "Up: plumb, from the level line, which you draw first, so high above the wall's "
                   "lowest floor; a minus is below it.";
        case DatumHeight::piece:
            return fmt::format(
                "Across: level, from the {} edge of {}, away from it; a minus is back over it. Up: "
                "plumb, from a level line along its top edge; a minus is below it.",
                wall::name_of(datum.side), title_of(project, *datum.piece));
    }
    broken_contract("every datum has its words", __FILE__, __LINE__);
}

}  // namespace wallwright::hanging
