#include "app/bench/bench_strip.h"
#include "app/bench/board_parts.h"
#include "app/canvas_painter.h"
#include "app/look_around.h"
#include "app/panels/panels.h"
#include "app/widgets.h"
#include "desk/bench/bench_pieces.h"
#include "wall/titles.h"

#include <fmt/format.h>

namespace wallwright::app {

namespace {

using desk::MountSide;
using geometry::Rect;
using geometry::Screen;
using wall::PieceId;

void refresh(const Ui& ui, State& state, const PieceId& piece) {
    desk::refresh(state.mount_picture, state.session, piece, state.bench,
                  paper_scale(ui, state.bench.look().view));
}

/// Not under a hand that drags.
void keep_in_sight(const Ui& ui, State& state, const PieceId& piece, const ScreenArea& area) {
    if (state.session.has_preview())
        return;
    keep_fitted(ui, state.bench.look(), area,
                {.wall = state.session.version(),
                 .piece = piece,
                 .side = state.bench.side,
                 .layer = state.bench.layer},
                [&](double scale) {
                    desk::refresh(state.mount_picture, state.session, piece, state.bench, scale);
                    return state.mount_picture.drawing.extent;
                });
}

desk::MountEvent event_now(const State& state) {
    const ImGuiIO& io = ImGui::GetIO();
    const desk::View& view = state.bench.look().view;
    const auto at = view.to_wall({io.MousePos.x, io.MousePos.y});
    return {desk::on_blank(state.mount_picture, at), view.mm(1), io.KeyAlt};
}

bool can_be_pulled(const State& state) {
    return state.mount_picture.design && state.mount_picture.side == MountSide::front;
}

/// A second click in time puts the windows back where their rule has them.
void press(State& state, const PieceId& piece, const desk::MountEvent& event) {
    state.mount_tool.press(state.session, piece, event);
    if (!ImGui::IsMouseDoubleClicked(ImGuiMouseButton_Left) || !state.mount_tool.showing().part)
        return;
    state.mount_tool.cancel(state.session);
    desk::centre_windows(state.session, piece);
}

/// Press and release may come in one frame.
void point(State& state, const PieceId& piece, const BoardMouse& mouse) {
    desk::MountTool& tool = state.mount_tool;
    if (!can_be_pulled(state) && !tool.is_busy())
        return tool.leave();
    const desk::MountEvent event = event_now(state);
    if (mouse.is_pressed())
        press(state, piece, event);
    else if (mouse.hovered || tool.is_busy())
        tool.move(state.session, piece, event);
    else
        tool.leave();
    if (mouse.deactivated && tool.is_busy())
        tool.release(state.session, event);
    // A dialog took the release.
    if (tool.is_busy() && !ImGui::IsMouseDown(ImGuiMouseButton_Left))
        tool.cancel(state.session);
}

ImGuiMouseCursor cursor_for(desk::Cursor cursor) {
    switch (cursor) {
        case desk::Cursor::resize_across:
            return ImGuiMouseCursor_ResizeEW;
        case desk::Cursor::resize_up:
            return ImGuiMouseCursor_ResizeNS;
        case desk::Cursor::move:
        case desk::Cursor::resize_both:
            return ImGuiMouseCursor_Hand;
        case desk::Cursor::arrow:
            break;
    }
    return ImGuiMouseCursor_Arrow;
}

ImVec4 box_of(const Rect<Screen>& rect) {
    return {static_cast<float>(rect.min.x), static_cast<float>(rect.min.y),
            static_cast<float>(rect.max.x), static_cast<float>(rect.max.y)};
}

/// Where each window of the front is on the screen: "bench/window/1".
void note_windows(Ui& ui, const State& state) {
    if (!can_be_pulled(state))
        return;
    const mounts::MountDesign& design = *state.mount_picture.design;
    for (std::size_t i = 0; i < desk::window_count(design); ++i)
        note_on_board(ui, state.bench.look().view, fmt::format("bench/window/{}", i + 1),
                      desk::on_drawing(state.mount_picture, desk::window_at(design, i)));
}

void paint(const Ui& ui, const State& state, const ScreenArea& area) {
    const CanvasStyle style{state.bench.look().view.to_screen(), kPixelsPerPaperMm * ui.scale,
                            ui.dark, ui.fonts, ui.host};
    ImDrawList& list = *ImGui::GetWindowDrawList();
    app::paint(list, state.mount_picture.drawing.shapes, style, box_of(area));
    app::paint(list, desk::overlay(state.mount_picture, state.mount_tool.showing()), style,
               box_of(area));
}

/// Why there is nothing but a frame, at the foot of the area.
void say_what_is_missing(const Ui& ui, const State& state, const PieceId& id,
                         const ScreenArea& area) {
    const wall::Piece& piece = *wall::find(state.session.project(), id);
    const char* const missing = piece.mount ? "print for its mount" : "mount";
    const std::string words = fmt::format("{} has no {} yet.", wall::title_of(piece), missing);
    const ImVec2 size = ImGui::CalcTextSize(words.c_str());
    ImGui::GetWindowDrawList()->AddText({static_cast<float>(area.centre().x) - size.x / 2,
                                         static_cast<float>(area.max.y) - size.y - ui.px(8)},
                                        ui.theme().text, words.c_str());
}

void show_mount(Ui& ui, State& state, const PieceId& piece, const ScreenArea& area) {
    const BoardMouse mouse = take_board(ui, "bench/mount", area);
    keep_in_sight(ui, state, piece, area);
    if (look_around(state.bench.look().view, mouse.hovered, mouse.active))
        state.bench.look().fitted = false;
    refresh(ui, state, piece);
    point(state, piece, mouse);
    refresh(ui, state, piece);
    if (mouse.hovered || state.mount_tool.is_busy())
        ImGui::SetMouseCursor(cursor_for(state.mount_tool.cursor()));
    note_windows(ui, state);
    paint(ui, state, area);
    if (!state.mount_picture.design)
        say_what_is_missing(ui, state, piece, area);
}

}  // namespace

void bench_mount(Ui& ui, State& state, const ScreenArea& area) {
    const auto piece = desk::piece_on_bench(state.session);
    if (!piece) {
        state.mount_tool.cancel(state.session);
        return bench_overview(ui, state, area);
    }
    const double strip = bench_strip_height(ui, state, area);
    ScreenArea above = area;
    above.max.y -= strip;
    show_mount(ui, state, *piece, above);
    if (strip > 0)
        bench_strip(ui, state, {{area.min.x, above.max.y}, area.max});
}

}  // namespace wallwright::app
