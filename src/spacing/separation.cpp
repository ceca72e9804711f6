#include "spacing/separation.h"

#include "spacing/axis_solver.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace wallwright::spacing {

namespace {

constexpr double kPushEps = 1e-9;

/// The problem as AxisSolver takes it: all held variables are one, each at its own distance from
/// it.
struct OneHeld {
    std::vector<Variable> variables;
    std::vector<std::size_t> index;  // by variable of the caller
    std::vector<double> offset;      // likewise
};

OneHeld tie_held_together(std::span<const Variable> variables) {
    OneHeld result;
    std::size_t held = variables.size();
    for (std::size_t i = 0; i < variables.size(); ++i) {
        if (std::isinf(variables[i].weight) && held < variables.size()) {
            result.index.push_back(result.index[held]);
            result.offset.push_back(variables[i].wanted - variables[held].wanted);
            continue;
        }
        held = std::isinf(variables[i].weight) ? i : held;
        result.index.push_back(result.variables.size());
        result.offset.push_back(0);
        result.variables.push_back(variables[i]);
    }
    return result;
}

Separation between(const OneHeld& problem, const Separation& s) {
    return {problem.index[s.left], problem.index[s.right],
            s.gap + problem.offset[s.left] - problem.offset[s.right], s.equality};
}

Placement read(AxisSolver& solver, const OneHeld& problem, const std::vector<std::size_t>& kept) {
    Placement result;
    for (std::size_t i = 0; i < problem.index.size(); ++i) {
        result.at.push_back(solver.at(problem.index[i]) + problem.offset[i]);
    }
    result.cost = solver.cost();
    const std::vector<double> pushes = solver.pushes();
    for (std::size_t i = 0; i < pushes.size(); ++i) {
        if (std::abs(pushes[i]) > kPushEps) {
            result.active.push_back(kept[i]);
        }
    }
    std::ranges::sort(result.active);
    return result;
}

}  // namespace

Placement separate(std::span<const Variable> variables, std::span<const Separation> separations) {
    const OneHeld problem = tie_held_together(variables);
    std::vector<Separation> all;
    std::vector<std::size_t> kept;
    for (std::size_t i = 0; i < separations.size(); ++i) {
        all.push_back(between(problem, separations[i]));
        kept.push_back(i);
    }
    AxisSolver at_once(problem.variables);
    if (at_once.add_all(all)) {
        return read(at_once, problem, kept);
    }
    // Some cannot hold: which ones depends on who came first, so each is tried in its turn.
    AxisSolver one_by_one(problem.variables);
    std::vector<std::size_t> unsatisfiable;
    kept.clear();
    for (std::size_t i = 0; i < separations.size(); ++i) {
        if (one_by_one.add(between(problem, separations[i]))) {
            kept.push_back(i);
        } else {
            unsatisfiable.push_back(i);
        }
    }
    Placement result = read(one_by_one, problem, kept);
    result.unsatisfiable = std::move(unsatisfiable);
    return result;
}

}  // namespace wallwright::spacing
