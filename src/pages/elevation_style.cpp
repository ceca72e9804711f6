#include "pages/elevation_style.h"

#include "hanging/datum_label.h"
#include "pages/legend.h"
#include "pages/stop_notes.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::pages {

namespace {

constexpr double kStopHeight = 6;  // mm

SheetStyle bare_style(const SheetOptions& options) {
    SheetStyle style;
    style.paper = options.paper;
    style.landscape = true;
    return style;
}

}  // namespace

SheetStyle elevation_style(const ElevationJob& job, const std::string& drawing_name,
                           double denominator) {
    const auto& pieces = job.project.pieces;
    const auto count = [&pieces](wall::PieceState state) {
        return std::count_if(pieces.begin(), pieces.end(),
                             [state](const wall::Piece& one) { return one.state == state; });
    };
    SheetStyle style = bare_style(job.options);
    style.project_title = job.project.title;
    style.name = drawing_name;
    style.fields = {
        {"drawing", drawing_name},
        {"scale", fmt::format("1:{}", denominator)},
        {"lengths in", std::string(units::name_of(job.project.unit))},
        {"marks from", hanging::datum_label(job.project)},
        {"hung, planned, waiting",
         fmt::format("{}, {}, {}", count(wall::PieceState::hung), count(wall::PieceState::planned),
                     count(wall::PieceState::waiting))}};
    return style;
}

draw::ElevationOptions drawing_options(const ElevationJob& job, double denominator, bool waiting) {
    draw::ElevationOptions options;
    options.scale = 1 / denominator;
    options.waiting = waiting;
    options.picture_folder = job.options.picture_folder;
    return options;
}

Area elevation_area(const ElevationJob& job) {
    Area area = content_of(bare_style(job.options));
    area.max.y -= kLegendHeight;
    if (!short_stop_words(job.project, job.assessment).empty())
        area.min.y += kStopHeight;
    return area;
}

draw::PageDrawing elevation_sheet(
    const ElevationJob& job, const std::string& drawing_name, const Scaled& scaled,
    const geometry::Transform<geometry::Wall, geometry::Page>& to_page) {
    draw::PageDrawing sheet = blank_sheet(elevation_style(job, drawing_name, scaled.denominator));
    const draw::PageDrawing placed = draw::placed_on_page(scaled.drawing, to_page);
    sheet.shapes.insert(sheet.shapes.end(), placed.shapes.begin(), placed.shapes.end());
    const Area area = elevation_area(job);
    if (const std::string stop = short_stop_words(job.project, job.assessment); !stop.empty())
        add_stop_line(sheet.shapes, {area.min.x, area.min.y - kStopHeight + 4}, stop, {2.5, true},
                      area.width());
    add_legend(sheet.shapes, {area.min.x, area.max.y + kLegendHeight - 1}, area.width(),
               {std::ranges::any_of(job.project.pieces, &wall::Piece::wished),
                job.project.room.studs.has_value()});
    return sheet;
}

}  // namespace wallwright::pages
