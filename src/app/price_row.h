// A row for a sum of the person's own money.
#pragma once

#include "app/ui.h"

#include <optional>
#include <string>

namespace wallwright::app {

struct OptionalPrice {
    std::optional<double> price;
};

/// To two decimals, with a point or a comma; an empty one is shown as `empty`, quietly.
std::optional<OptionalPrice> price_row(Ui& ui, const char* name, const char* label,
                                       std::optional<double> price, const std::string& why,
                                       const std::string& empty);

/// "12.50"
std::string price_text(double price);

}  // namespace wallwright::app
