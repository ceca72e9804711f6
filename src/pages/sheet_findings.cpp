#include "pages/sheet_findings.h"

#include "draw/letters.h"
#include "draw/paths.h"
#include "pages/cautions.h"
#include "pages/flow.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace wallwright::pages {

namespace {

using draw::Ink;
using geometry::Page;
using wall::Finding;
using wall::Severity;

constexpr Type kBody{2.2, false};
constexpr Type kSmall{1.8, false};
constexpr double kSign = 2.3;  // mm, radius of a sign
constexpr double kWordAt = 7;  // mm from the left edge
constexpr double kTextAt = 19;

Ink ink_of(Severity severity) {
    switch (severity) {
        case Severity::stop:
            return Ink::stop;
        case Severity::mind:
            return Ink::mind;
        case Severity::note:
            return Ink::accent;
    }
    return Ink::text;
}

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

/// Corners on a circle, the first turned by `turn` from straight up.
draw::Path<Page> regular(Spot middle, int corners, double radius, double turn, Ink ink) {
    std::vector<Spot> points;
    for (int i = 0; i < corners; ++i) {
        const double angle = turn + 2 * std::numbers::pi * i / corners;
        points.push_back(
            {middle.x + radius * std::sin(angle), middle.y - radius * std::cos(angle)});
    }
    return draw::polygon(points, {draw::Paint{ink}, std::nullopt});
}

/// An octagon with a bar, a triangle with an exclamation mark, a disc with an i: told apart without
/// colour.
void add_sign(Shapes& shapes, Severity severity, Spot middle) {
    const Ink ink = ink_of(severity);
    const auto letter = [&](const char* text, double down) {
        shapes.emplace_back(
            aligned(text_at({middle.x, middle.y + down}, text, {2.2, true}, Ink::paper),
                    draw::Align::centre));
    };
    switch (severity) {
        case Severity::stop:
            shapes.emplace_back(regular(middle, 8, kSign, std::numbers::pi / 8, ink));
            shapes.emplace_back(draw::box(
                Area{{middle.x - 1.2, middle.y - 0.35}, {middle.x + 1.2, middle.y + 0.35}},
                {draw::Paint{Ink::paper}, std::nullopt}));
            break;
        case Severity::mind:
            shapes.emplace_back(regular({middle.x, middle.y + 0.5}, 3, kSign * 1.25, 0, ink));
            letter("!", 1.55);
            break;
        case Severity::note:
            shapes.emplace_back(draw::circle(middle, kSign, {draw::Paint{ink}, std::nullopt}));
            letter("i", 1.1);
            break;
    }
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
