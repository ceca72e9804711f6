#include "units/scan.h"

#include <fmt/format.h>

#include <array>
#include <charconv>
#include <cmath>
#include <utility>

namespace wallwright::units {

namespace {

constexpr std::array<std::pair<std::string_view, double>, 7> kFractionSigns = {
    {{"½", 0.5}, {"¼", 0.25}, {"¾", 0.75}, {"⅛", 0.125}, {"⅜", 0.375}, {"⅝", 0.625}, {"⅞", 0.875}}};

constexpr std::array<std::string_view, 5> kUnitSigns = {"\"", "'", "″", "′", "”"};

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

/// No unit is spelt with an x, which stands between width and height.
bool is_times_sign(char c) {
    return c == 'x' || c == 'X';
}

double to_double(std::string_view digits) {
    double value = 0;
    const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    return read.ec == std::errc::result_out_of_range ? HUGE_VAL : value;
}

}  // namespace

void Scanner::skip_spaces() {
    while (take(" ") || take("\t") || take("\u00A0")) {
    }
}

bool Scanner::at_number() const {
    const std::string_view rest = text_.substr(at_);
    if (rest.empty())
        return false;
    for (const auto& [sign, value] : kFractionSigns)
        if (rest.starts_with(sign))
            return true;
    const bool bare_point =
        (rest[0] == '.' || rest[0] == ',') && rest.size() > 1 && is_digit(rest[1]);
    return is_digit(rest[0]) || bare_point;
}

bool Scanner::take(std::string_view word) {
    if (!text_.substr(at_).starts_with(word))
        return false;
    at_ += word.size();
    return true;
}

std::string_view Scanner::take_unit() {
    const std::size_t start = at_;
    for (const std::string_view sign : kUnitSigns)
        if (take(sign))
            return text_.substr(start, at_ - start);
    while (at_ < text_.size() && is_letter(text_[at_]) && !is_times_sign(text_[at_]))
        ++at_;
    return text_.substr(start, at_ - start);
}

std::string_view Scanner::take_digits() {
    const std::size_t start = at_;
    while (at_ < text_.size() && is_digit(text_[at_]))
        ++at_;
    return text_.substr(start, at_ - start);
}

Result<double> Scanner::take_number() {
    for (const auto& [sign, value] : kFractionSigns)
        if (take(sign))
            return value;
    if (!at_number())
        return fail(problem_here("a number was expected",
                                 "write it in digits, such as 420, 42.5 or 16 1/2"));
    const auto number = take_decimal();
    if (!number)
        return number;
    const auto fraction = take_fraction();
    if (!fraction)
        return fraction;
    return *number + *fraction;
}

Result<double> Scanner::take_decimal() {
    const std::size_t start = at_;
    const std::string_view whole = take_digits();
    if (take("/")) {
        at_ = start;
        return 0.0;  // a fraction with no whole number before it
    }
    const bool comma = take(",");
    if (!comma && !take("."))
        return to_double(whole);
    const std::string_view decimals = take_digits();
    if (comma && decimals.size() == 3 && to_double(whole) > 0) {
        at_ = start;
        return fail(
            problem_here(fmt::format("\"{0},{1}\" may mean {0}.{1} or {0}{1}", whole, decimals),
                         fmt::format("write {0}.{1} or {0}{1}", whole, decimals)));
    }
    return to_double(
        fmt::format("{}.{}", whole.empty() ? "0" : whole, decimals.empty() ? "0" : decimals));
}

Result<double> Scanner::take_fraction() {
    const std::size_t start = at_;
    if (!take("-"))
        skip_spaces();
    for (const auto& [sign, value] : kFractionSigns)
        if (take(sign))
            return value;
    const std::string_view above = take_digits();
    if (above.empty() || !take("/")) {
        at_ = start;
        return 0.0;
    }
    const std::string_view below = take_digits();
    if (below.empty() || to_double(below) <= 0)
        return fail(problem_here("a fraction needs a number other than 0 below its stroke",
                                 "write it like 1/2"));
    return to_double(above) / to_double(below);
}

Problem Scanner::problem_here(const std::string& what, const std::string& remedy) const {
    return {"", what, remedy, point_at(std::string(text_), at_)};
}

}  // namespace wallwright::units
