#include "units/length.h"

#include "base/contract.h"
#include "units/scan.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <optional>

namespace wallwright::units {

namespace {

constexpr double kMmPerFoot = 12 * kMmPerInch;
constexpr double kLongest = 1e6;  // mm: a wall of a kilometre is a slip of the finger
constexpr long kSixteenths = 16;

struct UnitName {
    std::string_view name;
    double mm;
};

constexpr std::array<UnitName, 13> kUnitNames = {{{"mm", 1},
                                                  {"cm", 10},
                                                  {"m", 1000},
                                                  {"in", kMmPerInch},
                                                  {"inch", kMmPerInch},
                                                  {"inches", kMmPerInch},
                                                  {"\"", kMmPerInch},
                                                  {"″", kMmPerInch},
                                                  {"”", kMmPerInch},
                                                  {"ft", kMmPerFoot},
                                                  {"feet", kMmPerFoot},
                                                  {"'", kMmPerFoot},
                                                  {"′", kMmPerFoot}}};

std::optional<double> mm_in(std::string_view unit_name) {
    const auto found =
        std::find_if(kUnitNames.begin(), kUnitNames.end(),
                     [unit_name](const UnitName& one) { return one.name == unit_name; });
    return found == kUnitNames.end() ? std::nullopt : std::optional(found->mm);
}

double mm_in(LengthUnit unit) {
    switch (unit) {
        case LengthUnit::mm:
            return 1;
        case LengthUnit::cm:
            return 10;
        case LengthUnit::inch:
            return kMmPerInch;
    }
    broken_contract("every length unit has its size in millimetres", __FILE__, __LINE__);
}

/// One number with its unit; `bare` mm a unit where none is written.
struct Part {
    double mm = 0;
    double mm_per_unit = 0;
    bool named = false;
};

Result<Part> take_part(Scanner& scanner, double bare) {
    const auto number = scanner.take_number();
    if (!number)
        return fail(number.error());
    scanner.skip_spaces();
    const Scanner before_unit = scanner;
    const std::string_view unit = scanner.take_unit();
    if (unit.empty())
        return Part{*number * bare, bare, false};
    const auto mm = mm_in(unit);
    if (!mm)
        return fail(before_unit.problem_here(fmt::format("\"{}\" is not a unit of length", unit),
                                             "use mm, cm, m, in, ft, ' or \""));
    return Part{*number * *mm, *mm, true};
}

Result<double> checked(double mm, const Scanner& scanner) {
    if (!std::isfinite(mm) || std::abs(mm) > kLongest)
        return fail(scanner.problem_here("that is longer than a kilometre",
                                         "check the number and its unit"));
    return mm;
}

/// A length from its first part on: feet may be followed by inches.
Result<double> take_length(Scanner& scanner, double bare) {
    auto part = take_part(scanner, bare);
    if (!part)
        return fail(part.error());
    double total = part->mm;
    scanner.skip_spaces();
    if (part->named && part->mm_per_unit == kMmPerFoot && scanner.at_number()) {
        const auto inches = take_part(scanner, kMmPerInch);
        if (!inches)
            return fail(inches.error());
        total += inches->mm;
        scanner.skip_spaces();
    }
    return checked(total, scanner);
}

Problem not_a_size(const Scanner& scanner) {
    return scanner.problem_here("a size must be more than 0", "write a positive length");
}

/// The nearest sixteenth as "16 1/2".
std::string inches_text(double mm) {
    const long sixteenths = std::lround(std::abs(mm) / kMmPerInch * kSixteenths);
    const std::string sign = mm < 0 && sixteenths > 0 ? "-" : "";
    const long whole = sixteenths / kSixteenths;
    const long rest = sixteenths % kSixteenths;
    if (rest == 0)
        return fmt::format("{}{}", sign, whole);
    const long common = std::gcd(rest, kSixteenths);
    const std::string fraction = fmt::format("{}/{}", rest / common, kSixteenths / common);
    return whole == 0 ? sign + fraction : fmt::format("{}{} {}", sign, whole, fraction);
}

/// `decimals` at most, without trailing zeros or a minus before 0.
std::string decimal_text(double value, int decimals) {
    std::string text = fmt::format("{:.{}f}", value, decimals);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.')
        text.pop_back();
    return text == "-0" ? "0" : text;
}

}  // namespace

Result<double> parse_length(std::string_view text, LengthUnit bare) {
    Scanner scanner(text);
    scanner.skip_spaces();
    const bool negative = scanner.take("-") || scanner.take("\u2212");
    const auto length = take_length(scanner, mm_in(bare));
    if (!length)
        return length;
    if (!scanner.at_end())
        return fail(scanner.problem_here("this part is not understood",
                                         "write one length, such as 42 cm or 16 1/2 in"));
    return negative ? -*length : *length;
}

Result<double> parse_size(std::string_view text, LengthUnit bare) {
    const auto length = parse_length(text, bare);
    if (length && *length <= 0)
        return fail(not_a_size(Scanner(text)));
    return length;
}

/// A side so many times the other is of another unit than the one that was written once.
constexpr double kUnlikely = 60;

Result<SizeText> parse_size_pair(std::string_view text, LengthUnit bare) {
    Scanner scanner(text);
    scanner.skip_spaces();
    const Scanner from_width = scanner;
    const auto width = take_part(scanner, mm_in(bare));
    if (!width)
        return fail(width.error());
    scanner.skip_spaces();
    if (!scanner.take("x") && !scanner.take("X") && !scanner.take("×"))
        return fail(scanner.problem_here("width and height need an x between them",
                                         "write them like 300x400"));
    scanner.skip_spaces();
    const auto height = take_part(scanner, width->named ? width->mm_per_unit : mm_in(bare));
    if (!height)
        return fail(height.error());
    scanner.skip_spaces();
    if (!scanner.at_end())
        return fail(scanner.problem_here("this part is not understood",
                                         "write a size like 300x400 or 12 x 16 in"));
    const double width_mm =
        width->named ? width->mm : width->mm / width->mm_per_unit * height->mm_per_unit;
    if (width_mm <= 0 || height->mm <= 0)
        return fail(not_a_size(from_width));
    const bool one_named = width->named != height->named;
    const double ratio = width_mm / height->mm;
    if (one_named && (ratio > kUnlikely || ratio < 1 / kUnlikely))
        return fail(scanner.problem_here("one of the two has no unit",
                                         "write it with both, like 2 m x 80 cm"));
    for (const double mm : {width_mm, height->mm})
        if (const auto sound = checked(mm, from_width); !sound)
            return fail(sound.error());
    return SizeText{width_mm, height->mm};
}

double rounded(double mm, LengthUnit unit) {
    switch (unit) {
        case LengthUnit::mm:
        case LengthUnit::cm:
            return std::round(mm * 10) / 10;
        case LengthUnit::inch:
            return std::round(mm / kMmPerInch * kSixteenths) / kSixteenths * kMmPerInch;
    }
    broken_contract("every length unit has its step", __FILE__, __LINE__);
}

std::string format_number(double mm, LengthUnit unit) {
    switch (unit) {
        case LengthUnit::mm:
            return decimal_text(rounded(mm, unit), 1);
        case LengthUnit::cm:
            return decimal_text(rounded(mm, unit) / 10, 2);
        case LengthUnit::inch:
            return inches_text(mm);
    }
    broken_contract("every length unit has its way of writing", __FILE__, __LINE__);
}

std::string format_tolerance(double mm, LengthUnit unit) {
    constexpr double kSixteenth = kMmPerInch / kSixteenths;
    const double step = unit == LengthUnit::inch ? kSixteenth : 0.1;
    return format_length(std::ceil(mm / step - 1e-9) * step, unit);
}

std::string format_length(double mm, LengthUnit unit) {
    return fmt::format("{} {}", format_number(mm, unit), name_of(unit));
}

std::string_view name_of(LengthUnit unit) {
    switch (unit) {
        case LengthUnit::mm:
            return "mm";
        case LengthUnit::cm:
            return "cm";
        case LengthUnit::inch:
            return "in";
    }
    broken_contract("every length unit has a name", __FILE__, __LINE__);
}

Result<LengthUnit> parse_unit(std::string_view name) {
    for (const LengthUnit unit : kLengthUnits)
        if (name_of(unit) == name)
            return unit;
    return fail({"", fmt::format("\"{}\" is not a unit this program writes in", name),
                 "use mm, cm or in", ""});
}

}  // namespace wallwright::units
