#include "desk/fix.h"

#include "desk/fix_ways.h"
#include "store/catalogue.h"

#include <algorithm>

namespace wallwright::desk {

namespace {

using wall::Finding;
using wall::Severity;
using Findings = std::vector<Finding>;

bool are_alike(const Finding& a, const Finding& b) {
    return a.rule == b.rule && a.pieces == b.pieces;
}

std::ptrdiff_t count_alike(const Findings& findings, const Finding& finding) {
    return std::ranges::count_if(findings, [&](const Finding& one) {
        return are_alike(one, finding) && one.severity == finding.severity;
    });
}

/// The total is asked too, since a group that is still uneven may be so between other pieces.
bool is_gone(const Finding& finding, const Findings& before, const Findings& after) {
    const bool none_alike = std::ranges::none_of(
        after, [&finding](const Finding& one) { return are_alike(one, finding); });
    return none_alike && std::ranges::count(after, finding.rule, &Finding::rule) <
                             std::ranges::count(before, finding.rule, &Finding::rule);
}

bool adds_stop(const Findings& before, const Findings& after) {
    return std::ranges::any_of(after, [&](const Finding& one) {
        return one.severity == Severity::stop && count_alike(after, one) > count_alike(before, one);
    });
}

/// A stop weighs more than any number of minds.
std::pair<std::ptrdiff_t, std::ptrdiff_t> badness(const Findings& findings) {
    return {std::ranges::count(findings, Severity::stop, &Finding::severity),
            std::ranges::count(findings, Severity::mind, &Finding::severity)};
}

Findings findings_of(const wall::Project& project) {
    return rules::assess(project, store::built_in_catalogue()).findings;
}

}  // namespace

std::optional<Fix> fix_for(const Session& session, const Finding& finding) {
    std::vector<Fix> ways = ways_out(session.kept(), finding);
    if (ways.empty())
        return std::nullopt;
    const Findings before = findings_of(session.kept());
    std::optional<Fix> best;
    std::pair<std::ptrdiff_t, std::ptrdiff_t> least;
    for (Fix& way : ways) {
        if (!way.project)
            continue;
        const Findings after = findings_of(*way.project);
        if (!is_gone(finding, before, after) || adds_stop(before, after))
            continue;
        if (!best || badness(after) < least) {
            least = badness(after);
            best = std::move(way);
        }
    }
    return best;
}

}  // namespace wallwright::desk
