#include "base/contract.h"
#include "store/json_object.h"

#include <cmath>
#include <cstdint>

namespace wallwright::store {

namespace {

constexpr double kExactInDouble = 9e15;  ///< Whole numbers up to here have no gaps.

/// Without ".0" where the number is whole.
Json number(std::string_view key, double value) {
    WW_EXPECT(std::isfinite(value), "only finite numbers are written to a file");
    const double kept = as_kept(key, value);
    if (kept == std::trunc(kept) && std::abs(kept) < kExactInDouble)
        return static_cast<std::int64_t>(kept);
    return kept;
}

}  // namespace

double as_kept(std::string_view key, double value) {
    const double steps = key.ends_with("_mm") ? 100 : 1000;
    return std::round(value * steps) / steps;
}

void ObjectWriter::size(const geometry::Size& value) {
    must("width_mm", value.width);
    must("height_mm", value.height);
}

void ObjectWriter::rect(const geometry::Rect<geometry::Wall>& value) {
    must("left_mm", value.left());
    must("bottom_mm", value.bottom());
    size(value.size());
}

void ObjectWriter::point(const std::optional<geometry::Point<geometry::Wall>>& value) {
    using Point = geometry::Point<geometry::Wall>;
    pair("x_mm", &Point::x, "y_mm", &Point::y, value);
}

void ObjectWriter::unknown(const wall::UnknownKeys& keys) {
    for (const auto& [key, text] : keys) {
        Json value = Json::parse(text, nullptr, false);
        WW_EXPECT(!value.is_discarded(), "unknown keys are kept as JSON text");
        if (!json_.contains(key))
            json_[key] = std::move(value);
    }
}

Json ObjectWriter::to_json(std::string_view key, double value) {
    return number(key, value);
}

Json ObjectWriter::to_json(std::string_view /*key*/, int value) {
    return value;
}

Json ObjectWriter::to_json(std::string_view /*key*/, bool value) {
    return value;
}

Json ObjectWriter::to_json(std::string_view /*key*/, const std::string& text) {
    return text;
}

Json ObjectWriter::to_json(std::string_view /*key*/, wall::Colour value) {
    return wall::to_text(value);
}

Json ObjectWriter::to_json(std::string_view /*key*/, const wall::Date& value) {
    return wall::text_of(value);
}

Json ObjectWriter::to_json(std::string_view /*key*/, units::LengthUnit value) {
    return units::name_of(value);
}

Json ObjectWriter::to_json(std::string_view key, const geometry::Polygon& value) {
    Json corners = Json::array();
    for (const auto& corner : value.corners)
        corners.push_back({number(key, corner.x), number(key, corner.y)});
    return corners;
}

}  // namespace wallwright::store
