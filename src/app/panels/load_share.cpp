#include "app/panels/load_share.h"

#include "hanging/verdict.h"

#include <fmt/format.h>

namespace wallwright::app {

Share load_share(const hanging::Hanging& hanging) {
    const hanging::Verdict verdict = hanging::verdict_on(hanging);
    const bool within = verdict == hanging::Verdict::within;
    const double limit = hanging::limit_of(hanging);
    return {hanging.use, limit,
            verdict == hanging::Verdict::does_not_hold
                ? hanging::kDoesNotHold
                : fmt::format("{:.0f} %, {} {:.0f} %", 100 * hanging.use,
                              within ? "within" : "over", 100 * limit),
            within};
}

}  // namespace wallwright::app
