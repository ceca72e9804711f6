// Growth and what to buy next around the canvas: what runs in the background, the hand, the keys,
// the overlay.
#pragma once

#include "app/state.h"
#include "app/ui.h"
#include "desk/plans_overlay.h"

#include <string_view>

namespace wallwright::app {

/// Once a frame: takes what searches have found, goes on with the play of the stages, and asks for
/// more frames as long as any of these is under way.
void follow_plans(Ui& ui, State& state);

/// Before another session comes: none of it is about that.
void give_plans_up(State& state);

/// A press on the wall, before anything else gets it. True when it was for the plans; an earlier
/// stage that was shown is the wall itself again in any case.
bool press_for_plans(State& state, geometry::Point<geometry::Wall> at);
/// Where the pointer is on the wall.
void hover_plans(State& state, geometry::Point<geometry::Wall> at);

/// `scale` as in desk/overlay.h.
desk::WallShapes plans_overlay(const State& state, double scale);
/// Names the suggested frames on the wall: "wall/suggest/1".
void note_plans(Ui& ui, const State& state);

/// Steps through the stages, so many further, in the step arrange.
void step_stages(State& state, int by);
/// A key that the slider, the list of suggestions or a target that is to be pressed has use for.
bool plans_key(State& state, std::string_view key);

}  // namespace wallwright::app
