#include "app/plans.h"

#include <fmt/format.h>
#include <imgui.h>

namespace wallwright::app {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Screen;
using geometry::Wall;

constexpr double kBetweenLooks = 0.1;  // s, at what a search has found

bool is_open(const State& state) {
    return state.step == desk::Step::arrange;
}

/// The first of the list that the point is in.
std::optional<std::size_t> suggestion_at(const desk::Suggestions& suggestions, Point<Wall> at) {
    for (std::size_t i = 0; i < suggestions.list().size(); ++i)
        if (suggestions.list()[i].place.contains(at))
            return i;
    return std::nullopt;
}

/// Arrows, as long as the slider was what was used last.
bool stage_key(State& state, std::string_view key) {
    const int last = desk::StageView::last(state.session);
    if (last == 0 || !state.stages.has_keys)
        return false;
    if (key == "Left")
        step_stages(state, -1);
    else if (key == "Right")
        step_stages(state, 1);
    else if (key == "Home")
        state.stages.show(state.session, 0);
    else if (key == "End")
        state.stages.show(state.session, last);
    else
        return false;
    return true;
}

/// Only while nothing is selected: else arrows move that.
bool suggestion_key(State& state, std::string_view key) {
    desk::Suggestions& suggestions = state.suggestions;
    if (suggestions.list().empty() || !state.session.selection.empty())
        return false;
    const auto pointed_out = suggestions.pointed_out();
    if (key == "Down")
        suggestions.point_further(1);
    else if (key == "Up")
        suggestions.point_further(-1);
    else if (key == "Enter" && pointed_out)
        suggestions.take(state.session, *pointed_out);
    else
        return false;
    return true;
}

bool put_away(State& state) {
    if (state.growth.wants_point())
        state.growth.ask_for_no_point();
    else if (state.stages.is_shown())
        state.stages.leave(state.session);
    else if (state.session.selection.empty() && state.suggestions.pointed_out())
        state.suggestions.point_out(std::nullopt);
    else
        return false;
    return true;
}

}  // namespace

void follow_plans(Ui& ui, State& state) {
    desk::Session& session = state.session;
    if (!is_open(state)) {
        state.stages.leave(session);
        state.growth.ask_for_no_point();
    }
    // A hand that drags holds on to the wall as it was.
    if (!state.pointer.is_busy()) {
        state.growth.follow(session);
        state.suggestions.follow(session);
    }
    const double now = ImGui::GetTime();
    state.stages.follow(session, now);
    if (state.growth.is_running() || state.suggestions.is_running())
        ui.memory.wake(kBetweenLooks);
    if (const auto due = state.stages.due_in(now))
        ui.memory.wake(*due);
}

void give_plans_up(State& state) {
    state.stages.leave(state.session);
    state.growth.give_up();
    state.suggestions.clear();
}

bool press_for_plans(State& state, Point<Wall> at) {
    state.stages.has_keys = false;
    state.stages.leave(state.session);
    if (!state.growth.wants_point())
        return false;
    state.growth.take_point(state.session, at);
    return true;
}

void hover_plans(State& state, Point<Wall> at) {
    const ImVec2 moved = ImGui::GetIO().MouseDelta;
    if (is_open(state) && (moved.x != 0 || moved.y != 0))
        state.suggestions.point_out(suggestion_at(state.suggestions, at));
}

desk::WallShapes plans_overlay(const State& state, double scale) {
    if (!is_open(state))
        return {};
    desk::WallShapes shapes =
        desk::target_overlay(state.session, state.picture.drawing.shapes, scale);
    for (auto& shape : desk::suggestions_overlay(state.session, state.suggestions,
                                                 state.picture.drawing.shapes, scale))
        shapes.push_back(std::move(shape));
    return shapes;
}

void note_plans(Ui& ui, const State& state) {
    if (!is_open(state))
        return;
    for (std::size_t i = 0; i < state.suggestions.list().size(); ++i) {
        const Rect<Screen> box = state.view.to_screen()(state.suggestions.list()[i].place);
        ui.probe.note_box(fmt::format("wall/suggest/{}", i + 1),
                          {static_cast<float>(box.min.x), static_cast<float>(box.min.y)},
                          {static_cast<float>(box.max.x), static_cast<float>(box.max.y)});
    }
}

void step_stages(State& state, int by) {
    if (desk::StageView::last(state.session) == 0)
        state.session.notice = desk::Notice{false, "Grow the group first."};
    else if (is_open(state))
        state.stages.show(state.session, state.stages.at(state.session) + by);
}

bool plans_key(State& state, std::string_view key) {
    if (!is_open(state))
        return false;
    if (key == "Escape")
        return put_away(state);
    return stage_key(state, key) || suggestion_key(state, key);
}

}  // namespace wallwright::app
