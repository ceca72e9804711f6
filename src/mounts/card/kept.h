// Blanks that stay where a person put them: which can, and how their sheets are cut about them.
#pragma once

#include "mounts/card/card_plan.h"
#include "mounts/card/cut_about.h"

#include <span>

namespace wallwright::mounts {

/// One sheet with the blanks that are kept on it.
struct KeptSheet {
    std::size_t kind = 0;  ///< Of the task's sheets.
    int number = 1;        ///< Of that kind.
    std::vector<PlacedBlank> placed;
    CutAbout about;
};

struct KeptSheets {
    std::vector<KeptSheet> sheets;   ///< In the order in which they are first kept on.
    std::vector<std::string> notes;  ///< One for each blank that cannot stay.
};

/// Of the lot whose sheets are offered. Of two that are in each other's way the first one stays.
KeptSheets kept_sheets(const wall::Project& project, const CardLot& lot);

/// Why a blank cannot be kept at a place, and what to do about it.
struct NotKept {
    std::string what;
    std::string remedy;
};
/// Nothing where it can, on a sheet of that kind where `others` are kept.
std::optional<NotKept> not_kept(const CardLot& lot, std::size_t kind, const PlacedBlank& wanted,
                                std::span<const PlacedBlank> others);

/// A blank at a place: its size as it lies.
PlacedBlank placed_at(const NestTask& task, std::size_t blank, double left, double top,
                      bool turned);
/// What is inside the margin.
OnSheet inside_margin(const NestSheet& kind);

}  // namespace wallwright::mounts
