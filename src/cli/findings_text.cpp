#include "cli/findings_text.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::cli {

namespace {

std::string line_of(const wall::Finding& finding) {
    return fmt::format("{:<4}  {} [{}]\n", wall::name_of(finding.severity), finding.text,
                       finding.rule);
}

auto count_of(const std::vector<wall::Finding>& findings, wall::Severity severity) {
    return std::count_if(
        findings.begin(), findings.end(),
        [severity](const wall::Finding& finding) { return finding.severity == severity; });
}

}  // namespace

std::string findings_text(const std::vector<wall::Finding>& findings) {
    if (findings.empty())
        return "Nothing to say against this wall.\n";
    std::string text;
    for (const wall::Finding& finding : findings)
        text += line_of(finding);
    return text + fmt::format("\n{} stop, {} mind, {} note\n",
                              count_of(findings, wall::Severity::stop),
                              count_of(findings, wall::Severity::mind),
                              count_of(findings, wall::Severity::note));
}

std::string counts_text(const std::vector<wall::Finding>& findings) {
    const auto words = [&findings](wall::Severity severity) {
        const auto count = count_of(findings, severity);
        return count == 0
                   ? ""
                   : fmt::format("{} {}{}", count, wall::name_of(severity), count == 1 ? "" : "s");
    };
    const std::string stops = words(wall::Severity::stop);
    const std::string minds = words(wall::Severity::mind);
    if (stops.empty() && minds.empty())
        return "none";
    return fmt::format("{}{}{}", stops, stops.empty() || minds.empty() ? "" : ", ", minds);
}

std::string stops_text(const std::vector<wall::Finding>& findings) {
    return wall::has_stop(findings)
               ? "The wall still has stop findings; wallwright check says which.\n"
               : "";
}

}  // namespace wallwright::cli
