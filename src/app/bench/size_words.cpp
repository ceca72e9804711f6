#include "app/bench/size_words.h"

#include <fmt/format.h>

namespace wallwright::app {

std::string size_words(geometry::Size size, units::LengthUnit unit) {
    return fmt::format("{} × {}", units::format_number(size.width, unit),
                       units::format_length(size.height, unit));
}

}  // namespace wallwright::app
