#include "wall/date.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>

namespace wallwright::wall {

namespace {

/// Digits alone, all of them.
std::optional<int> number_in(std::string_view digits) {
    int value = 0;
    const char* const end = digits.data() + digits.size();
    const bool only_digits =
        std::ranges::all_of(digits, [](char c) { return c >= '0' && c <= '9'; });
    const auto [stop, error] = std::from_chars(digits.data(), end, value);
    if (!only_digits || error != std::errc{} || stop != end)
        return std::nullopt;
    return value;
}

int number_of(std::chrono::month month) {
    return static_cast<int>(static_cast<unsigned>(month));
}
int number_of(std::chrono::day day) {
    return static_cast<int>(static_cast<unsigned>(day));
}

}  // namespace

std::optional<Date> date_named(std::string_view text) {
    constexpr std::size_t kLength = 10;
    constexpr int kFirstYear = 1000;
    if (text.size() != kLength || text[4] != '-' || text[7] != '-')
        return std::nullopt;
    const auto year = number_in(text.substr(0, 4));
    const auto month = number_in(text.substr(5, 2));
    const auto day = number_in(text.substr(8, 2));
    if (!year || !month || !day || *year < kFirstYear)
        return std::nullopt;
    const Date date{std::chrono::year{*year}, std::chrono::month{static_cast<unsigned>(*month)},
                    std::chrono::day{static_cast<unsigned>(*day)}};
    return date.ok() ? std::optional(date) : std::nullopt;
}

std::string text_of(const Date& date) {
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()), number_of(date.month()),
                       number_of(date.day()));
}

std::string spoken(const Date& date) {
    static constexpr std::array kMonths = {"January",   "February", "March",    "April",
                                           "May",       "June",     "July",     "August",
                                           "September", "October",  "November", "December"};
    return fmt::format("{} {} {}", number_of(date.day()),
                       kMonths.at(static_cast<std::size_t>(number_of(date.month()) - 1)),
                       static_cast<int>(date.year()));
}

Date later(const Date& date, int days) {
    return {std::chrono::sys_days(date) + std::chrono::days(days)};
}

}  // namespace wallwright::wall
