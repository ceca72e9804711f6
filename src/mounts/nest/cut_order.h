// The cuts of one sheet, one after the other.
#pragma once

#include "mounts/nest/packing.h"
#include "mounts/nest/plan.h"

namespace wallwright::mounts {

/// Left, top, and then what is beyond the right and the lower margin; gives what is inside.
OnSheet trim(CutSheet& sheet, const NestSheet& kind);

/// See lay_out.h. Numbers are left 0, and what comes out is in no order.
CutSheet cut_up(const NestTask& task, const Stock& stock, const OpenSheet& open);

}  // namespace wallwright::mounts
