// The wall as the canvas shows it, kept until something changes.
#pragma once

#include "desk/hang_view.h"
#include "desk/hit.h"
#include "desk/layout_choice.h"
#include "desk/session.h"
#include "draw/drawing.h"

#include <cstdint>
#include <vector>

namespace wallwright::desk {

struct WallPicture {
    draw::WallDrawing drawing;
    std::vector<Waiting> waiting;  ///< Where the drawing has them stand.
    std::uint64_t version = 0;     ///< Of the session, 0 before the first.
    double scale = 0;              ///< mm on paper for a mm of wall.
    Step step = Step::room;
    HangLayers layers;
};

/// Draws anew when the session's version, the scale, the step or, in the step hang, a layer is
/// another. What is shown depends on the step: the room's own measures, studs and cable zones; the
/// pieces with their letters; gaps and the centre line; the layers. True when it was drawn.
bool refresh(WallPicture& picture, const Session& session, Step step, double scale,
             const HangLayers& layers = {});

/// What a viewer should see whole: the drawing, and in the step arrange all that may take its place
/// there: where the wall grows in stages, today's with what waits on its floor then, and each of
/// the layouts to choose from.
geometry::Rect<geometry::Wall> extent_of(const WallPicture& picture, const Session& session,
                                         const LayoutChoice& layouts);

}  // namespace wallwright::desk
