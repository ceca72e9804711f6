#include "desk/wall_picture.h"

#include "arrange/grow.h"
#include "draw/elevation.h"

namespace wallwright::desk {

namespace {

draw::ElevationOptions options_for(const Session& session, Step step, double scale,
                                   const HangLayers& layers) {
    const bool hangs = step == Step::hang;
    draw::ElevationOptions options;
    options.scale = scale;
    options.picture_folder = session.picture_folder();
    options.dimensions = step != Step::pieces;
    options.marks = hangs && layers.marks;
    options.fixings = hangs && layers.fixings;
    options.loads = hangs && layers.loads;
    options.zones = step == Step::room || (hangs && layers.zones);
    options.studs = step == Step::room || (hangs && layers.studs);
    options.letters = step == Step::pieces || hangs;
    return options;
}

}  // namespace

bool refresh(WallPicture& picture, const Session& session, Step step, double scale,
             const HangLayers& layers) {
    const bool other_layers = step == Step::hang && picture.layers != layers;
    if (picture.version == session.version() && picture.scale == scale && picture.step == step &&
        !other_layers)
        return false;
    const draw::ElevationOptions options = options_for(session, step, scale, layers);
    picture.drawing = draw::elevation(session.project(), session.assessment(), options);
    picture.waiting.clear();
    for (const auto& [piece, place] :
         draw::waiting_places(session.project(), session.assessment(), options))
        picture.waiting.push_back({piece, place});
    picture.version = session.version();
    picture.scale = scale;
    picture.step = step;
    picture.layers = layers;
    return true;
}

geometry::Rect<geometry::Wall> extent_of(const WallPicture& picture, const Session& session,
                                         const LayoutChoice& layouts) {
    geometry::Rect<geometry::Wall> extent = picture.drawing.extent;
    if (picture.step != Step::arrange)
        return extent;
    const draw::ElevationOptions options =
        options_for(session, picture.step, picture.scale, picture.layers);
    const auto take = [&](const wall::Project& other) {
        const rules::Assessment assessment = rules::assess(other, session.catalogue());
        extent = hull(extent, draw::elevation(other, assessment, options).extent);
    };
    if (arrange::last_stage(session.kept()) > 0)
        take(arrange::at_stage(session.kept(), 0));
    if (!layouts.is_open() || layouts.is_stale())
        return extent;
    for (const RankedLayout& layout : layouts.layouts())
        if (const auto laid_out =
                arrange::with_layout(session.kept(), layouts.task(), layout.candidate.layout))
            take(*laid_out);
    return extent;
}

}  // namespace wallwright::desk
