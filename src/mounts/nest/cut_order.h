// The cuts of one sheet, one after the other.
#pragma once

#include "mounts/nest/packing.h"
#include "mounts/nest/plan.h"

namespace wallwright::mounts {

/// See lay_out.h. Numbers are left 0.
CutSheet cut_up(const NestTask& task, const Stock& stock, const OpenSheet& open);

}  // namespace wallwright::mounts
