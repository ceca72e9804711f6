// How far a point lies from the project's datum, and how far off a mark there may be.
#pragma once

#include "wall/project.h"

namespace wallwright::hanging {

/// A view of the project, which outlives it. Where the datum is a piece without a place, it
/// measures from the floor and the corner.
class MarkTape {
  public:
    explicit MarkTape(const wall::Project& project) : MarkTape(project, project.tape) {}
    /// With a tape of another class.
    MarkTape(const wall::Project& project, wall::TapeClass tape);

    /// Exact, in mm, with the signs of Mark::across and Mark::up.
    [[nodiscard]] double across(geometry::Point<geometry::Wall> at) const;
    [[nodiscard]] double up(geometry::Point<geometry::Wall> at) const;

    /// +1 where the figure grows to the right, or upward; else -1.
    [[nodiscard]] double across_sign() const;
    [[nodiscard]] double up_sign() const;

    /// +- mm of a mark in each direction. Upright it has tape and pencil, and in quadrature what
    /// the level leaves open on the way from where its line began.
    [[nodiscard]] double across_error(geometry::Point<geometry::Wall> at) const;
    [[nodiscard]] double up_error(geometry::Point<geometry::Wall> at) const;
    /// The same of how far two points of different marks are apart upright: what the level adds
    /// between them, not from where its line began.
    [[nodiscard]] double upright_between(geometry::Point<geometry::Wall> a,
                                         geometry::Point<geometry::Wall> b) const;

    /// Whether a level line is drawn to measure from: one that is chosen, one along the top of a
    /// piece, or one that a floor or a ceiling was measured to at both ends.
    [[nodiscard]] bool has_level_line() const;

    /// mm that the ruler shows, to which marks are rounded.
    [[nodiscard]] double step() const;

  private:
    [[nodiscard]] geometry::Span wall_at(double x) const;
    [[nodiscard]] double share_of_width(double x) const;
    [[nodiscard]] double slope_error(double x) const;
    [[nodiscard]] double level_run(double x) const;

    const wall::Project& project_;
    wall::TapeClass tape_;
    geometry::Rect<geometry::Wall> bounds_;
    std::optional<geometry::Rect<geometry::Wall>> piece_;
    wall::DatumHeight height_;
};

}  // namespace wallwright::hanging
