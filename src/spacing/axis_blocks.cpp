// The blocks of AxisSolver: walking one, placing it, weighing what each tie in it pushes.
#include "spacing/axis_solver.h"

#include <algorithm>

namespace wallwright::spacing {

void AxisSolver::walk(Block& block, std::uint32_t root, std::uint32_t target) {
    std::vector<Visit>& visits = block.visits;
    visits.clear();
    block.weight = 0;
    block.held = kNone;
    block.target = kNone;
    visits.push_back({root, kNone, kNone, false, 0, 0, 0, 0});
    for (std::uint32_t i = 0; i < visits.size(); ++i) {
        const Visit here = visits[i];
        if (here.variable == held_) {
            block.held = i;
        }
        if (here.variable == target) {
            block.target = i;
        }
        block.weight += variables_[here.variable].weight;
        for (const std::uint32_t edge : ties_of_[here.variable]) {
            if (edge == here.edge) {
                continue;
            }
            const Separation& s = separations_[edge];
            const bool right_end = s.left == here.variable;
            const auto next = static_cast<std::uint32_t>(right_end ? s.right : s.left);
            visits.push_back(
                {next, i, edge, right_end, here.offset + (right_end ? s.gap : -s.gap), 0, 0, 0});
        }
    }
    work_ += visits.size();
}

/// Where the block's root balances its variables' wishes and the pull, times the block's weight.
double AxisSolver::moment(const Block& block, const Pull& pull) const {
    double sum = 0;
    for (const Visit& visit : block.visits) {
        const Variable& variable = variables_[visit.variable];
        sum += variable.weight * (variable.wanted - visit.offset);
        sum += visit.variable == pull.right ? pull.amount / 2 : 0;
        sum -= visit.variable == pull.left ? pull.amount / 2 : 0;
    }
    return sum;
}

double AxisSolver::root_if_held(const Block& block) const {
    return variables_[held_].wanted - block.visits[block.held].offset;
}

void AxisSolver::place(const Block& block, const Pull& pull) {
    place_root(block,
               block.held != kNone ? root_if_held(block) : moment(block, pull) / block.weight);
}

/// The two blocks have become one, their roots the pull's gap apart.
void AxisSolver::place_joined(const Pull& pull) {
    double near_root = 0;
    if (near_.held != kNone) {
        near_root = root_if_held(near_);
    } else if (far_.held != kNone) {
        near_root = root_if_held(far_) - pull.gap;
    } else {
        const double sum = moment(near_, kNoPull) + moment(far_, kNoPull) - pull.gap * far_.weight;
        near_root = sum / (near_.weight + far_.weight);
    }
    place_root(near_, near_root);
    place_root(far_, near_root + pull.gap);
}

void AxisSolver::place_root(const Block& block, double root_at) {
    for (const Visit& visit : block.visits) {
        if (visit.variable != held_) {
            move(visit.variable, root_at + visit.offset);
        }
    }
}

/// Finds how hard each tie of the block pushes, and how much of the block's weight lies beyond it.
void AxisSolver::weigh(Block& block, const Pull& pull) {
    double total = 0;
    for (Visit& visit : block.visits) {
        const bool is_held = visit.variable == held_;
        const Variable& variable = variables_[visit.variable];
        visit.gradient =
            is_held ? 0 : 2 * variable.weight * (at_[visit.variable] - variable.wanted);
        visit.gradient += visit.variable == pull.left ? pull.amount : 0;
        visit.gradient -= visit.variable == pull.right ? pull.amount : 0;
        total += visit.gradient;
        visit.weight = block.held == kNone ? variable.weight : (is_held ? 1 : 0);
    }
    if (block.held != kNone) {
        block.visits[block.held].gradient -= total;  // what the held variable bears
    }
    for (std::size_t i = block.visits.size() - 1; i > 0; --i) {
        Visit& visit = block.visits[i];
        visit.push = visit.right_end ? visit.gradient : -visit.gradient;
        block.visits[visit.parent].gradient += visit.gradient;
        block.visits[visit.parent].weight += visit.weight;
    }
}

/// As a pull at the block's root grows, ties that point one way push less: finds the first to reach
/// nothing.
void AxisSolver::consider_stops(const Block& block, bool losing_end, Stop& stop) const {
    const double whole = block.held == kNone ? block.weight : 1;
    for (std::size_t i = 1; i < block.visits.size(); ++i) {
        const Visit& visit = block.visits[i];
        const bool loses = visit.right_end == losing_end && !separations_[visit.edge].equality;
        if (!loses || visit.weight <= 0) {
            continue;
        }
        const double amount = std::max(0.0, visit.push) * whole / visit.weight;
        if (amount < stop.amount) {
            stop = {visit.edge, amount};
        }
    }
}

}  // namespace wallwright::spacing
