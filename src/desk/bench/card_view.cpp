#include "desk/bench/card_view.h"

namespace wallwright::desk {

void lay_out(CardView& view, geometry::Size paper) {
    if (view.plan == view.choice.plan_number() && view.paper == paper)
        return;
    view.plan = view.choice.plan_number();
    view.paper = paper;
    view.scale = 0;
    view.layout = {};
    view.blanks.clear();
    view.shapes.clear();
    if (view.choice.plan() == nullptr)
        return;
    view.layout = lay_out_card(*view.choice.plan(), paper);
    view.blanks = blanks_of(*view.choice.plan(), view.layout);
}

void draw(CardView& view, double scale) {
    if (view.scale == scale)
        return;
    view.scale = scale;
    if (view.choice.plan() != nullptr)
        view.shapes = card_board(*view.choice.plan(), view.layout, view.choice.plan()->unit, scale);
}

void give_up(CardView& view) {
    view.choice.clear();
    view.hand.cancel();
    view.hand.leave();
    view.hand.chosen.reset();
    view.open_sheet.reset();
    view.shapes.clear();
}

}  // namespace wallwright::desk
