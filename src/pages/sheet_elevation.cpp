#include "pages/sheet_elevation.h"

#include "draw/letters.h"
#include "pages/elevation_style.h"
#include "pages/piece_list.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <utility>

namespace wallwright::pages {

namespace {

using draw::WallDrawing;
using geometry::Page;
using geometry::Wall;
using ToPage = geometry::Transform<Wall, Page>;

constexpr double kBetween = 5;  // mm between the drawing and what is beside it

bool has_waiting(const wall::Project& project) {
    return std::any_of(project.pieces.begin(), project.pieces.end(), [](const wall::Piece& piece) {
        return piece.state == wall::PieceState::waiting;
    });
}

/// The wall alone decides the scale; waiting pieces and key take what it leaves.
class ElevationSheet {
  public:
    explicit ElevationSheet(const ElevationJob& job)
        : job_(job),
          area_(elevation_area(job)),
          scaled_(at_standard_scale(
              [this](double denominator) { return drawn(denominator, false); }, area_)) {
        place();
        column_ = {{to_page_(scaled_.drawing.extent).max.x + kBetween, area_.min.y}, area_.max};
        beside_left_ = area_.max.x;
    }

    [[nodiscard]] double denominator() const { return scaled_.denominator; }
    [[nodiscard]] const WallDrawing& drawing() const { return scaled_.drawing; }

    /// False when they must go on a sheet of their own.
    bool add_waiting() {
        return !has_waiting(job_.project) || add_waiting_beside() || add_waiting_below();
    }

    /// The fullest list that fits at the upper right; nothing where none does, since the load check
    /// lists all pieces.
    void add_key() {
        constexpr double kMost = 100;
        for (const PieceListWidth fullness :
             {PieceListWidth::edges, PieceListWidth::sizes, PieceListWidth::names}) {
            const Table list = piece_list(job_.project, fullness);
            const double width = std::min(column_.width(), kMost);
            if (width < least_width(job_.project, fullness) ||
                height_of(list, width) > column_.height())
                continue;
            const double left = column_.max.x - width;
            add_table(beside_, list, {left, column_.min.y}, width);
            beside_left_ = std::min(beside_left_, left);
            return;
        }
    }

    [[nodiscard]] draw::PageDrawing take() {
        to_page_.origin.x += (beside_left_ - to_page_(scaled_.drawing.extent).max.x) / 2;
        draw::PageDrawing sheet = elevation_sheet(job_, "Measured elevation", scaled_, to_page_);
        sheet.shapes.insert(sheet.shapes.end(), beside_.begin(), beside_.end());
        return sheet;
    }

  private:
    [[nodiscard]] WallDrawing drawn(double denominator, bool waiting) const {
        return draw::elevation(job_.project, job_.assessment,
                               drawing_options(job_, denominator, waiting));
    }

    /// At the left, half way down.
    void place() {
        to_page_ =
            put_at(scaled_, {area_.min.x, area_.centre().y - scaled_.size_on_page().height / 2});
    }

    /// At the right on the wall's own floor line; what is above them is left for the key.
    bool add_waiting_beside() {
        if (column_.width() <= 0)
            return false;
        const Scaled waiting{
            scaled_.denominator,
            draw::waiting_pieces(job_.project, drawing_options(job_, scaled_.denominator, true),
                                 column_.width() * scaled_.denominator)};
        const double floor = geometry::bounds(job_.project.room.outline).min.y;
        ToPage to_page = put_at(waiting, {column_.max.x - waiting.size_on_page().width, 0});
        to_page.origin.y = to_page_(geometry::Point<Wall>{0, floor}).y;
        const Area taken = to_page(waiting.drawing.extent);
        if (taken.min.x < column_.min.x || taken.min.y < column_.min.y ||
            taken.max.y > column_.max.y)
            return false;
        beside_ = draw::placed_on_page(waiting.drawing, to_page).shapes;
        beside_left_ = taken.min.x;
        column_.max.y = taken.min.y - kBetween;
        return true;
    }

    bool add_waiting_below() {
        Scaled with_waiting{scaled_.denominator, drawn(scaled_.denominator, true)};
        if (!with_waiting.fits(area_))
            return false;
        scaled_ = std::move(with_waiting);
        place();
        return true;
    }

    const ElevationJob& job_;
    Area area_;
    Scaled scaled_;
    ToPage to_page_;
    Area column_;    ///< What is free to the right of the drawing.
    Shapes beside_;  ///< What was put there.
    double beside_left_ = 0;
};

/// All waiting pieces, at the wall's scale or the next that fits.
draw::PageDrawing waiting_sheet(const ElevationJob& job, double least_denominator) {
    const Area area = elevation_area(job);
    const auto make = [&](double denominator) {
        return draw::waiting_pieces(job.project, drawing_options(job, denominator, true),
                                    area.width() * denominator);
    };
    const Scaled scaled = at_standard_scale(make, area, least_denominator);
    return elevation_sheet(job, "Waiting on the floor", scaled, centred(scaled, area));
}

/// The numbers of marks that the drawing shows.
std::set<std::string> numbers_in(const WallDrawing& drawing) {
    std::set<std::string> numbers;
    for (const draw::Shape<Wall>& shape : drawing.shapes)
        if (const auto* text = std::get_if<draw::Text<Wall>>(&shape))
            if (text->paint.ink == draw::Ink::mark)
                numbers.insert(text->text);
    return numbers;
}

/// True when a mark of the group has no number among these.
bool wants_detail(const rules::Assessment& assessment, const spacing::Group& group,
                  const std::set<std::string>& numbers) {
    return std::any_of(assessment.marks.marks.begin(), assessment.marks.marks.end(),
                       [&](const hanging::Mark& mark) {
                           return std::find(group.pieces.begin(), group.pieces.end(), mark.piece) !=
                                      group.pieces.end() &&
                                  numbers.count(std::to_string(mark.number)) == 0;
                       });
}

std::string detail_name(const wall::Project& project, const spacing::Group& group) {
    const std::string first = draw::letter_of(project, group.pieces.front());
    return group.pieces.size() == 1 ? "Detail of " + first
                                    : fmt::format("Detail of {} to {}", first,
                                                  draw::letter_of(project, group.pieces.back()));
}

draw::PageDrawing detail_sheet(const ElevationJob& job, const spacing::Group& group) {
    const Area area = elevation_area(job);
    const auto make = [&](double denominator) {
        return draw::group_detail(job.project, job.assessment,
                                  drawing_options(job, denominator, false), group);
    };
    const Scaled scaled = at_standard_scale(make, area);
    return elevation_sheet(job, detail_name(job.project, group), scaled, centred(scaled, area));
}

}  // namespace

std::vector<draw::PageDrawing> elevation_sheets(const wall::Project& project,
                                                const rules::Assessment& assessment,
                                                const SheetOptions& options) {
    const ElevationJob job{project, assessment, options};
    ElevationSheet elevation(job);
    const bool waiting_shown = elevation.add_waiting();
    elevation.add_key();
    std::vector<draw::PageDrawing> sheets{elevation.take()};
    if (!waiting_shown)
        sheets.push_back(waiting_sheet(job, elevation.denominator()));
    const std::set<std::string> numbers = numbers_in(elevation.drawing());
    for (const spacing::Group& group : assessment.groups)
        if (wants_detail(assessment, group, numbers))
            sheets.push_back(detail_sheet(job, group));
    return sheets;
}

}  // namespace wallwright::pages
