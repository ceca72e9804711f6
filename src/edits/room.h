// Edits of the room: outline, furniture, fixtures.
#pragma once

#include "base/problem.h"
#include "wall/project.h"

#include <cstddef>
#include <functional>

namespace wallwright::edits {

/// Changes what is said of the whole project by hand: room, style, datum, tape, unit, title. The
/// result must be sound.
Result<wall::Project> change_project(wall::Project project,
                                     const std::function<void(wall::Project&)>& change);

Result<wall::Project> change_furniture(wall::Project project, const wall::FurnitureId& id,
                                       const std::function<void(wall::Furniture&)>& change);
Result<wall::Project> change_fixture(wall::Project project, const wall::FixtureId& id,
                                     const std::function<void(wall::Fixture&)>& change);
/// Their ids are made from their types and put into `made`.
Result<wall::Project> add_furniture(wall::Project project, wall::Furniture furniture,
                                    wall::FurnitureId& made);
Result<wall::Project> add_fixture(wall::Project project, wall::Fixture fixture,
                                  wall::FixtureId& made);
/// With the wishes about it, and the target where it is that.
Result<wall::Project> remove(wall::Project project, const wall::FurnitureId& id);
Result<wall::Project> remove(wall::Project project, const wall::FixtureId& id);

/// As large as such a thing usually is at home (common practice, no source), mm.
wall::Size usual_size(wall::FurnitureType type);
wall::Size usual_size(wall::FixtureType type);
/// mm above the floor at which it usually begins: a switch at 1050, a socket at 300 (common
/// practice, no source).
double usual_height(wall::FixtureType type);

/// Corners by index into the outline. An outline that would cross itself is a Problem.
Result<wall::Project> move_corner(wall::Project project, std::size_t corner,
                                  geometry::Point<geometry::Wall> to);
/// A corner in the middle of the side that begins at corner `side`.
Result<wall::Project> split_side(wall::Project project, std::size_t side);
/// A corner in the middle of the longest side, of sides as long in that of the highest, since a
/// ceiling slopes more often than a floor.
Result<wall::Project> add_corner(wall::Project project);
Result<wall::Project> remove_corner(wall::Project project, std::size_t corner);
/// A flat wall of that size instead of the outline.
Result<wall::Project> set_wall_size(wall::Project project, wall::Size size);

}  // namespace wallwright::edits
