#include "pages/sheets.h"

#include "draw/paths.h"
#include "pages/sheet.h"
#include "pages/sheet_card.h"
#include "pages/sheet_elevation.h"
#include "pages/sheet_findings.h"
#include "pages/sheet_hanging_templates.h"
#include "pages/sheet_list.h"
#include "pages/sheet_loads.h"
#include "pages/sheet_marks.h"
#include "pages/sheet_mount.h"

#include <algorithm>
#include <iterator>

namespace wallwright::pages {

namespace {

constexpr SheetPart kAllParts[] = {SheetPart::elevation, SheetPart::marks,    SheetPart::loads,
                                   SheetPart::findings,  SheetPart::list,     SheetPart::card,
                                   SheetPart::mounts,    SheetPart::templates};

bool is_wanted(SheetPart part, const SheetOptions& options) {
    if (options.parts.empty())
        return part != SheetPart::templates;
    return std::ranges::find(options.parts, part) != options.parts.end();
}

std::vector<draw::PageDrawing> sheets_of(SheetPart part, const wall::Project& project,
                                         const rules::Assessment& assessment,
                                         const SheetOptions& options) {
    switch (part) {
        case SheetPart::elevation:
            return elevation_sheets(project, assessment, options);
        case SheetPart::marks:
            return mark_sheets(project, assessment, options);
        case SheetPart::loads:
            return load_sheets(project, assessment, options);
        case SheetPart::findings:
            return finding_sheets(project, assessment, options);
        case SheetPart::mounts:
            return mount_sheets(project, options.paper);
        case SheetPart::list:
            return list_sheets(project, assessment, options);
        case SheetPart::templates:
            return hanging_template_sheets(project, assessment, options);
        case SheetPart::card:
            return options.card ? card_plan_sheets(project, *options.card, options.paper)
                                : std::vector<draw::PageDrawing>{};
    }
    return {};
}

}  // namespace

std::vector<draw::PageDrawing> sheets(const wall::Project& project,
                                      const rules::Assessment& assessment,
                                      const SheetOptions& options) {
    std::vector<draw::PageDrawing> pages;
    for (Sheet& sheet : sheets_by_part(project, assessment, options))
        pages.push_back(std::move(sheet.page));
    return pages;
}

std::vector<Sheet> sheets_by_part(const wall::Project& project, const rules::Assessment& assessment,
                                  const SheetOptions& options) {
    std::vector<draw::PageDrawing> pages;
    std::vector<SheetPart> parts;
    for (const SheetPart part : kAllParts) {
        if (!is_wanted(part, options))
            continue;
        std::vector<draw::PageDrawing> made = sheets_of(part, project, assessment, options);
        std::move(made.begin(), made.end(), std::back_inserter(pages));
        parts.resize(pages.size(), part);
    }
    number_sheets(pages);
    std::vector<Sheet> all;
    for (std::size_t i = 0; i < pages.size(); ++i)
        all.push_back({parts[i], std::move(pages[i])});
    return all;
}

draw::PageDrawing elevation_page(const wall::Project& project, const rules::Assessment& assessment,
                                 const std::string& picture_folder,
                                 std::optional<draw::StageShown> stage) {
    constexpr double kWidth = 360;  // mm of page that the wall may take
    constexpr double kHeight = 260;
    constexpr double kAir = 8;
    const geometry::Size wall = geometry::bounds(project.room.outline).size();
    draw::ElevationOptions options;
    options.scale = std::min(kWidth / wall.width, kHeight / wall.height);
    options.picture_folder = picture_folder;
    options.stage = stage;
    const draw::WallDrawing drawing = draw::elevation(project, assessment, options);
    const geometry::Rect<geometry::Wall>& extent = drawing.extent;
    draw::PageDrawing page = draw::placed_on_page(
        drawing, {{kAir - extent.min.x * options.scale, kAir + extent.max.y * options.scale},
                  options.scale});
    page.extent = page.extent.grown(kAir);
    page.shapes.insert(
        page.shapes.begin(),
        draw::box(page.extent, {draw::Paint{draw::Ink::own, {0xFB, 0xF9, 0xF4}}, std::nullopt}));
    return page;
}

}  // namespace wallwright::pages
