#include "draw/dashes.h"

namespace wallwright::draw {

namespace {

constexpr double kDashed[] = {12, 3};
constexpr double kLongDashDotted[] = {24, 3, 0.5, 3};
constexpr double kDotted[] = {0.5, 3};

}  // namespace

std::span<const double> dashes_of(LineType type) {
    switch (type) {
        case LineType::continuous:
            return {};
        case LineType::dashed:
            return kDashed;
        case LineType::long_dash_dotted:
            return kLongDashDotted;
        case LineType::dotted:
            return kDotted;
    }
    return {};
}

}  // namespace wallwright::draw
