#include "pages/sheet_findings.h"

#include "draw/letters.h"
#include "pages/cautions.h"
#include "pages/flow.h"
#include "pages/sign.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::pages {

namespace {

using draw::Ink;
using wall::Finding;
using wall::Severity;

constexpr Type kBody{2.2, false};
constexpr Type kSmall{1.8, false};
constexpr double kWordAt = 7;  // mm from the left edge
constexpr double kTextAt = 19;

const char* word_of(Severity severity) {
    switch (severity) {
        case Severity::stop:
            return "Stop";
        case Severity::mind:
            return "Mind";
        case Severity::note:
            return "Note";
    }
    return "";
}

std::string about(const wall::Project& project, const Finding& finding) {
    std::string words;
    for (const wall::PieceId& id : finding.pieces)
        words += (words.empty() ? "piece " : ", ") + draw::letter_of(project, id);
    return words.empty() ? finding.rule : words + " · " + finding.rule;
}

void add_finding(Flow& flow, const wall::Project& project, const Finding& finding) {
    const double width = flow.content().width() - kTextAt;
    const std::vector<std::string> lines = lines_of(finding.text, kBody, width);
    const std::vector<std::string> quiet = lines_of(about(project, finding), kSmall, width);
    const double height = static_cast<double>(lines.size()) * line_height(kBody.size) +
                          static_cast<double>(quiet.size()) * line_height(kSmall.size) + 2;
    flow.need(height);
    const double left = flow.content().min.x;
    double y = flow.top() + line_height(kBody.size) - 0.9;
    add_sign(flow.shapes(), finding.severity, {left + 3, y - 1.1});
    flow.shapes().emplace_back(text_at({left + kWordAt, y}, word_of(finding.severity),
                                       {kBody.size, true}, ink_of(finding.severity)));
    for (const std::string& line : lines) {
        flow.shapes().emplace_back(text_at({left + kTextAt, y}, line, kBody));
        y += line_height(kBody.size);
    }
    for (const std::string& line : quiet) {
        flow.shapes().emplace_back(
            text_at({left + kTextAt, y - 0.4}, line, kSmall, Ink::quiet_text));
        y += line_height(kSmall.size);
    }
    flow.advance(height);
}

std::string summary(const std::vector<Finding>& findings) {
    const auto count = [&findings](Severity severity) {
        return std::count_if(findings.begin(), findings.end(),
                             [severity](const Finding& one) { return one.severity == severity; });
    };
    return fmt::format(
        "{} to stop at, {} to mind, {} to note. Stop: unsafe or impossible. Mind: outside usual "
        "practice. Note: "
        "worth knowing.",
        count(Severity::stop), count(Severity::mind), count(Severity::note));
}

}  // namespace

std::vector<draw::PageDrawing> finding_sheets(const wall::Project& project,
                                              const rules::Assessment& assessment,
                                              const SheetOptions& options) {
    Flow flow({options.paper,
               false,
               project.title,
               "Findings and cautions",
               {{"findings", std::to_string(assessment.findings.size())}}});
    if (assessment.findings.empty())
        flow.add_text("The rules found nothing to say about this wall.", {2.5, false});
    else
        flow.add_text(summary(assessment.findings), kBody);
    flow.advance(3);
    for (const Finding& finding : assessment.findings)
        add_finding(flow, project, finding);
    add_cautions(flow);
    return flow.take();
}

}  // namespace wallwright::pages
