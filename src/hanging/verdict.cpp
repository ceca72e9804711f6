#include "hanging/verdict.h"

#include "hanging/offer.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::hanging {

namespace {

bool is_stop(const wall::Finding& finding) {
    return finding.severity == wall::Severity::stop;
}

bool is_about_weight(const wall::Finding& finding) {
    return finding.rule == kWeightWithinRating;
}

}  // namespace

Verdict verdict_on(const Hanging& hanging) {
    const std::vector<wall::Finding>& findings = hanging.findings;
    if (hanging.fixings.empty() || std::ranges::any_of(findings, [](const wall::Finding& finding) {
            return is_stop(finding) && !is_about_weight(finding);
        }))
        return Verdict::does_not_hold;
    if (!within_rating({1}, {hanging.use}, hanging.margin))
        return Verdict::over;
    return std::ranges::any_of(findings, is_stop) ? Verdict::does_not_hold : Verdict::within;
}

double limit_of(const Hanging& hanging) {
    return hanging.margin > 0 ? 1 / hanging.margin : 1;
}

std::string share_words(const Hanging& hanging, const char* over) {
    const Verdict verdict = verdict_on(hanging);
    if (verdict == Verdict::does_not_hold)
        return kDoesNotHold;
    return fmt::format("{:.0f} %, {} {:.0f} %", 100 * hanging.use,
                       verdict == Verdict::within ? "within" : over, 100 * limit_of(hanging));
}

}  // namespace wallwright::hanging
