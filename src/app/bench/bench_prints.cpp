#include "app/bench/board_parts.h"
#include "app/look_around.h"
#include "desk/bench/match_board.h"

#include <fmt/format.h>

namespace wallwright::app {

namespace {

using desk::BoardThing;
using desk::MatchView;
using geometry::Wall;

void keep_in_sight(const Ui& ui, State& state, const ScreenArea& area) {
    if (state.prints.hand.is_busy())
        return;
    keep_fitted(ui, state.bench.look(), area,
                {.wall = state.session.version(), .found = state.prints.choice.version()},
                [&](double) { return state.prints.layout.extent; });
}

void point(State& state, const BoardMouse& mouse) {
    MatchView& view = state.prints;
    const desk::View& look = state.bench.look().view;
    const desk::BoardEvent event{board_point(look), look.mm(1)};
    move_hand(
        view.hand, state.session, [&view] { return view.scene(); }, event, mouse);
}

std::string name_of(const BoardThing& thing) {
    if (const auto* print = std::get_if<wall::PrintId>(&thing))
        return "print/" + print->text;
    if (const auto* piece = std::get_if<wall::PieceId>(&thing))
        return "frame/" + piece->text;
    const auto& link = std::get<desk::LinkAt>(thing);
    return fmt::format("{}/{}/{}", link.lock ? "lock" : "link", link.print.text, link.piece.text);
}

void tell(Ui& ui, const State& state) {
    const MatchView& view = state.prints;
    const bool any = view.hand.hovered() && !view.hand.is_busy();
    if (!any)
        return board_tip(ui, "", "");
    board_tip(ui, name_of(*view.hand.hovered()),
              desk::board_words(state.session.project(), view.choice, *view.hand.hovered()));
}

/// "board/print/ebb", "board/frame/oak", "board/lock/oak".
void note_things(Ui& ui, const State& state) {
    const desk::View& look = state.bench.look().view;
    for (const desk::BoardItem& item : state.prints.layout.prints.items)
        note_on_board(ui, look, "board/print/" + item.print->text, item.place);
    for (const desk::BoardItem& item : state.prints.layout.frames.items)
        note_on_board(ui, look, "board/frame/" + item.piece->text, item.place);
    for (const desk::Link& link : state.prints.links)
        if (link.kind != desk::LinkKind::wanted)
            note_on_board(ui, look, "board/lock/" + link.piece.text,
                          geometry::Rect<Wall>{link.lock_at, link.lock_at}.grown(look.mm(4)));
}

void paint(const Ui& ui, const State& state, const ScreenArea& area) {
    const MatchView& view = state.prints;
    const desk::View& look = state.bench.look().view;
    const double scale = board_scale(ui, look, area);
    const draw::Pictures pictures{true, state.session.picture_folder()};
    desk::BoardShapes carried;
    if (view.hand.carried())
        carried = desk::carried_print(state.session, *view.hand.carried(), pictures,
                                      sight_of(ui, look, area), scale);
    paint_board(
        ui, look, area,
        {desk::match_board(state.session, view.scene(), view.hand, pictures, scale), carried});
}

ImGuiMouseCursor cursor_for(const MatchView& view) {
    return view.hand.hovered() || view.hand.is_busy() ? ImGuiMouseCursor_Hand
                                                      : ImGuiMouseCursor_Arrow;
}

}  // namespace

void bench_prints(Ui& ui, State& state, const ScreenArea& area) {
    if (area.width() < 1 || area.height() < 1)
        return;
    const BoardMouse mouse = take_board(ui, "bench/prints", area);
    desk::refresh(state.prints, state.session, paper_of(ui, area));
    keep_in_sight(ui, state, area);
    if (look_around(state.bench.look().view, mouse.hovered, mouse.active))
        state.bench.look().fitted = false;
    point(state, mouse);
    desk::refresh(state.prints, state.session, paper_of(ui, area));
    if (mouse.hovered || state.prints.hand.is_busy())
        ImGui::SetMouseCursor(cursor_for(state.prints));
    note_things(ui, state);
    paint(ui, state, area);
    tell(ui, state);
}

}  // namespace wallwright::app
