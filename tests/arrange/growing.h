// Small walls with a group that hangs and pieces that wait, and what a tape would find of them.
#pragma once

#include "arrange/task.h"
#include "wall/project.h"

namespace wallwright::growing {

/// Three pieces hang in a row over a sofa at the left of a wall of 5 x 2.6 m, a lamp stands at the
/// right; `waiting` pieces of usual sizes wait.
wall::Project row_over_sofa(int waiting);

/// The same gap between the two as the task's, with at least a quarter of the shorter side facing.
bool at_the_gap(const arrange::Task& task, const arrange::WallRect& a, const arrange::WallRect& b);

}  // namespace wallwright::growing
