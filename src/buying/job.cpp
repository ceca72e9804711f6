#include "buying/parts.h"

#include <fmt/format.h>

#include <cmath>

namespace wallwright::buying {

std::vector<hanging::Hanging> hangings_to_come(const Job& job, bool later) {
    std::vector<hanging::Hanging> to_come;
    for (const hanging::Hanging& hanging : job.assessment.hangings) {
        const wall::Piece* piece = wall::find(job.project, hanging.piece);
        if (piece != nullptr && piece->state == wall::PieceState::planned &&
            !hanging.fixings.empty() && hanging::is_later(job.project, *piece) == later)
            to_come.push_back(hanging);
    }
    return to_come;
}

OffTheRoll off_the_roll(double mm, units::LengthUnit unit) {
    constexpr double kMetre = 1000;
    constexpr double kFoot = 12 * units::kMmPerInch;
    const bool feet = unit == units::LengthUnit::inch;
    const double whole = std::ceil(mm / (feet ? kFoot : kMetre) - geometry::kLengthEps);
    return {fmt::format("{:.0f} {}", whole, feet ? "ft" : "m"),
            whole * (feet ? kFoot : kMetre) / kMetre};
}

std::string counted(std::size_t count, const std::string& one, const std::string& several) {
    return fmt::format("{} {}", count, count == 1 ? one : several);
}

std::string size_words(geometry::Size size, units::LengthUnit unit) {
    return fmt::format("{} × {}", units::format_number(size.width, unit),
                       units::format_length(size.height, unit));
}

}  // namespace wallwright::buying
