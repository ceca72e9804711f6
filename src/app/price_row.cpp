#include "app/price_row.h"

#include "app/text_field.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>

namespace wallwright::app {

namespace {

std::string trimmed(std::string text) {
    const auto is_space = [](unsigned char c) { return c == ' ' || c == '\t'; };
    text.erase(text.begin(), std::find_if_not(text.begin(), text.end(), is_space));
    text.erase(std::find_if_not(text.rbegin(), text.rend(), is_space).base(), text.end());
    return text;
}

Result<OptionalPrice> read_price(const std::string& typed) {
    std::string text = trimmed(typed);
    if (text.empty())
        return OptionalPrice{};
    std::ranges::replace(text, ',', '.');
    double price = 0;
    const char* end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data(), end, price);
    if (error != std::errc() || stop != end || !std::isfinite(price) || price < 0)
        return fail(
            {"", fmt::format("\"{}\" is no price", typed), "type a number, as in 12.50", ""});
    return OptionalPrice{price};
}

}  // namespace

std::optional<OptionalPrice> price_row(Ui& ui, const char* name, const char* label,
                                       std::optional<double> price, const std::string& why,
                                       const std::string& empty) {
    return typed_row(ui, label, {name, price ? price_text(*price) : "", empty}, field_width(ui),
                     why, read_price);
}

std::string price_text(double price) {
    return fmt::format("{:.2f}", price);
}

}  // namespace wallwright::app
