#include "buying/parts.h"
#include "hanging/bearing.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>

namespace wallwright::buying {

namespace {

using units::Kilograms;

/// mm of cord that a knot and its end wound about the cord take; common practice, no source.
constexpr double kKnot = 150;

/// mm for one piece, its knots with it; 0 where nothing hangs by a cord.
double cord_of(const Job& job, const hanging::Hanging& hanging, const wall::Piece& piece) {
    double length = 0;
    if (hanging.cord) {
        const wall::Hanger whole =
            hanging::complete(piece.hanger, wall::outside_size(job.project, piece));
        length += whole.cord_length.value_or(0) + 2 * kKnot;
    }
    for (const hanging::Fixing& fixing : hanging.fixings)
        if (fixing.kind == wall::FixingKind::rail_hook)
            length += fixing.cord + 2 * kKnot;
    return length;
}

/// As a packet would say it, never less: whole kilograms, or whole pounds beside inches.
std::string strength_words(Kilograms needed, units::LengthUnit unit) {
    constexpr double kRounding = 1e-6;
    if (unit == units::LengthUnit::inch)
        return fmt::format("{:.0f} lb", std::ceil(needed.value / units::kKgPerPound - kRounding));
    return fmt::format("{:.0f} kg", std::ceil(needed.value - kRounding));
}

std::optional<Item> cord_item(const Job& job, bool later) {
    double length = 0;
    Kilograms strength;
    std::string strongest;
    std::vector<std::string> titles;
    for (const hanging::Hanging& hanging : hangings_to_come(job, later)) {
        const wall::Piece& piece = *wall::find(job.project, hanging.piece);
        const double one = cord_of(job, hanging, piece);
        if (one <= 0)
            continue;
        length += one;
        titles.push_back(wall::title_of(piece));
        const Kilograms needed = hanging.cord_breaking_needed.value_or(
            job.project.style.cord_margin * hanging.mass.high);
        if (needed > strength) {
            strength = needed;
            strongest = titles.back();
        }
    }
    if (titles.empty())
        return std::nullopt;
    constexpr std::size_t kNamed = 3;
    const OffTheRoll roll = off_the_roll(length, job.project.unit);
    Item item{Kind::cord,
              fmt::format("Picture cord or wire that breaks at no less than {}",
                          strength_words(strength, job.project.unit)),
              roll.amount,
              fmt::format(
                  "for {}, with {} for each knot{}; not for a frame that has such a cord",
                  wall::listed(titles, kNamed), units::format_length(kKnot, job.project.unit),
                  titles.size() > 1 ? fmt::format("; {} asks for that strength", strongest) : "")};
    if (job.project.cord_price.value_or(0) > 0)
        item.price = roll.metres * *job.project.cord_price;
    item.later = later;
    return item;
}

}  // namespace

Items cord_to_buy(const Job& job) {
    Items items;
    for (const bool later : {false, true})
        if (std::optional<Item> item = cord_item(job, later))
            items.push_back(std::move(*item));
    return items;
}

}  // namespace wallwright::buying
