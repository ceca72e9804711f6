#include "dense_quadratic.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>

namespace wallwright::spacing::test {

namespace {

constexpr double kHoldsEps = 1e-7;  // mm

using Rows = std::vector<Separation>;

Eigen::MatrixXd matrix_of(const Rows& rows, std::size_t variables) {
    Eigen::MatrixXd a = Eigen::MatrixXd::Zero(static_cast<Eigen::Index>(rows.size()),
                                              static_cast<Eigen::Index>(variables));
    for (std::size_t i = 0; i < rows.size(); ++i) {
        a(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(rows[i].left)) -= 1;
        a(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(rows[i].right)) += 1;
    }
    return a;
}

double worst_shortfall(std::span<const Separation> separations, const std::vector<double>& at) {
    double worst = 0;
    for (const Separation& s : separations) {
        const double missing = at[s.left] + s.gap - at[s.right];
        worst = std::max(worst, s.equality ? std::abs(missing) : missing);
    }
    return worst;
}

Eigen::VectorXd gradient_at(std::span<const Variable> variables, const std::vector<double>& at) {
    Eigen::VectorXd gradient(static_cast<Eigen::Index>(at.size()));
    for (std::size_t i = 0; i < at.size(); ++i) {
        gradient(static_cast<Eigen::Index>(i)) =
            2 * variables[i].weight * (at[i] - variables[i].wanted);
    }
    return gradient;
}

/// Equalities as two opposite inequalities, so that every multiplier is to be 0 or more.
Rows holding_rows(std::span<const Separation> separations, const std::vector<double>& at) {
    Rows rows;
    for (const Separation& s : separations) {
        if (std::abs(at[s.left] + s.gap - at[s.right]) > kHoldsEps)
            continue;
        rows.push_back(s);
        if (s.equality)
            rows.push_back({s.right, s.left, -s.gap, false});
    }
    return rows;
}

/// Non-negative least squares: min |m p - b| with p >= 0.
Eigen::VectorXd non_negative_least_squares(const Eigen::MatrixXd& m, const Eigen::VectorXd& b) {
    std::vector<Eigen::Index> free;
    Eigen::VectorXd p = Eigen::VectorXd::Zero(m.cols());
    for (int round = 0; round < 10 * static_cast<int>(m.cols()) + 10; ++round) {
        const Eigen::VectorXd wish = m.transpose() * (b - m * p);
        Eigen::Index best = -1;
        for (Eigen::Index i = 0; i < m.cols(); ++i)
            if (std::find(free.begin(), free.end(), i) == free.end() && wish(i) > 1e-9 &&
                (best < 0 || wish(i) > wish(best)))
                best = i;
        if (best < 0)
            break;
        free.push_back(best);
        while (true) {
            Eigen::MatrixXd part(m.rows(), static_cast<Eigen::Index>(free.size()));
            for (std::size_t k = 0; k < free.size(); ++k)
                part.col(static_cast<Eigen::Index>(k)) = m.col(free[k]);
            const Eigen::VectorXd s = part.completeOrthogonalDecomposition().solve(b);
            double step = 1;
            for (std::size_t k = 0; k < free.size(); ++k)
                if (s(static_cast<Eigen::Index>(k)) <= 0)
                    step = std::min(
                        step, p(free[k]) / (p(free[k]) - s(static_cast<Eigen::Index>(k)) + 1e-300));
            for (std::size_t k = 0; k < free.size(); ++k)
                p(free[k]) += step * (s(static_cast<Eigen::Index>(k)) - p(free[k]));
            if (step >= 1)
                break;
            std::erase_if(free, [&p](Eigen::Index i) {
                const bool spent = p(i) <= 1e-12;
                if (spent)
                    p(i) = 0;
                return spent;
            });
        }
    }
    return p;
}

/// The best placement with the given rows held exactly.
std::vector<double> best_on(const Rows& rows, std::span<const Variable> variables) {
    const auto n = static_cast<Eigen::Index>(variables.size());
    const auto m = static_cast<Eigen::Index>(rows.size());
    const Eigen::MatrixXd a = matrix_of(rows, variables.size());
    Eigen::MatrixXd kkt = Eigen::MatrixXd::Zero(n + m, n + m);
    Eigen::VectorXd right = Eigen::VectorXd::Zero(n + m);
    for (Eigen::Index i = 0; i < n; ++i) {
        const Variable& variable = variables[static_cast<std::size_t>(i)];
        kkt(i, i) = 2 * variable.weight;
        right(i) = 2 * variable.weight * variable.wanted;
    }
    kkt.block(0, n, n, m) = -a.transpose();
    kkt.block(n, 0, m, n) = a;
    for (Eigen::Index i = 0; i < m; ++i)
        right(n + i) = rows[static_cast<std::size_t>(i)].gap;
    const Eigen::VectorXd solution = kkt.completeOrthogonalDecomposition().solve(right);
    return {solution.data(), solution.data() + n};
}

double cost_of(std::span<const Variable> variables, const std::vector<double>& at) {
    double cost = 0;
    for (std::size_t i = 0; i < at.size(); ++i)
        cost += variables[i].weight * (at[i] - variables[i].wanted) * (at[i] - variables[i].wanted);
    return cost;
}

}  // namespace

Optimality optimality(std::span<const Variable> variables, std::span<const Separation> separations,
                      const std::vector<double>& at) {
    const Eigen::VectorXd gradient = gradient_at(variables, at);
    const Rows rows = holding_rows(separations, at);
    Optimality result;
    result.shortfall = worst_shortfall(separations, at);
    if (rows.empty()) {
        result.residual = gradient.lpNorm<Eigen::Infinity>();
        return result;
    }
    const Eigen::MatrixXd pushes_to_gradient = matrix_of(rows, at.size()).transpose();
    const Eigen::VectorXd pushes = non_negative_least_squares(pushes_to_gradient, gradient);
    result.residual = (pushes_to_gradient * pushes - gradient).lpNorm<Eigen::Infinity>();
    result.least_push = pushes.minCoeff();
    return result;
}

std::optional<std::vector<double>> optimum_by_enumeration(std::span<const Variable> variables,
                                                          std::span<const Separation> separations) {
    std::optional<std::vector<double>> best;
    double best_cost = 0;
    for (std::size_t chosen = 0; chosen < (std::size_t{1} << separations.size()); ++chosen) {
        Rows rows;
        for (std::size_t i = 0; i < separations.size(); ++i)
            if (separations[i].equality || ((chosen >> i) & 1U) != 0)
                rows.push_back(separations[i]);
        const std::vector<double> at = best_on(rows, variables);
        const double cost = cost_of(variables, at);
        if (worst_shortfall(separations, at) < kHoldsEps && (!best || cost < best_cost)) {
            best = at;
            best_cost = cost;
        }
    }
    return best;
}

}  // namespace wallwright::spacing::test
