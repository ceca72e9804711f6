#include "arrange/patterns/banded_plans.h"
#include "arrange/patterns/how_many.h"
#include "arrange/patterns/patterns.h"

#include <algorithm>

namespace wallwright::arrange {

namespace {

BandEdge edge_on(RowLine line) {
    if (line == RowLine::centre)
        return BandEdge::middle;
    return line == RowLine::low ? BandEdge::before : BandEdge::after;
}

}  // namespace

std::optional<Layout> lay_out_columns(const Task& task, const Plan& plan) {
    const std::vector<BandEdge> edges = plan.rows.size() == 1
                                            ? std::vector<BandEdge>{edge_on(plan.line)}
                                            : edges_about_gaps(plan.rows.size());
    if (plan.climbs && plan.rows.size() > 1)
        return lay_out_climbing(task, plan.rows, plan.line, edges);
    return lay_out_bands(task, plan.rows, {Direction::down_the_wall, plan.line, edges});
}

std::vector<Plan> columns_plans(const Task& task, const std::vector<std::uint32_t>& free,
                                const std::function<bool()>& go_on) {
    const std::vector<std::size_t> counts = likely_counts(task, free, Direction::down_the_wall, 1);
    std::vector<Plan> plans;
    for (const std::size_t columns : counts)
        // As many columns as pieces are a row.
        if (columns < free.size() || free.size() == 1)
            std::ranges::move(banded_plans(task, free, Pattern::columns, columns,
                                           columns == counts.front() || columns <= 2, go_on),
                              std::back_inserter(plans));
    return climbing_first(task, std::move(plans));
}

}  // namespace wallwright::arrange
