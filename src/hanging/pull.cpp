#include "hanging/pull.h"

namespace wallwright::hanging {

Pull pull_on(const Fixing& fixing) {
    constexpr double kRounding = 1e-9;  // a share of what is compared
    const bool is_nailed = fixing.kind == wall::FixingKind::nail_hook && !fixing.nails_hold;
    if (fixing.kind != wall::FixingKind::strip_pair && !is_nailed)
        return Pull::slight;
    const double pull = fixing.off_wall.value;
    const double down = fixing.down.value * (1 + kRounding);
    if (pull > down)
        return Pull::too_much;
    return pull > kPullShare * down ? Pull::much : Pull::slight;
}

}  // namespace wallwright::hanging
