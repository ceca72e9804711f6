#include "arrange/patterns/how_many.h"
#include "arrange/patterns/order.h"
#include "arrange/patterns/patterns.h"
#include "arrange/patterns/split.h"
#include "arrange/settle.h"

namespace wallwright::arrange {

namespace {

constexpr Direction kLevel = Direction::across_the_wall;
constexpr RowLine kLines[] = {RowLine::centre, RowLine::low, RowLine::high};

BandEdge edge_on(RowLine line) {
    if (line == RowLine::centre)
        return BandEdge::middle;
    return line == RowLine::low ? BandEdge::after : BandEdge::before;
}

/// Each piece a column of its own.
Layout climbing_row(const Task& task, const Plan& plan) {
    std::vector<std::vector<std::uint32_t>> columns;
    for (const std::uint32_t item : plan.rows.front())
        columns.push_back({item});
    const std::vector<BandEdge> edges(columns.size(), BandEdge::middle);
    return lay_out_climbing(task, columns, plan.line, edges);
}

std::vector<Plan> single_rows(const Task& task, const std::vector<std::uint32_t>& free) {
    std::vector<Plan> plans;
    for (const Order order : {Order::large_inside, Order::alternating, Order::large_outside})
        for (const RowLine line : kLines)
            plans.push_back({Pattern::row, line, {in_order(task, free, kLevel, order)}});
    return climbing_first(task, std::move(plans));
}

bool has_room(const Task& task, const Plan& plan) {
    return settle(task, *lay_out_row(task, plan)).has_value();
}

}  // namespace

std::optional<Layout> lay_out_row(const Task& task, const Plan& plan) {
    if (plan.climbs && plan.rows.size() == 1)
        return climbing_row(task, plan);
    const std::vector<BandEdge> edges(plan.rows.size(), edge_on(plan.line));
    return lay_out_bands(task, plan.rows, {kLevel, RowLine::centre, edges});
}

/// Rows one above the other are for walls too narrow for one: with unlike heights they rarely come
/// out even.
std::vector<Plan> row_plans(const Task& task, const std::vector<std::uint32_t>& free,
                            const std::function<bool()>& go_on) {
    std::vector<Plan> plans = single_rows(task, free);
    if (has_room(task, plans.front()))
        return plans;
    for (const std::size_t rows : likely_counts(task, free, kLevel, 2)) {
        if (!go_on())
            break;
        std::vector<std::vector<std::uint32_t>> split =
            split_into(task, free, rows, kLevel, {1, 0.05, 0});
        for (std::vector<std::uint32_t>& row : split)
            row = in_order(task, std::move(row), kLevel, Order::large_inside);
        for (const RowLine line : kLines)
            plans.push_back({Pattern::row, line, split});
    }
    return plans;
}

}  // namespace wallwright::arrange
