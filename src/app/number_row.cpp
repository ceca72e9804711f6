#include "app/text_field.h"
#include "app/widgets.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

bool is_blank(const std::string& text) {
    return text.find_first_not_of(" \t") == std::string::npos;
}

Result<int> read_count(const std::string& text, CountRange range) {
    constexpr std::size_t kMostDigits = 6;
    const bool digits = std::ranges::all_of(text, [](char c) { return c >= '0' && c <= '9'; });
    const int count = text.empty() || text.size() > kMostDigits || !digits ? -1 : std::stoi(text);
    if (count < range.least || count > range.most)
        return fail({"", fmt::format("\"{}\" is no count", text),
                     fmt::format("type a whole number from {} to {}", range.least, range.most),
                     ""});
    return count;
}

Result<OptionalDate> read_date(const std::string& text) {
    if (is_blank(text))
        return OptionalDate{};
    const auto from = text.find_first_not_of(" \t");
    const auto date = wall::date_named(
        std::string_view(text).substr(from, text.find_last_not_of(" \t") - from + 1));
    if (!date)
        return fail({"", fmt::format("\"{}\" is no day of the calendar", text),
                     "type year, month and day, as in 2026-11-25", ""});
    return OptionalDate{*date};
}

float width_for(const Ui& ui, const std::string& shown) {
    const float needed =
        ImGui::CalcTextSize(shown.c_str()).x + 2 * ImGui::GetStyle().FramePadding.x + ui.px(4);
    return std::max(field_width(ui), needed);
}

}  // namespace

std::optional<double> length_row(Ui& ui, const char* name, const char* label, double mm,
                                 units::LengthUnit unit, const std::string& why) {
    return typed_row(ui, label, {name, units::format_length(mm, unit), ""}, field_width(ui), why,
                     [unit](const std::string& text) { return units::parse_length(text, unit); });
}

std::optional<double> measure_row(Ui& ui, const char* name, const char* label, double mm,
                                  units::LengthUnit unit, const std::string& why) {
    return typed_row(ui, label, {name, units::format_length(mm, unit), ""}, field_width(ui), why,
                     [unit](const std::string& text) { return units::parse_size(text, unit); });
}

std::optional<OptionalLength> optional_length_row(Ui& ui, const char* name, const char* label,
                                                  std::optional<double> mm, units::LengthUnit unit,
                                                  const std::string& why,
                                                  const std::string& empty) {
    const std::string shown = mm ? units::format_length(*mm, unit) : "";
    return typed_row(ui, label, {name, shown, empty}, field_width(ui), why,
                     [unit](const std::string& text) -> Result<OptionalLength> {
                         if (is_blank(text))
                             return OptionalLength{};
                         return units::parse_size(text, unit).map([](double length) {
                             return OptionalLength{length};
                         });
                     });
}

std::optional<wall::Size> size_row(Ui& ui, const char* name, const char* label, wall::Size size,
                                   units::LengthUnit unit, const std::string& why) {
    const std::string shown = fmt::format("{} × {}", units::format_number(size.width, unit),
                                          units::format_length(size.height, unit));
    return typed_row(ui, label, {name, shown, ""}, width_for(ui, shown), why,
                     [unit](const std::string& text) {
                         return units::parse_size_pair(text, unit).map([](units::SizeText read) {
                             return wall::Size{read.width_mm, read.height_mm};
                         });
                     });
}

std::optional<OptionalMass> mass_row(Ui& ui, const char* name, const char* label,
                                     std::optional<units::Kilograms> mass, units::LengthUnit unit,
                                     const std::string& why, const std::string& empty) {
    const std::string shown = mass ? units::format_mass(*mass, unit) : "";
    return typed_row(ui, label, {name, shown, empty}, field_width(ui), why,
                     [](const std::string& text) -> Result<OptionalMass> {
                         if (is_blank(text))
                             return OptionalMass{};
                         return units::parse_mass(text).map(
                             [](units::Kilograms read) { return OptionalMass{read}; });
                     });
}

std::optional<int> count_row(Ui& ui, const char* name, const char* label, int count,
                             const std::string& why, CountRange range) {
    return typed_row(ui, label, {name, std::to_string(count), ""}, ui.px(48), why,
                     [range](const std::string& text) { return read_count(text, range); });
}

std::optional<OptionalCount> optional_count_row(Ui& ui, const char* name, const char* label,
                                                std::optional<int> count, CountRange range,
                                                const std::string& why, const std::string& empty) {
    return typed_row(
        ui, label, {name, count ? std::to_string(*count) : "", empty}, field_width(ui), why,
        [range](const std::string& text) -> Result<OptionalCount> {
            if (is_blank(text))
                return OptionalCount{};
            return read_count(text, range).map([](int read) { return OptionalCount{read}; });
        });
}

std::optional<OptionalDate> date_row(Ui& ui, const char* name, const char* label,
                                     const std::optional<wall::Date>& date, const std::string& why,
                                     const std::string& empty) {
    return typed_row(ui, label, {name, date ? wall::text_of(*date) : "", empty}, field_width(ui),
                     why, read_date);
}

std::optional<std::string> text_row(Ui& ui, const char* name, const char* label,
                                    const std::string& text, const std::string& why) {
    const float label_width = ImGui::CalcTextSize(label).x;
    const float rest = ImGui::GetContentRegionAvail().x - label_width - ui.px(12);
    return typed_row(ui, label, {name, text, ""}, std::max(rest, field_width(ui)), why,
                     [](const std::string& typed) -> Result<std::string> { return typed; });
}

}  // namespace wallwright::app
