#include "units/mass.h"

#include "units/scan.h"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <optional>

namespace wallwright::units {

namespace {

constexpr double kOuncesPerPound = 16;
constexpr double kHeaviest = 1000;  // kg

struct UnitName {
    std::string_view name;
    double kg;
};

constexpr std::array<UnitName, 5> kUnitNames = {{{"kg", 1},
                                                 {"g", 0.001},
                                                 {"lb", kKgPerPound},
                                                 {"lbs", kKgPerPound},
                                                 {"oz", kKgPerPound / kOuncesPerPound}}};

std::optional<double> kg_in(std::string_view unit_name) {
    for (const UnitName& unit : kUnitNames)
        if (unit.name == unit_name)
            return unit.kg;
    return std::nullopt;
}

struct Part {
    double kg = 0;
    bool pounds = false;
};

/// One number with its unit; `bare` where none is written.
Result<Part> take_part(Scanner& scanner, std::string_view bare) {
    const auto number = scanner.take_number();
    if (!number)
        return fail(number.error());
    scanner.skip_spaces();
    const Scanner before_unit = scanner;
    const std::string_view unit = scanner.take_unit();
    const auto kg = kg_in(unit.empty() ? bare : unit);
    if (!kg)
        return fail(before_unit.problem_here(fmt::format("\"{}\" is not a unit of weight", unit),
                                             "use kg, g, lb or oz"));
    return Part{*number * *kg, unit.starts_with("lb")};
}

}  // namespace

Result<Kilograms> parse_mass(std::string_view text) {
    Scanner scanner(text);
    scanner.skip_spaces();
    const auto first = take_part(scanner, "kg");
    if (!first)
        return fail(first.error());
    double kg = first->kg;
    scanner.skip_spaces();
    if (first->pounds && scanner.at_number()) {
        const auto ounces = take_part(scanner, "oz");
        if (!ounces)
            return fail(ounces.error());
        kg += ounces->kg;
        scanner.skip_spaces();
    }
    if (!scanner.at_end())
        return fail(scanner.problem_here("this part is not understood",
                                         "write one weight, such as 1.2 kg or 2 lb 6 oz"));
    if (!std::isfinite(kg) || kg > kHeaviest)
        return fail(Scanner(text).problem_here("that is more than 1000 kg",
                                               "check the number and its unit"));
    return Kilograms{kg};
}

std::string format_mass(Kilograms mass, LengthUnit unit) {
    if (unit == LengthUnit::inch) {
        const long ounces = std::lround(mass.value / kKgPerPound * kOuncesPerPound);
        const long pounds = ounces / 16;
        return pounds == 0 ? fmt::format("{} oz", ounces)
                           : fmt::format("{} lb {} oz", pounds, ounces % 16);
    }
    const long grams = std::lround(mass.value * 1000);
    return grams < 1000 ? fmt::format("{} g", grams) : fmt::format("{:.2f} kg", mass.value);
}

std::string format_force(Newtons force, LengthUnit beside) {
    if (beside == LengthUnit::inch)
        return fmt::format("{:.1f} lbf", mass_with_weight(force).value / kKgPerPound);
    return fmt::format("{:.1f} N", force.value);
}

}  // namespace wallwright::units
