#include "app/bench/board_parts.h"
#include "app/canvas_painter.h"
#include "app/layouts.h"
#include "app/look_around.h"
#include "app/panels/panels.h"
#include "app/plans.h"
#include "desk/mark_view.h"
#include "desk/mark_words.h"
#include "desk/overlay.h"

#include <fmt/format.h>

namespace wallwright::app {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Screen;
using geometry::Wall;

constexpr double kMargin = 18;  ///< px around a fitted wall, at a scale of 1.
constexpr int kFitRounds = 4;   ///< A label's room depends on the scale, and the fit on the labels.

Point<Screen> screen_point(ImVec2 at) {
    return {at.x, at.y};
}

double paper_scale(const Ui& ui, const State& state) {
    return state.view.scale() / (kPixelsPerPaperMm * ui.scale);
}

void refresh(const Ui& ui, State& state) {
    desk::refresh(state.picture, state.session, state.step, paper_scale(ui, state), state.layers);
}

bool shows_marks(const State& state) {
    return state.step == desk::Step::hang && state.layers.marks;
}

/// The pencil mark under the pointer, null for none. For immediate use.
const hanging::Mark* mark_pointed_at(const State& state) {
    constexpr double kReach = 9;  // px: about the arms of its cross
    if (!shows_marks(state) || !state.pointer_at || state.pointer.is_busy())
        return nullptr;
    return desk::mark_at(state.session.assessment().marks, *state.pointer_at,
                         state.view.mm(kReach));
}

void tell_mark(Ui& ui, const State& state) {
    const hanging::Mark* mark = mark_pointed_at(state);
    if (mark == nullptr)
        return board_tip(ui, "", "");
    board_tip(ui, fmt::format("mark/{}", mark->number),
              desk::mark_words(state.session.project(), *mark));
}

/// Grows when the first layouts are there, and when no more come.
double stage_of_search(const desk::LayoutChoice& layouts) {
    if (layouts.layouts().empty())
        return 0;
    return layouts.is_searching() ? 1 : 2;
}

/// When anything it depends on is another, but not under a hand that drags, nor for a preview.
void keep_fitted(const Ui& ui, State& state, const Rect<Screen>& area) {
    const std::array<double, 8> now = {static_cast<double>(state.session.version()),
                                       static_cast<double>(state.step),
                                       ui.scale,
                                       area.min.x,
                                       area.min.y,
                                       area.max.x,
                                       area.max.y,
                                       stage_of_search(state.layouts)};
    const bool is_passing = state.pointer.is_busy() || state.session.has_preview();
    if (!state.fitted || is_passing || now == state.fitted_for)
        return;
    const Rect<Screen> inner = area.grown(-kMargin * ui.scale);
    if (inner.width() <= 0 || inner.height() <= 0)
        return;
    state.view.fit(geometry::bounds(state.session.project().room.outline), inner);
    for (int round = 0; round < kFitRounds; ++round) {
        refresh(ui, state);
        state.view.fit(state.picture.drawing.extent, inner);
    }
    state.view.fit(desk::extent_of(state.picture, state.session, state.layouts), inner);
    state.fitted_for = now;
}

desk::PointerEvent pointer_event(const State& state) {
    const ImGuiIO& io = ImGui::GetIO();
    return {state.view.to_wall(screen_point(io.MousePos)), state.view.mm(1), io.KeyShift,
            io.KeyAlt};
}

/// The hand on the wall. Press and release may come in one frame.
void point(State& state, bool hovered, bool activated, bool deactivated) {
    const desk::PointerEvent event = pointer_event(state);
    if (activated && ImGui::IsMouseClicked(ImGuiMouseButton_Left) && !is_panning()) {
        if (!press_for_plans(state, event.at))
            state.pointer.press(state.session, state.picture.waiting, state.step, event);
    } else if (hovered || state.pointer.is_busy())
        state.pointer.move(state.session, state.picture.waiting, state.step, event);
    if (deactivated && state.pointer.is_busy())
        state.pointer.release(state.session, event);
    // A dialog took the release.
    if (state.pointer.is_busy() && !ImGui::IsMouseDown(ImGuiMouseButton_Left))
        state.pointer.cancel(state.session);
}

ImGuiMouseCursor cursor_for(desk::Cursor cursor) {
    switch (cursor) {
        case desk::Cursor::move:
            return ImGuiMouseCursor_Hand;
        case desk::Cursor::resize_across:
            return ImGuiMouseCursor_ResizeEW;
        case desk::Cursor::resize_up:
            return ImGuiMouseCursor_ResizeNS;
        case desk::Cursor::resize_both:
            return ImGuiMouseCursor_ResizeAll;
        case desk::Cursor::arrow:
            break;
    }
    return ImGuiMouseCursor_Arrow;
}

void note_box(Ui& ui, const State& state, const std::string& name, const Rect<Wall>& place) {
    const Rect<Screen> box = state.view.to_screen()(place);
    ui.probe.note_box(name, {static_cast<float>(box.min.x), static_cast<float>(box.min.y)},
                      {static_cast<float>(box.max.x), static_cast<float>(box.max.y)});
}

/// Where everything on the wall and the floor is on the screen, by its id.
void note_things(Ui& ui, const State& state) {
    const wall::Project& project = state.session.project();
    for (const wall::Placed& placed : wall::placed_pieces(project))
        note_box(ui, state, "wall/" + placed.id.text, placed.place);
    for (const desk::Waiting& waiting : state.picture.waiting)
        note_box(ui, state, "wall/" + waiting.piece.text, waiting.place);
    for (const wall::Furniture& furniture : project.room.furniture)
        note_box(ui, state, "wall/furniture/" + furniture.id.text, furniture.place);
    for (const wall::Fixture& fixture : project.room.fixtures)
        note_box(ui, state, "wall/fixture/" + fixture.id.text, fixture.place);
    if (!shows_marks(state))
        return;
    for (const hanging::Mark& mark : state.session.assessment().marks.marks)
        note_box(ui, state, fmt::format("wall/mark/{}", mark.number), {mark.at, mark.at});
}

void paint(const Ui& ui, const State& state, const Rect<Screen>& area) {
    ImDrawList& list = *ImGui::GetWindowDrawList();
    const ImVec4 clip{static_cast<float>(area.min.x), static_cast<float>(area.min.y),
                      static_cast<float>(area.max.x), static_cast<float>(area.max.y)};
    list.PushClipRect({clip.x, clip.y}, {clip.z, clip.w}, true);
    list.AddRectFilled({clip.x, clip.y}, {clip.z, clip.w}, ui.theme().desk);
    const CanvasStyle style{state.view.to_screen(), kPixelsPerPaperMm * ui.scale, ui.dark, ui.fonts,
                            ui.host};
    app::paint(list, state.picture.drawing.shapes, style, clip);
    app::paint(list,
               desk::overlay(state.session, state.picture.waiting, state.step,
                             state.pointer.showing(), paper_scale(ui, state)),
               style, clip);
    if (const hanging::Mark* mark = mark_pointed_at(state))
        app::paint(list, desk::mark_overlay(state.session, *mark, paper_scale(ui, state)), style,
                   clip);
    app::paint(list, plans_overlay(state, paper_scale(ui, state)), style, clip);
    list.PopClipRect();
}

}  // namespace

void canvas(Ui& ui, State& state) {
    const ImVec2 at = ImGui::GetCursorScreenPos();
    const ImVec2 size = ImGui::GetContentRegionAvail();
    if (size.x < 1 || size.y < 1)
        return;
    const Rect<Screen> area = Rect<Screen>::at({at.x, at.y}, geometry::Size{size.x, size.y});
    ImGui::InvisibleButton("canvas", size,
                           ImGuiButtonFlags_MouseButtonLeft | ImGuiButtonFlags_MouseButtonMiddle);
    ui.probe.note("canvas");
    const bool hovered = ImGui::IsItemHovered();
    const bool active = ImGui::IsItemActive();
    const bool activated = ImGui::IsItemActivated();
    const bool deactivated = ImGui::IsItemDeactivated();
    keep_fitted(ui, state, area);
    if (look_around(state.view, hovered, active))
        state.fitted = false;
    if (activated)
        put_layout_away(state);
    refresh(ui, state);
    point(state, hovered, activated, deactivated);
    refresh(ui, state);
    if (hovered || state.pointer.is_busy())
        ImGui::SetMouseCursor(cursor_for(state.pointer.cursor()));
    state.pointer_at = hovered ? std::optional(pointer_event(state).at) : std::nullopt;
    if (hovered)
        hover_plans(state, pointer_event(state).at);
    note_things(ui, state);
    note_plans(ui, state);
    paint(ui, state, area);
    tell_mark(ui, state);
}

}  // namespace wallwright::app
