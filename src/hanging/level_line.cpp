// At which height to draw a level line.
#include "hanging/mark_tape.h"
#include "hanging/marks.h"
#include "wall/this_side.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace wallwright::hanging {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Wall;

/// Between these a person draws a line standing, mm above the floor (our choice, about from the
/// knuckles to the top of the head of a small adult).
constexpr double kLowest = 700;
constexpr double kHighest = 1700;
constexpr double kMetricStep = 50;
constexpr double kInchStep = 2 * units::kMmPerInch;
constexpr double kLevelNeeds = 20;  ///< mm of wall above and below the line.
constexpr double kEvery = 25;  ///< mm between the places at which the wall is asked for its height.

/// What speaks against a height; the first that differs decides.
struct Against {
    int out_of_reach = 0;  ///< Marks to which no tape runs plumb from the line, or that lie where
                           ///< the line is too high or too low for a person.
    double off_wall = 0;   ///< mm of the wall's width at which the line is not on it.
    double blocked = 0;    ///< mm of it that something hangs or stands before.
    double away = 0;       ///< Mean distance of the marks, mm.

    [[nodiscard]] auto rank() const { return std::tuple(out_of_reach, off_wall, blocked, away); }
};

class Judge {
  public:
    Judge(const wall::Project& project, const std::vector<Mark>& marks)
        : project_(project), bounds_(geometry::bounds(project.room.outline)) {
        for (const Mark& mark : marks)
            marks_.push_back(mark.at);
        for (const wall::Furniture& furniture : project.room.furniture)
            things_.push_back(furniture.place);
        for (const wall::Fixture* fixture : wall::fixtures_here(project.room))
            things_.push_back(fixture->place);
        for (const wall::Piece& piece : project.pieces)
            if (piece.state == wall::PieceState::hung)
                if (const auto place = place_of(project, piece))
                    things_.push_back(*place);
    }

    [[nodiscard]] Against against(double height) const {
        Against found;
        for (const Point<Wall> mark : marks_) {
            const auto here = vertical_span(project_.room.outline, mark.x);
            const double above = here ? height - here->low : -1;
            const Rect<Wall> way{{mark.x, std::min(mark.y, height)},
                                 {mark.x, std::max(mark.y, height)}};
            if (above < kLowest || above > kHighest ||
                !geometry::contains(project_.room.outline, way))
                ++found.out_of_reach;
            found.away += std::abs(mark.y - height) / static_cast<double>(marks_.size());
        }
        for (double x = bounds_.left() + kEvery / 2; x < bounds_.right(); x += kEvery) {
            const auto here = vertical_span(project_.room.outline, x);
            if (!here || height < here->low + kLevelNeeds || height > here->high - kLevelNeeds)
                found.off_wall += kEvery;
        }
        for (const Rect<Wall>& thing : things_)
            if (thing.bottom() < height && height < thing.top())
                found.blocked += thing.width();
        return found;
    }

  private:
    const wall::Project& project_;
    Rect<Wall> bounds_;
    std::vector<Point<Wall>> marks_;
    std::vector<Rect<Wall>> things_;
};

}  // namespace

double proposed_level_line(const wall::Project& project, const std::vector<Hanging>& hangings) {
    const MarksTable table = marks_of(project, hangings);
    const Judge judge(project, table.marks);
    const double step = project.unit == units::LengthUnit::inch ? kInchStep : kMetricStep;
    const Rect<Wall> bounds = geometry::bounds(project.room.outline);
    const double wanted = project.style.centre_height;
    double best = step * std::round(wanted / step);
    auto best_rank = std::tuple(judge.against(best).rank(), 0.0);
    for (double height = step * std::ceil(bounds.bottom() / step); height < bounds.top();
         height += step) {
        const auto rank = std::tuple(judge.against(height).rank(), std::abs(height - wanted));
        if (rank < best_rank) {
            best = height;
            best_rank = rank;
        }
    }
    return best;
}

}  // namespace wallwright::hanging
