#include "store/json_object.h"
#include "store/text_place.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <limits>

namespace wallwright::store {

namespace {

constexpr std::size_t kMostShown = 60;  ///< Bytes of a value in a problem.

constexpr double kLargestCount = std::numeric_limits<int>::max();

/// What a key says its number counts: the words behind its last part.
std::string kind_of_number(std::string_view key) {
    static constexpr std::pair<std::string_view, std::string_view> kUnits[] = {
        {"_mm", "mm"},
        {"_kg", "kg"},
        {"_kg_per_m3", "kg per m3"},
        {"grams_per_m2", "grams per m2"}};
    for (const auto& [ending, unit] : kUnits)
        if (key.ends_with(ending))
            return fmt::format("a number of {}", unit);
    return "a number";
}

std::string quoted(const Json& value) {
    return shortened(value.dump(), kMostShown);
}

/// "write 400" for a text that holds the number the key wants.
std::string number_meant(std::string_view key, const Json& found) {
    if (!found.is_string())
        return "";
    const auto& text = found.get_ref<const std::string&>();
    if (key.ends_with("_mm"))
        if (const auto mm = units::parse_length(text, units::LengthUnit::mm))
            return fmt::format("write {}", units::format_number(*mm, units::LengthUnit::mm));
    if (key.ends_with("_kg"))
        if (const auto mass = units::parse_mass(text))
            return fmt::format("write {:.4g}", mass->value);
    return "write it without quotes and without a unit";
}

}  // namespace

std::string name_in_list(const Json& value, std::size_t index) {
    for (const char* key : {"id", "name", "fixing", "measure"})
        if (value.is_object() && value.contains(key) && value[key].is_string())
            return value[key].get<std::string>();
    return fmt::format("#{}", index + 1);
}

ObjectReader::ObjectReader(const Json& value, std::string path, FirstProblem& problem)
    : value_(value), path_(std::move(path)), problem_(problem) {
    if (!value.is_object())
        complain({path_, fmt::format("must be an object in {{ }}, got {}", quoted(value)), "", ""});
}

void ObjectReader::size(geometry::Size& into) {
    must("width_mm", into.width);
    must("height_mm", into.height);
}

void ObjectReader::rect(geometry::Rect<geometry::Wall>& into) {
    geometry::Point<geometry::Wall> corner;
    geometry::Size extent;
    must("left_mm", corner.x);
    may("bottom_mm", corner.y);
    size(extent);
    into = geometry::Rect<geometry::Wall>::at(corner, extent);
}

void ObjectReader::point(std::optional<geometry::Point<geometry::Wall>>& into) {
    using Point = geometry::Point<geometry::Wall>;
    pair("x_mm", &Point::x, "y_mm", &Point::y, into);
}

bool ObjectReader::has(std::string_view key) const {
    return value_.is_object() && value_.contains(std::string(key));
}

void ObjectReader::refuse(std::string what, std::string remedy) {
    complain({path_, std::move(what), std::move(remedy), ""});
}

void ObjectReader::unknown(wall::UnknownKeys& into) const {
    if (!value_.is_object())
        return;
    for (const auto& [key, value] : value_.items())
        if (!read_keys_.contains(key))
            into[key] = value.dump();
}

const Json* ObjectReader::look_up(std::string_view key) {
    read_keys_.emplace(key);
    if (!value_.is_object())
        return nullptr;
    const auto found = value_.find(std::string(key));
    return found == value_.end() ? nullptr : &*found;
}

std::string ObjectReader::path_to(std::string_view key) const {
    return path_.empty() ? std::string(key) : fmt::format("{}/{}", path_, key);
}

void ObjectReader::missing(std::string_view key) {
    complain({path_, fmt::format("\"{}\" is missing", key), "add it", ""});
}

void ObjectReader::half_pair(std::string_view there, std::string_view missing_key) {
    complain({path_, fmt::format("\"{}\" is missing beside \"{}\"", missing_key, there),
              "give both, or neither", ""});
}

void ObjectReader::complain(Problem problem) {
    if (!problem_)
        problem_ = std::move(problem);
}

bool ObjectReader::expect(std::string_view key, const Json& found, bool as_it_should_be,
                          const std::string& what) {
    if (!as_it_should_be)
        complain({path_to(key), fmt::format("{}, got {}", what, quoted(found)), "", ""});
    return as_it_should_be;
}

void ObjectReader::read(std::string_view key, const Json& found, double& into) {
    if (found.is_number())
        into = as_kept(key, found.get<double>());
    else
        complain({path_to(key),
                  fmt::format("must be {}, got {}", kind_of_number(key), quoted(found)),
                  number_meant(key, found), ""});
}

void ObjectReader::read(std::string_view key, const Json& found, int& into) {
    const bool whole = found.is_number_integer() && found.get<double>() >= 0 &&
                       found.get<double>() <= kLargestCount;
    if (expect(key, found, whole, "must be a whole number"))
        into = found.get<int>();
}

void ObjectReader::read(std::string_view key, const Json& found, bool& into) {
    if (expect(key, found, found.is_boolean(), "must be true or false"))
        into = found.get<bool>();
}

void ObjectReader::read(std::string_view key, const Json& found, std::string& into) {
    if (expect(key, found, found.is_string(), "must be a text in quotes"))
        into = found.get<std::string>();
}

void ObjectReader::read(std::string_view key, const Json& found, wall::Colour& into) {
    const auto colour =
        found.is_string() ? wall::parse_colour(found.get_ref<const std::string&>()) : std::nullopt;
    if (expect(key, found, colour.has_value(), "must be a colour such as \"#e3e6df\""))
        into = *colour;
}

void ObjectReader::read(std::string_view key, const Json& found, wall::Date& into) {
    const auto date =
        found.is_string() ? wall::date_named(found.get_ref<const std::string&>()) : std::nullopt;
    if (expect(key, found, date.has_value(), "must be a day such as \"2026-11-25\""))
        into = *date;
}

void ObjectReader::read(std::string_view key, const Json& found, units::LengthUnit& into) {
    for (const units::LengthUnit unit : units::kLengthUnits)
        if (found == units::name_of(unit)) {
            into = unit;
            return;
        }
    not_among(key, found, {"mm", "cm", "in"});
}

void ObjectReader::read(std::string_view key, const Json& found, geometry::Polygon& into) {
    const auto is_corner = [](const Json& corner) {
        return corner.is_array() && corner.size() == 2 && corner[0].is_number() &&
               corner[1].is_number();
    };
    const bool is_outline = found.is_array() && std::all_of(found.begin(), found.end(), is_corner);
    if (!expect(key, found, is_outline, "must be a list of corners [x, y] in mm"))
        return;
    for (const Json& corner : found)
        into.corners.push_back(
            {as_kept(key, corner[0].get<double>()), as_kept(key, corner[1].get<double>())});
}

void ObjectReader::not_among(std::string_view key, const Json& found,
                             const std::vector<std::string_view>& allowed) {
    complain(
        {path_to(key),
         fmt::format("must be one of \"{}\", got {}", fmt::join(allowed, "\", \""), quoted(found)),
         "", ""});
}

}  // namespace wallwright::store
