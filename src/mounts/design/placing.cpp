#include "mounts/design/placing.h"

#include "base/contract.h"
#include "geometry/point.h"

#include <algorithm>
#include <cmath>

namespace wallwright::mounts {

namespace {

double window_of(const AxisTask& task, std::size_t i, double overlap) {
    return task.prints[i] - 2 * overlap + 2 * task.reveals;
}

double block_of(const AxisTask& task, const std::vector<double>& overlaps) {
    double block = 0;
    for (std::size_t i = 0; i < overlaps.size(); ++i) {
        const double window = window_of(task, i, overlaps[i]);
        if (i == 0)
            block = window;
        else
            block = task.lie == Lie::in_line ? block + task.bar + window : std::max(block, window);
    }
    return block;
}

/// The overlap that takes `excess` off a window, as far as it may.
double grown(const AxisTask& task, double excess) {
    return std::clamp(task.overlap + excess / 2, task.overlap,
                      std::max(task.overlap, task.overlap_most));
}

std::vector<double> overlaps_for(const AxisTask& task, double room) {
    std::vector<double> overlaps(task.prints.size(), task.overlap);
    if (task.lie == Lie::in_line) {
        const double excess = block_of(task, overlaps) - room;
        const double each = grown(task, excess / static_cast<double>(overlaps.size()));
        std::ranges::fill(overlaps, each);
        return overlaps;
    }
    for (std::size_t i = 0; i < overlaps.size(); ++i)
        overlaps[i] = grown(task, window_of(task, i, task.overlap) - room);
    return overlaps;
}

AxisPlan plan_block(const AxisTask& task) {
    const BorderRule& rule = task.rules.front();
    const double borders = rule.free_for(task.border_least);
    const std::vector<double> wanted(task.prints.size(), task.overlap);
    AxisPlan plan;
    const std::vector<double> most(task.prints.size(), std::max(task.overlap, task.overlap_most));
    plan.wanted_length = block_of(task, wanted) + borders;
    plan.least_length = block_of(task, most) + borders;
    plan.overlaps = overlaps_for(task, task.length - borders);
    const double block = block_of(task, plan.overlaps);
    plan.serves = block + borders <= task.length + geometry::kLengthEps;
    double start = rule.first(task.length - block);
    for (std::size_t i = 0; i < task.prints.size(); ++i) {
        const double window = window_of(task, i, plan.overlaps[i]);
        if (task.lie == Lie::in_line) {
            plan.windows.push_back({start, window});
            start += window + task.bar;
        } else {
            plan.windows.push_back({start + (block - window) / 2, window});
        }
    }
    return plan;
}

AxisPlan plan_each(const AxisTask& task) {
    AxisPlan plan;
    for (std::size_t i = 0; i < task.prints.size(); ++i) {
        AxisTask alone = task;
        alone.lie = Lie::abreast;
        alone.prints = {task.prints[i]};
        alone.rules = {task.rules[i]};
        const AxisPlan one = plan_block(alone);
        plan.windows.push_back(one.windows.front());
        plan.overlaps.push_back(one.overlaps.front());
        plan.wanted_length = std::max(plan.wanted_length, one.wanted_length);
        plan.least_length = std::max(plan.least_length, one.least_length);
        plan.serves = plan.serves && one.serves;
    }
    return plan;
}

}  // namespace

double BorderRule::first(double free) const {
    if (start)
        return *start;
    return ratio ? free / (1 + *ratio) : (free - extra) / 2;
}

double BorderRule::free_for(double least) const {
    if (start)
        return 2 * least;
    if (ratio)
        return least * (1 + std::max(*ratio, 1 / *ratio));
    return 2 * least + std::abs(extra);
}

AxisPlan plan_axis(const AxisTask& task) {
    WW_EXPECT(!task.prints.empty(), "a mount has a print");
    const std::size_t rules = task.lie == Lie::apart ? task.prints.size() : 1;
    WW_EXPECT(task.rules.size() == rules, "each block of windows has one border rule");
    return task.lie == Lie::apart ? plan_each(task) : plan_block(task);
}

}  // namespace wallwright::mounts
