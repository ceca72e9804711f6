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

/// In the order in which they come. Those from `templates` on come only when they are asked for.
enum class SheetPart { elevation, marks, loads, findings, list, card, mounts, templates };

/// pieces: each piece's outline at true size with its fixing points, on as many sheets as it takes.
/// points: small papers for the fixing points alone, laid to a corner of the frame. strips: for
/// each row of marks a strip at true size to hold against the wall. group: all of it on one sheet,
/// as large as it is, for a plotter.
enum class TemplateKind { pieces, points, strips, group };

struct SheetOptions {
    Paper paper = Paper::a4;
    std::string picture_folder;
    std::vector<SheetPart> parts = {};  ///< None: all that there is.
    /// As the caller worked it out; without it there are no sheets for card.
    std::optional<mounts::CardPlan> card = {};
    TemplateKind templates = TemplateKind::pieces;
};

/// In order: measured elevation (landscape, to the largest standard scale of ISO 5455 that fits),
/// marks table with a tick box a mark and check measures, load check, findings and cautions, the
/// list of what to buy and to have at hand; then, where a mount is still to be cut, the card plan
/// and the mounts' cutting sheets; last, when asked for, templates at true size. Tables run on over
/// as many pages as they need, their heads repeated; every page has the project's title, its own, a
/// number and a bar of 100 mm and 4 in to check the printer by.
std::vector<draw::PageDrawing> sheets(const wall::Project& project,
                                      const rules::Assessment& assessment,
                                      const SheetOptions& options);

/// One of these pages, and what it belongs to.
struct Sheet {
    SheetPart part = SheetPart::elevation;
    draw::PageDrawing page;
};
/// The same pages.
std::vector<Sheet> sheets_by_part(const wall::Project& project, const rules::Assessment& assessment,
                                  const SheetOptions& options);

/// The elevation alone on a page of its own size: `draw`. `stage`, where it is one, as in
/// draw::ElevationOptions.
draw::PageDrawing elevation_page(const wall::Project& project, const rules::Assessment& assessment,
                                 const std::string& picture_folder,
                                 std::optional<draw::StageShown> stage = {});

}  // namespace wallwright::pages

template <>
struct wallwright::wall::Names<wallwright::pages::SheetPart> {
    static constexpr std::string_view values[] = {"elevation", "marks", "loads",  "findings",
                                                  "list",      "card",  "mounts", "templates"};
};
template <>
struct wallwright::wall::Names<wallwright::pages::TemplateKind> {
    static constexpr std::string_view values[] = {"pieces", "points", "strips", "group"};
};
