// From trees of cuts to a plan a person can follow.
#pragma once

#include "mounts/nest/packing.h"
#include "mounts/nest/plan.h"

namespace wallwright::mounts {

/// Sheets of which something is cut, the fullest first and a drop-out once its blank is there;
/// where that blank is not cut at all, what lay on the drop-out is left out. On each sheet the
/// margin comes off first; then every piece is cut across wholly before its parts are cut up, the
/// widest part first, so that what is left gathers at the right and below. Fills in everything but
/// the bound.
NestPlan lay_out(const NestTask& task, const Stock& stock, const Packing& packing);

/// The same of sheets that are cut up already, of which everything but the numbers of their cuts is
/// known. Blanks that are not on them are not named.
NestPlan plan_of(const NestTask& task, std::vector<CutSheet> sheets);

}  // namespace wallwright::mounts
