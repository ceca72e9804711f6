#include "rules/wording.h"

#include "base/contract.h"

#include <fmt/format.h>

namespace wallwright::rules {

namespace {

constexpr std::size_t kMostNamed = 4;  ///< A longer list is not read.
constexpr double kSixteenth = units::kMmPerInch / 16;
constexpr double kTenth = 0.1;  ///< mm

/// The smallest length that the unit shows, in mm.
double step_of(units::LengthUnit unit) {
    return unit == units::LengthUnit::inch ? kSixteenth : kTenth;
}

}  // namespace

std::string title_of(const OnWall& one) {
    return wall::title_of(*one.piece);
}

std::string titles_of(const std::vector<const OnWall*>& pieces) {
    WW_EXPECT(!pieces.empty(), "a finding that lists pieces has some");
    std::vector<std::string> titles;
    for (const OnWall* one : pieces)
        titles.push_back(title_of(*one));
    return wall::listed(titles, kMostNamed);
}

std::string title_of(const Scene& scene, const spacing::Group& group) {
    const std::vector<const OnWall*> members = members_of(scene, group);
    return members.size() == 1 ? title_of(*members.front()) : "the group of " + titles_of(members);
}

std::vector<wall::PieceId> ids_of(const std::vector<const OnWall*>& pieces) {
    std::vector<wall::PieceId> ids;
    for (const OnWall* one : pieces)
        ids.push_back(one->piece->id);
    return ids;
}

geometry::Rect<geometry::Wall> bounds_of(const std::vector<const OnWall*>& pieces) {
    WW_EXPECT(!pieces.empty(), "only some pieces have bounds");
    geometry::Rect<geometry::Wall> bounds = pieces.front()->place;
    for (const OnWall* one : pieces)
        bounds = geometry::hull(bounds, one->place);
    return bounds;
}

std::string length_text(const Scene& scene, double mm) {
    const units::LengthUnit unit = scene.project.unit;
    if (mm > 0 && units::rounded(mm, unit) <= 0)
        return "less than " + units::format_length(step_of(unit), unit);
    return units::format_length(mm, unit);
}

std::string range_text(const Scene& scene, double low, double high) {
    return fmt::format("{} to {}", units::format_number(low, scene.project.unit),
                       length_text(scene, high));
}

std::string passed_text(const Scene& scene, double measured, double bound) {
    const std::string shown = length_text(scene, bound);
    const bool alike = shown == length_text(scene, measured);
    return fmt::format("{}{} the {}", alike ? "just " : "", measured > bound ? "over" : "under",
                       shown);
}

std::string mass_text(const Scene& scene, units::Kilograms mass) {
    return units::format_mass(mass, scene.project.unit);
}

std::string_view word_for(wall::FixingKind kind) {
    switch (kind) {
        case wall::FixingKind::strip_pair:
            return "strip";
        case wall::FixingKind::nail_hook:
            return "hook";
        case wall::FixingKind::screw:
            return "screw";
        case wall::FixingKind::rail_hook:
            return "rail hook";
    }
    return "fixing";
}

}  // namespace wallwright::rules
