#include "cli/target_words.h"

#include "geometry/polygon.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <numeric>
#include <utility>
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

/// What can be named, and by which words.
struct Named {
    std::string id;
    std::string title;  ///< Empty for one without.
    wall::Target target;
};

std::vector<Named> things_on(const wall::Room& room) {
    std::vector<Named> things;
    for (const wall::Furniture& one : room.furniture)
        things.push_back({one.id.text, one.title, one.id});
    for (const wall::Fixture& one : room.fixtures)
        things.push_back({one.id.text, one.title, one.id});
    for (const std::string_view corner : wall::Names<wall::WallCorner>::values)
        things.push_back({std::string(corner), "", *wall::with_name<wall::WallCorner>(corner)});
    return things;
}

std::string ids_of(const std::vector<Named>& things, const char* between) {
    std::vector<std::string> ids;
    for (const Named& one : things)
        ids.push_back(one.id);
    return fmt::format("{}", fmt::join(ids, between));
}

std::string in_lower_case(std::string text) {
    for (char& c : text)
        c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return text;
}

/// By id exactly, else by id or title in any case.
std::vector<Named> named(const std::string& text, const std::vector<Named>& things) {
    const auto exact = std::ranges::find(things, text, &Named::id);
    if (exact != things.end())
        return {*exact};
    const std::string wanted = in_lower_case(text);
    std::vector<Named> found;
    for (const Named& one : things)
        if (in_lower_case(one.id) == wanted || in_lower_case(one.title) == wanted)
            found.push_back(one);
    return found;
}

/// Letters to change, add or leave out to make the one text the other.
std::size_t letters_between(const std::string& a, const std::string& b) {
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), 0U);
    for (std::size_t i = 0; i < a.size(); ++i) {
        std::size_t before = std::exchange(row[0], i + 1);
        for (std::size_t j = 0; j < b.size(); ++j) {
            const std::size_t changed = before + (a[i] == b[j] ? 0 : 1);
            before = row[j + 1];
            row[j + 1] = std::min({changed, before + 1, row[j] + 1});
        }
    }
    return row.back();
}

/// Those that are spelt nearly so, or whose title has the text in it.
std::vector<Named> like(const std::string& text, const std::vector<Named>& things) {
    const std::string wanted = in_lower_case(text);
    const auto is_like = [&wanted](const std::string& name) {
        return !name.empty() &&
               (letters_between(wanted, in_lower_case(name)) <= (name.size() + 2) / 3 ||
                in_lower_case(name).find(wanted) != std::string::npos);
    };
    std::vector<Named> found;
    for (const Named& one : things)
        if (!wanted.empty() && (is_like(one.id) || is_like(one.title)))
            found.push_back(one);
    return found;
}

Problem no_such_thing(const std::string& text, const std::vector<Named>& things) {
    const std::vector<Named> near = like(text, things);
    return {"--toward", fmt::format("there is no \"{}\" on this wall", text),
            fmt::format("{}use one of {}, or a point like 3800,1500 from the wall's left end and "
                        "the floor",
                        near.empty() ? "" : fmt::format("did you mean {}? ", ids_of(near, " or ")),
                        ids_of(things, ", ")),
            ""};
}

}  // namespace

Result<wall::Target> read_target(const std::string& text, const wall::Project& project,
                                 units::LengthUnit unit) {
    const std::vector<Named> things = things_on(project.room);
    const std::vector<Named> found = named(text, things);
    if (found.size() == 1)
        return found.front().target;
    if (found.size() > 1)
        return fail({"--toward", fmt::format("{} things are called \"{}\"", found.size(), text),
                     fmt::format("did you mean {}?", ids_of(found, " or ")), ""});
    const std::vector<WallPoint> points = points_in(text, unit);
    if (points.size() > 1)
        return fail({"--toward", fmt::format("\"{}\" can be read as more than one point", text),
                     "write decimals with a point, like 31.5cm,120cm", ""});
    if (points.empty())
        return fail(no_such_thing(text, things));
    const auto wall = geometry::bounds(project.room.outline);
    if (!wall.contains(points.front()))
        return fail({"--toward",
                     fmt::format("{} is not on the wall", title_of(project, points.front(), unit)),
                     fmt::format("the wall is {} wide and {} high",
                                 units::format_length(wall.width(), unit),
                                 units::format_length(wall.height(), unit)),
                     ""});
    return points.front();
}

}  // namespace wallwright::cli
