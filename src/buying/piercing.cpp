#include "buying/tools.h"
#include "hanging/capacity.h"

#include <algorithm>

namespace wallwright::buying {

namespace {

using wall::Core;
using wall::FixingKind;

bool any(const Work& work, bool (*is_so)(FixingKind)) {
    return std::ranges::any_of(work.hangings, [is_so](const hanging::Hanging& hanging) {
        return is_so(hanging.fixings.front().kind);
    });
}

bool is_nail(FixingKind kind) {
    return kind == FixingKind::nail_hook;
}
bool is_screw(FixingKind kind) {
    return kind == FixingKind::screw;
}

/// What the trade drills these walls with; common practice, no source.
Tool drill_for(const wall::Room& room) {
    if (room.surface == wall::Surface::tile)
        return {"Drill with a tile bit as wide as the plug",
                "through the tile slowly and without hammering, on masking tape so that the bit "
                "does not wander"};
    switch (hanging::core_behind(room)) {
        case Core::masonry:
        case Core::concrete:
            return {"Hammer drill with a masonry bit as wide as the plug",
                    "hold it with both hands; a bit that meets metal or goes in with no dust: "
                    "stop"};
        case Core::plasterboard:
        case Core::lath:
            return {"Drill with the bits that the packets name, and a 3 mm bit",
                    "without hammering; through the board and not on into what is behind it"};
        case Core::wood:
            return {"Drill with a 3 mm wood bit", "a hole first, so that the wood does not split"};
        case Core::unknown:
            break;
    }
    return {"Drill, with bits for plaster and for masonry",
            "nobody has said what this wall is made of: try one hole where a frame will cover it"};
}

}  // namespace

void add_piercing(Tools& tools, const Work& work) {
    if (!any(work, wall::pierces))
        return;
    tools.push_back({"Detector for cables, pipes and metal",
                     "at every place that is pierced: zones say where cables should be, not where "
                     "they are. Try it on a cable that you know first"});
    if (any(work, is_nail))
        tools.push_back({"Light hammer", "taps the nails in at the slant that their hook has"});
    if (any(work, is_screw)) {
        tools.push_back(drill_for(work.project.room));
        tools.push_back({"Screwdriver that fits the heads", "a drill overwinds plugs"});
        tools.push_back({"Dust mask and vacuum cleaner",
                         "for drilling; an old coating is tested for asbestos and lead first"});
    }
    tools.push_back({"Safety goggles", "chips and nails fly, at eye height"});
}

}  // namespace wallwright::buying
