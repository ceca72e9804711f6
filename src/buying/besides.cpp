#include "buying/parts.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::buying {

namespace {

bool on_strips(const hanging::Hanging& one) {
    return one.fixings.front().kind == wall::FixingKind::strip_pair;
}

/// DIY practice, and what packets say; common practice, no source.
void add_cleaner(Items& items, std::size_t pieces, bool later) {
    if (pieces == 0)
        return;
    items.push_back({Kind::other, "Isopropyl alcohol, 70 %", "1 small bottle",
                     "wipes wall and frame where strips go; household cleaner leaves a film",
                     std::nullopt, later});
}

/// A framer's note: 3 mm (1/8 in) of air behind a frame keeps damp off it.
void add_bumpers(Items& items, std::size_t pieces, bool later, units::LengthUnit unit) {
    if (pieces == 0)
        return;
    items.push_back({Kind::other,
                     fmt::format("Bumpers of felt or rubber, {} thick or more",
                                 unit == units::LengthUnit::inch ? "1/8 in" : "3 mm"),
                     fmt::format("{}", 2 * pieces),
                     pieces == 1
                         ? "for the two lower corners of the frame on hooks: air behind it, "
                           "and it stays straight"
                         : fmt::format("for the two lower corners of {} frames on hooks: "
                                       "air behind them, and they stay straight",
                                       pieces),
                     std::nullopt, later});
}

/// Earthquake Country Alliance, Secure your hanging objects: putty at the corners.
void add_putty(Items& items, const Job& job) {
    const auto on_wall = static_cast<std::size_t>(
        std::ranges::count_if(job.project.pieces, [](const wall::Piece& piece) {
            return piece.state != wall::PieceState::waiting && !piece.wished;
        }));
    if (!job.project.room.shakes || on_wall == 0)
        return;
    items.push_back({Kind::other, "Putty for picture corners", "1 pack",
                     on_wall == 1 ? "a ball behind each corner of the piece: the ground shakes here"
                                  : fmt::format("a ball behind each corner of {} pieces: the "
                                                "ground shakes here",
                                                on_wall)});
}

}  // namespace

Items besides(const Job& job) {
    Items items;
    bool has_cleaner = false;
    for (const bool later : {false, true}) {
        const std::vector<hanging::Hanging> all = hangings_to_come(job, later);
        const auto strips = static_cast<std::size_t>(std::ranges::count_if(all, on_strips));
        if (!has_cleaner)
            add_cleaner(items, strips, later);
        has_cleaner = has_cleaner || strips > 0;
        add_bumpers(items, all.size() - strips, later, job.project.unit);
    }
    add_putty(items, job);
    return items;
}

}  // namespace wallwright::buying
