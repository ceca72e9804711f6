// Cuts a plan of blanks on card as a person would, trusting nothing that it says.
#pragma once

#include "mounts/nest/plan.h"

#include <string>

namespace wallwright::tests {

/// Empty when all holds: every cut goes from edge to edge of a piece that is in hand; what it says
/// of each blank and offcut comes out, at its size and place; what else is left lies in the margin;
/// no blank comes twice, none is missing that is not named as left out; blanks turn only where they
/// may; no more sheets are used than there are; a drop-out is used only once its blank is cut; the
/// sums are right. Otherwise the first thing that does not.
std::string replay(const mounts::NestTask& task, const mounts::NestPlan& plan);

}  // namespace wallwright::tests
