// A mount with its prints as it looks from the front.
#pragma once

#include "draw/framed.h"
#include "mounts/design/mount_design.h"

namespace wallwright::draw {

/// From a blank's own coordinates, y down from its top edge, to where the blank lies.
geometry::Rect<geometry::Wall> on_blank(const geometry::Rect<geometry::Wall>& blank,
                                        const geometry::Rect<mounts::Front>& place);

/// The picture of a print, or its colour where that is not shown, over all of the place.
void add_picture(Shapes& shapes, const geometry::Rect<geometry::Wall>& place,
                 const wall::Print& print, const Pictures& pictures);

/// The card of the top layer over all of `sight`; through its windows the white core of a bevel,
/// the layers behind it as rings, and the prints as far as the lowest layer leaves them; or prints
/// that float, each with its shadow on the card. Nothing reaches out of `sight`.
void add_mounted(Shapes& shapes, const wall::Project& project, const mounts::MountDesign& design,
                 const geometry::Rect<geometry::Wall>& blank,
                 const geometry::Rect<geometry::Wall>& sight, const Pictures& pictures);

}  // namespace wallwright::draw
