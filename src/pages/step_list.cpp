#include "pages/step_list.h"

#include "pages/table.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::pages {

namespace {

constexpr Type kBody{2.2, false};
constexpr double kPointIndent = 4;
constexpr double kPointsTogether = 60;  // mm that stay with a heading at the most
constexpr double kStepsTogether = 130;

}  // namespace

void add_steps(Flow& flow, const std::string& heading, const std::vector<std::string>& steps) {
    if (steps.empty())
        return;
    Table table;
    table.size = kBody.size;
    table.columns = {{"Done", 11, draw::Align::left}, {"", 8, draw::Align::right}, {"", 0}};
    for (std::size_t i = 0; i < steps.size(); ++i)
        table.rows.push_back({{TickBox{}, Words{fmt::format("{}", i + 1), true}, Words{steps[i]}}});
    flow.add_heading(heading, std::min(height_of(table, flow.content().width()), kStepsTogether));
    add_table(flow, table);
}

void add_points(Flow& flow, const std::string& heading, const std::vector<std::string>& points) {
    const double width = flow.content().width() - kPointIndent;
    double height = 0;
    for (const std::string& point : points)
        height +=
            static_cast<double>(lines_of(point, kBody, width).size()) * line_height(kBody.size);
    flow.add_heading(heading, std::min(height, kPointsTogether));
    const double left = flow.content().min.x;
    for (const std::string& point : points) {
        const std::vector<std::string> lines = lines_of(point, kBody, width);
        flow.need(static_cast<double>(lines.size()) * line_height(kBody.size));
        flow.shapes().emplace_back(
            text_at({left, flow.top() + line_height(kBody.size) - 0.9}, "\u2013", kBody));
        for (const std::string& line : lines) {
            flow.advance(line_height(kBody.size));
            flow.shapes().emplace_back(
                text_at({left + kPointIndent, flow.top() - 0.9}, line, kBody));
        }
    }
}

}  // namespace wallwright::pages
