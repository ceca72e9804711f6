#include "desk/bench/match_view.h"

namespace wallwright::desk {

void refresh(MatchView& view, const Session& session, geometry::Size paper) {
    if (view.version == session.version() && view.match == view.choice.version() &&
        view.paper == paper)
        return;
    view.version = session.version();
    view.match = view.choice.version();
    view.paper = paper;
    view.layout = lay_out_match(session.project(), view.choice.found(), paper);
    view.links = links_of(session.project(), view.choice.found(), view.layout);
    view.hand.keep_only_in(session.project());
}

void give_up(MatchView& view) {
    view.choice.clear();
    view.hand.cancel();
    view.hand.leave();
    view.hand.chosen.reset();
    view.version = 0;
}

}  // namespace wallwright::desk
