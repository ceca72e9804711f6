// Small walls for tests, with one line for each thing that is put on, before or into the wall.
#pragma once

#include "wall/project.h"

#include <string>

namespace wallwright::scenes {

/// A bare painted wall in a living room, `width` by `height` mm, with nothing on it.
wall::Project wall_of(double width, double height);

/// A bare wall under a roof: `left` mm high at its left end and `right` mm at its right, the
/// ceiling straight between.
wall::Project attic_of(double width, double left, double right);

/// A planned piece with its lower left corner at `at`, in a frame of its own that has the same id
/// and all else as a new frame has it. Its title is the id with a capital. The reference is good
/// until the next piece is added.
wall::Piece& add_piece(wall::Project& project, const std::string& id,
                       geometry::Point<geometry::Wall> at, geometry::Size outside);

/// As add_piece, but on the wall already.
wall::Piece& add_hung(wall::Project& project, const std::string& id,
                      geometry::Point<geometry::Wall> at, geometry::Size outside);

/// As add_piece, but standing on the floor without a place.
wall::Piece& add_waiting(wall::Project& project, const std::string& id, geometry::Size outside);

/// The frame that add_piece made for the piece of this id.
wall::Frame& frame_named(wall::Project& project, const std::string& id);

/// Its id is its type's name, with a number from the second on: "sofa", "sofa2".
wall::Furniture& add_furniture(wall::Project& project, wall::FurnitureType type,
                               geometry::Rect<geometry::Wall> place);
wall::Fixture& add_fixture(wall::Project& project, wall::FixtureType type,
                           geometry::Rect<geometry::Wall> place);

/// Enough materials and fixings to hang by: glass, acrylic and the parts of a new frame; strips
/// rated 0.4, 1.3 and 1.8 kg a pair, picture hooks for 2.5 and 5 kg, a screw for 15 kg.
wall::Catalogue small_catalogue();

}  // namespace wallwright::scenes
