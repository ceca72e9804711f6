#include "hanging/mark_tape.h"

#include "hanging/tape.h"

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

using geometry::Point;
using geometry::Span;
using geometry::Wall;
using wall::DatumHeight;
using wall::DatumSide;

namespace {

constexpr double kMillimetre = 1;
constexpr double kFinest = 0.1;  ///< mm; no ruler shows less.
constexpr double kSixteenth = units::kMmPerInch / 16;

}  // namespace

MarkTape::MarkTape(const wall::Project& project, wall::TapeClass tape)
    : project_(project),
      tape_(tape),
      bounds_(geometry::bounds(project.room.outline)),
      piece_(datum_place(project)),
      height_(project.datum.height == DatumHeight::piece && !piece_ ? DatumHeight::floor
                                                                    : project.datum.height) {}

double MarkTape::across_sign() const {
    const bool left = project_.datum.side == DatumSide::left;
    return left != piece_.has_value() ? 1 : -1;
}

double MarkTape::up_sign() const {
    return height_ == DatumHeight::ceiling ? -1 : 1;
}

double MarkTape::across(Point<Wall> at) const {
    const geometry::Rect<Wall>& edges = piece_ ? *piece_ : bounds_;
    const bool left = project_.datum.side == DatumSide::left;
    return across_sign() * (at.x - (left ? edges.left() : edges.right()));
}

Span MarkTape::wall_at(double x) const {
    return vertical_span(project_.room.outline, x).value_or(Span{bounds_.bottom(), bounds_.top()});
}

double MarkTape::share_of_width(double x) const {
    return (x - bounds_.left()) / bounds_.width();
}

double MarkTape::up(Point<Wall> at) const {
    const wall::Datum& datum = project_.datum;
    switch (height_) {
        case DatumHeight::ceiling: {
            const double rise = datum.ceiling ? datum.ceiling->right - datum.ceiling->left : 0;
            return wall_at(at.x).high + rise * share_of_width(at.x) - at.y;
        }
        case DatumHeight::level_line:
            return at.y - datum.level_line;
        case DatumHeight::piece:
            return at.y - piece_->top();
        case DatumHeight::floor:
            break;
    }
    const double rise = datum.floor ? datum.floor->left - datum.floor->right : 0;
    return at.y - wall_at(at.x).low - rise * share_of_width(at.x);
}

bool MarkTape::has_level_line() const {
    return height_ == DatumHeight::level_line || height_ == DatumHeight::piece ||
           slope_error(bounds_.right()) > 0;
}

/// What measuring its two ends leaves open of a floor's or a ceiling's slope.
double MarkTape::slope_error(double x) const {
    const wall::Datum& datum = project_.datum;
    const auto& ends = height_ == DatumHeight::floor     ? datum.floor
                       : height_ == DatumHeight::ceiling ? datum.ceiling
                                                         : std::optional<wall::EndHeights>{};
    if (!ends)
        return 0;
    return share_of_width(x) *
           std::hypot(mark_error(tape_, ends->left), mark_error(tape_, ends->right));
}

/// mm along the level line from where it began: at the datum's side, or at the wall's left end,
/// whose floor is the true one.
double MarkTape::level_run(double x) const {
    if (!has_level_line())
        return 0;
    const bool begins_at_side = height_ == DatumHeight::level_line || height_ == DatumHeight::piece;
    return begins_at_side ? across({x, 0}) : x - bounds_.left();
}

double MarkTape::across_error(Point<Wall> at) const {
    return mark_error(tape_, across(at));
}

double MarkTape::up_error(Point<Wall> at) const {
    return std::hypot(mark_error(tape_, up(at)), level_error(project_.style, level_run(at.x)),
                      slope_error(at.x));
}

double MarkTape::upright_between(Point<Wall> a, Point<Wall> b) const {
    const double tapes = std::hypot(mark_error(tape_, up(a)), mark_error(tape_, up(b)));
    return std::hypot(tapes, level_error(project_.style, level_run(a.x) - level_run(b.x)),
                      slope_error(a.x) - slope_error(b.x));
}

double MarkTape::step() const {
    if (project_.style.ruler_step > 0)
        return std::max(project_.style.ruler_step, kFinest);
    return project_.unit == units::LengthUnit::inch ? kSixteenth : kMillimetre;
}

}  // namespace wallwright::hanging
