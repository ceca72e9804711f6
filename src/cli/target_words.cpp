#include "cli/target_words.h"

#include "geometry/polygon.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <optional>
#include <vector>

namespace wallwright::cli {

namespace {

using WallPoint = geometry::Point<geometry::Wall>;

/// A comma may also be a decimal one, so every comma is tried as the one between.
std::vector<WallPoint> points_in(const std::string& text, units::LengthUnit unit) {
    std::vector<WallPoint> points;
    for (std::size_t comma = text.find(','); comma != std::string::npos;
         comma = text.find(',', comma + 1)) {
        const auto across = units::parse_length(text.substr(0, comma), unit);
        const auto up = units::parse_length(text.substr(comma + 1), unit);
        if (across && up)
            points.push_back({*across, *up});
    }
    return points;
}

std::string names_of(const wall::Room& room) {
    std::string names;
    for (const wall::Furniture& one : room.furniture)
        names += one.id.text + ", ";
    for (const wall::Fixture& one : room.fixtures)
        names += one.id.text + ", ";
    for (const std::string_view corner : wall::Names<wall::WallCorner>::values)
        names += fmt::format("{}, ", corner);
    return names;
}

std::optional<wall::Target> named(const std::string& text, const wall::Project& project) {
    if (find(project, wall::FurnitureId{text}) != nullptr)
        return wall::FurnitureId{text};
    if (find(project, wall::FixtureId{text}) != nullptr)
        return wall::FixtureId{text};
    return wall::with_name<wall::WallCorner>(text);
}

std::string point_words(WallPoint point, units::LengthUnit unit) {
    return fmt::format("{} across and {} up", units::format_length(point.x, unit),
                       units::format_length(point.y, unit));
}

struct WordsFor {
    const wall::Project& project;
    units::LengthUnit unit;

    std::string operator()(const wall::FurnitureId& id) const {
        const wall::Furniture* furniture = find(project, id);
        return furniture == nullptr ? id.text : title_of(*furniture);
    }
    std::string operator()(const wall::FixtureId& id) const {
        const wall::Fixture* fixture = find(project, id);
        return fixture == nullptr ? id.text : title_of(*fixture);
    }
    std::string operator()(const WallPoint& point) const {
        return fmt::format("the point {}", point_words(point, unit));
    }
    std::string operator()(wall::WallCorner corner) const {
        std::string name(wall::name_of(corner));
        name[name.find('_')] = ' ';
        return fmt::format("the wall's {} corner", name);
    }
    std::string operator()(const geometry::Rect<geometry::Wall>& region) const {
        return fmt::format("the region from {} to {}", point_words(region.min, unit),
                           point_words(region.max, unit));
    }
};

}  // namespace

Result<wall::Target> read_target(const std::string& text, const wall::Project& project,
                                 units::LengthUnit unit) {
    if (const auto target = named(text, project))
        return *target;
    const std::vector<WallPoint> points = points_in(text, unit);
    if (points.size() > 1)
        return fail({"--toward", fmt::format("\"{}\" can be read as more than one point", text),
                     "write decimals with a point, like 31.5cm,120cm", ""});
    if (points.empty())
        return fail({"--toward", fmt::format("there is no \"{}\" on this wall", text),
                     fmt::format("use one of {}or a point like 3800,1500 from the wall's left end "
                                 "and the floor",
                                 names_of(project.room)),
                     ""});
    const auto wall = geometry::bounds(project.room.outline);
    if (!wall.contains(points.front()))
        return fail(
            {"--toward",
             fmt::format("the point {} is not on the wall", point_words(points.front(), unit)),
             fmt::format("the wall is {} wide and {} high",
                         units::format_length(wall.width(), unit),
                         units::format_length(wall.height(), unit)),
             ""});
    return points.front();
}

std::string target_words(const wall::Project& project, const wall::Target& target,
                         units::LengthUnit unit) {
    return std::visit(WordsFor{project, unit}, target);
}

}  // namespace wallwright::cli
