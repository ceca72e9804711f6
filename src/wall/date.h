// Days of the calendar, as they stand in files.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace wallwright::wall {

/// In the Gregorian calendar, always one that there is.
using Date = std::chrono::year_month_day;

/// "2026-11-25" (ISO 8601); empty for anything else and for a day that there is not, or that is
/// before 1000 or after 9999.
std::optional<Date> date_named(std::string_view text);
/// The same back.
std::string text_of(const Date& date);
/// "25 November 2026", as people read it.
std::string spoken(const Date& date);
/// So many days after it.
Date later(const Date& date, int days);

}  // namespace wallwright::wall
