#include "arrange/patterns/bands.h"
#include "arrange/patterns/patterns.h"

#include <algorithm>
#include <map>

namespace wallwright::arrange {

namespace {

using Rows = std::vector<std::vector<std::uint32_t>>;

bool has_one_height(const Task& task, const std::vector<std::uint32_t>& row) {
    return std::ranges::all_of(row, [&](std::uint32_t item) {
        return geometry::is_same_length(task.items[item].size.height,
                                        task.items[row.front()].size.height);
    });
}

bool has_the_same_widths(const Task& task, const std::vector<std::uint32_t>& row,
                         const std::vector<std::uint32_t>& other) {
    return std::ranges::equal(row, other, [&](std::uint32_t a, std::uint32_t b) {
        return geometry::is_same_length(task.items[a].size.width, task.items[b].size.width);
    });
}

/// The same pieces from the ends inward in turn: the last ones come to the middle.
template <class T>
std::vector<T> largest_inside(std::vector<T> values) {
    std::ranges::sort(values);
    std::vector<T> start;
    std::vector<T> end;
    for (std::size_t i = 0; i < values.size(); ++i)
        (i % 2 == 0 ? start : end).push_back(values[i]);
    start.insert(start.end(), end.rbegin(), end.rend());
    return start;
}

/// Each distinct value as often as `times` goes into its count; empty when it does not.
std::vector<double> once_for_each(const std::map<double, std::size_t>& counts, std::size_t times) {
    std::vector<double> values;
    for (const auto& [value, count] : counts) {
        if (count % times != 0)
            return {};
        values.insert(values.end(), count / times, value);
    }
    return values;
}

/// Rows of one height and columns of one width, where the sizes allow it.
std::optional<Rows> few_sizes(const Task& task, const std::vector<std::uint32_t>& free,
                              std::size_t columns) {
    if (free.size() % columns != 0)
        return std::nullopt;
    std::map<double, std::size_t> heights;
    std::map<double, std::size_t> widths;
    std::map<std::pair<double, double>, std::vector<std::uint32_t>> pieces;
    for (const std::uint32_t item : free) {
        const geometry::Size& size = task.items[item].size;
        ++heights[size.height];
        ++widths[size.width];
        pieces[{size.height, size.width}].push_back(item);
    }
    const std::vector<double> of_rows = largest_inside(once_for_each(heights, columns));
    const std::vector<double> of_columns =
        largest_inside(once_for_each(widths, free.size() / columns));
    if (of_rows.empty() || of_columns.empty())
        return std::nullopt;
    Rows rows;
    for (const double height : of_rows) {
        rows.emplace_back();
        for (const double width : of_columns) {
            std::vector<std::uint32_t>& left = pieces[{height, width}];
            if (left.empty())
                return std::nullopt;
            rows.back().push_back(left.back());
            left.pop_back();
        }
    }
    return rows;
}

Rows with_a_short_row(const std::vector<std::uint32_t>& free, std::size_t columns) {
    Rows rows;
    for (std::size_t i = 0; i < free.size(); ++i) {
        if (i % columns == 0)
            rows.emplace_back();
        rows.back().push_back(free[i]);
    }
    return rows;
}

}  // namespace

std::optional<Layout> lay_out_grid(const Task& task, const Plan& plan) {
    const Rows& rows = plan.rows;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const bool is_short = i + 1 == rows.size() && rows[i].size() < rows.front().size();
        if (!has_one_height(task, rows[i]) ||
            !(is_short || has_the_same_widths(task, rows[i], rows.front())))
            return std::nullopt;
    }
    const std::vector<BandEdge> edges(rows.size(), BandEdge::before);
    return lay_out_bands(task, rows, {Direction::across_the_wall, RowLine::centre, edges});
}

std::vector<Plan> grid_plans(const Task& task, const std::vector<std::uint32_t>& free) {
    std::vector<Plan> plans;
    for (std::size_t columns = 2; columns < free.size(); ++columns) {
        const std::size_t in_last = free.size() % columns;
        if (2 * in_last >= columns)
            plans.push_back({Pattern::grid, RowLine::centre, with_a_short_row(free, columns)});
        else if (std::optional<Rows> rows = few_sizes(task, free, columns))
            plans.push_back({Pattern::grid, RowLine::centre, std::move(*rows)});
    }
    return plans;
}

}  // namespace wallwright::arrange
