// The pages that a person takes to the wall.
#pragma once

#include "draw/drawing.h"
#include "draw/elevation.h"
#include "mounts/card/card_plan.h"
#include "pages/paper.h"
#include "rules/assess.h"

#include <optional>
#include <string>
#include <vector>

namespace wallwright::pages {

/// In the order in which they come.
enum class SheetPart { elevation, marks, loads, findings, card, mounts };

struct SheetOptions {
    Paper paper = Paper::a4;
    std::string picture_folder;
    std::vector<SheetPart> parts = {};  ///< None: all that there is.
    /// As the caller worked it out; without it there are no sheets for card.
    std::optional<mounts::CardPlan> card = {};
};

/// In order: measured elevation (landscape, to the largest standard scale of ISO 5455 that fits),
/// marks table with a tick box a mark and check measures, load check, findings and cautions; then,
/// where a mount is still to be cut, the card plan and the mounts' cutting sheets. Tables run on
/// over as many pages as they need, their heads repeated; every page has the project's title, its
/// own, a number and a bar of 100 mm and 4 in to check the printer by.
std::vector<draw::PageDrawing> sheets(const wall::Project& project,
                                      const rules::Assessment& assessment,
                                      const SheetOptions& options);

/// The elevation alone on a page of its own size: `draw`. `stage`, where it is one, as in
/// draw::ElevationOptions.
draw::PageDrawing elevation_page(const wall::Project& project, const rules::Assessment& assessment,
                                 const std::string& picture_folder,
                                 std::optional<draw::StageShown> stage = {});

}  // namespace wallwright::pages

template <>
struct wallwright::wall::Names<wallwright::pages::SheetPart> {
    static constexpr std::string_view values[] = {"elevation", "marks", "loads",
                                                  "findings",  "card",  "mounts"};
};
