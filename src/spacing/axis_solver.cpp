#include "spacing/axis_solver.h"

#include "base/contract.h"
#include "spacing/first_ties.h"

#include <cmath>

namespace wallwright::spacing {

namespace {

constexpr double kShortfallEps = 1e-9;  // mm; less than this is rounding

}  // namespace

const AxisSolver::Pull AxisSolver::kNoPull{};

AxisSolver::AxisSolver(std::vector<Variable> variables)
    : variables_(std::move(variables)),
      separations_of_(variables_.size()),
      ties_of_(variables_.size()),
      is_moved_(variables_.size(), 0) {
    at_.reserve(variables_.size());
    for (std::uint32_t i = 0; i < variables_.size(); ++i) {
        WW_EXPECT(variables_[i].weight > 0, "every variable has a weight above 0");
        if (std::isinf(variables_[i].weight)) {
            WW_EXPECT(held_ == kNone, "at most one variable is held");
            held_ = i;
        }
        at_.push_back(variables_[i].wanted);
    }
}

bool AxisSolver::add(const Separation& separation, double cost_limit) {
    const Mark before = mark();
    append(separation);
    const auto added = static_cast<std::uint32_t>(separations_.size() - 1);
    const bool holds = shortfall(added) <= kShortfallEps;
    if (holds && separation.equality) {
        fasten(added);
    }
    if ((holds || enforce(added, cost_limit)) && settle(cost_limit)) {
        return true;
    }
    undo(before);
    return false;
}

bool AxisSolver::add_all(std::span<const Separation> separations) {
    const auto first = static_cast<std::uint32_t>(separations_.size());
    for (const Separation& separation : separations) {
        append(separation);
    }
    if (first == 0) {
        start_from(first_ties(variables_, separations));
    }
    for (std::uint32_t i = first; i < separations_.size(); ++i) {
        if (shortfall(i) > kShortfallEps && !enforce(i, kNoLimit)) {
            return false;
        }
    }
    return settle(kNoLimit);
}

/// Takes a guess of what holds exactly, and lets go of what would have to pull instead of push.
void AxisSolver::start_from(const std::vector<std::uint32_t>& ties) {
    for (const std::uint32_t separation : ties) {
        tie(separation);
    }
    std::vector<std::uint8_t> balanced(variables_.size(), 0);
    for (std::uint32_t root = 0; root < variables_.size(); ++root) {
        while (balanced[root] == 0) {
            walk(near_, root, kNone);
            place(near_, kNoPull);
            weigh(near_, kNoPull);
            if (let_go_of_pulling(near_)) {
                continue;
            }
            for (const Visit& visit : near_.visits) {
                balanced[visit.variable] = 1;
            }
        }
    }
}

/// Unties the inequality that pulls most; false when none pulls.
bool AxisSolver::let_go_of_pulling(const Block& block) {
    const Visit* worst = nullptr;
    for (const Visit& visit : block.visits) {
        const bool pulls =
            visit.edge != kNone && visit.push < 0 && !separations_[visit.edge].equality;
        if (pulls && (worst == nullptr || visit.push < worst->push)) {
            worst = &visit;
        }
    }
    if (worst == nullptr) {
        return false;
    }
    untie(worst->edge);
    return true;
}

void AxisSolver::undo(const Mark& mark) {
    while (changes_.size() > mark.changes) {
        const Change change = changes_.back();
        changes_.pop_back();
        switch (change.kind) {
            case Change::Kind::moved:
                at_[change.index] = change.before;
                break;
            case Change::Kind::tied:
                unlink(change.index);
                break;
            case Change::Kind::untied:
                link(change.index);
                break;
        }
    }
    while (separations_.size() > mark.separations) {
        separations_of_[separations_.back().left].pop_back();
        separations_of_[separations_.back().right].pop_back();
        separations_.pop_back();
        tied_.pop_back();
    }
    for (const std::uint32_t variable : moved_) {
        is_moved_[variable] = 0;
    }
    moved_.clear();
    cost_ = mark.cost;
}

void AxisSolver::keep() {
    changes_.clear();
}

std::vector<double> AxisSolver::pushes() {
    std::vector<double> result(separations_.size(), 0);
    std::vector<std::uint8_t> seen(variables_.size(), 0);
    for (std::uint32_t root = 0; root < variables_.size(); ++root) {
        if (seen[root] != 0) {
            continue;
        }
        walk(near_, root, kNone);
        weigh(near_, kNoPull);
        for (const Visit& visit : near_.visits) {
            seen[visit.variable] = 1;
            if (visit.edge != kNone) {
                result[visit.edge] = visit.push;
            }
        }
    }
    return result;
}

void AxisSolver::append(const Separation& separation) {
    WW_EXPECT(separation.left < variables_.size() && separation.right < variables_.size(),
              "a separation is between variables that exist");
    const auto index = static_cast<std::uint32_t>(separations_.size());
    separations_.push_back(separation);
    tied_.push_back(0);
    separations_of_[separation.left].push_back(index);
    separations_of_[separation.right].push_back(index);
}

/// How much is missing for the separation to hold; 0 or less when it holds.
double AxisSolver::shortfall(std::uint32_t separation) const {
    const Separation& s = separations_[separation];
    const double missing = at_[s.left] + s.gap - at_[s.right];
    return s.equality ? std::abs(missing) : missing;
}

/// The separation of the variable that fails by most; kNone when all hold.
std::uint32_t AxisSolver::worst_broken(std::uint32_t variable) const {
    std::uint32_t worst = kNone;
    double most = kShortfallEps;
    for (const std::uint32_t separation : separations_of_[variable]) {
        const double missing = tied_[separation] != 0 ? 0 : shortfall(separation);
        if (missing > most) {
            most = missing;
            worst = separation;
        }
    }
    return worst;
}

/// Enforces what no longer holds until all does. The cost only grows on the way, so passing the
/// limit ends it.
bool AxisSolver::settle(double cost_limit) {
    while (!moved_.empty()) {
        if (cost_ >= cost_limit) {
            return false;
        }
        const std::uint32_t variable = moved_.back();
        const std::uint32_t broken = worst_broken(variable);
        if (broken == kNone) {
            moved_.pop_back();
            is_moved_[variable] = 0;
        } else if (!enforce(broken, cost_limit)) {
            return false;
        }
    }
    return cost_ < cost_limit;
}

/// False when the separation contradicts others, or as soon as the cost is sure to pass the limit.
bool AxisSolver::enforce(std::uint32_t separation, double cost_limit) {
    Pull pull = pull_of(separation);
    if (missing(pull) < 0) {  // an equality whose ends are too far apart is pushed the other way
        turn(pull);
    }
    return carry_out(pull, cost_limit);
}

/// Ties an equality that holds already, in the place of an inequality where need be, so that what
/// is tied depends on the order of adding alone. One that follows from other equalities stays
/// untied.
void AxisSolver::fasten(std::uint32_t separation) {
    Pull pull = pull_of(separation);
    if (!carry_out(pull, kNoLimit)) {
        turn(pull);
        carry_out(pull, kNoLimit);
    }
}

AxisSolver::Pull AxisSolver::pull_of(std::uint32_t separation) const {
    const Separation& s = separations_[separation];
    Pull pull{static_cast<std::uint32_t>(s.left), static_cast<std::uint32_t>(s.right), s.gap};
    pull.separation = separation;
    return pull;
}

void AxisSolver::turn(Pull& pull) {
    std::swap(pull.left, pull.right);
    pull.gap = -pull.gap;
}

bool AxisSolver::carry_out(Pull& pull, double cost_limit) {
    const double cost_before = cost_;
    while (tied_[pull.separation] == 0) {
        walk(near_, pull.left, pull.right);
        if (near_.target == kNone) {
            walk(far_, pull.right, kNone);
            pull_apart(pull);
        } else if (!pull_within(pull)) {
            return false;
        }
        if (cost_before + pull.cost >= cost_limit) {
            return false;
        }
    }
    return true;
}

double AxisSolver::missing(const Pull& pull) const {
    return at_[pull.left] + pull.gap - at_[pull.right];
}

/// Both ends are in one block, so only a tie between them can give way: the one that pushes least
/// of those that push the same way. False when there is none.
bool AxisSolver::pull_within(Pull& pull) {
    weigh(near_, pull);
    const Visit* weakest = nullptr;
    const bool turned = separations_[pull.separation].left != pull.left;
    ring_.assign(1, {pull.separation, separations_[pull.separation].gap, !turned});
    for (std::uint32_t i = near_.target; near_.visits[i].edge != kNone;
         i = near_.visits[i].parent) {
        const Visit& visit = near_.visits[i];
        ring_.push_back({visit.edge, separations_[visit.edge].gap, !visit.right_end});
        const bool same_way = visit.right_end && !separations_[visit.edge].equality;
        if (same_way && (weakest == nullptr || visit.push < weakest->push)) {
            weakest = &visit;
        }
    }
    if (weakest == nullptr) {
        return false;
    }
    const double amount = std::max(0.0, weakest->push);
    pull.cost += amount * missing(pull);
    pull.amount += amount;
    untie(weakest->edge);
    return true;
}

/// The ends are in two blocks: they are pushed apart until the pull holds or a tie within one of
/// them gives way.
void AxisSolver::pull_apart(Pull& pull) {
    weigh(near_, pull);
    weigh(far_, pull);
    const double give = (near_.held == kNone ? 0.5 / near_.weight : 0) +
                        (far_.held == kNone ? 0.5 / far_.weight : 0);
    Stop stop{kNone, std::max(0.0, missing(pull)) / give};
    consider_stops(near_, true, stop);
    consider_stops(far_, false, stop);
    pull.cost += stop.amount * (missing(pull) - stop.amount * give / 2);
    pull.amount += stop.amount;
    if (stop.edge == kNone) {
        tie(pull.separation);
        place_joined(pull);
        return;
    }
    place(near_, pull);
    place(far_, pull);
    untie(stop.edge);
}

void AxisSolver::move(std::uint32_t variable, double to) {
    const double from = at_[variable];
    if (to == from) {
        return;
    }
    changes_.push_back({Change::Kind::moved, variable, from});
    at_[variable] = to;
    const double was_off = from - variables_[variable].wanted;
    const double is_off = to - variables_[variable].wanted;
    cost_ += variables_[variable].weight * (is_off * is_off - was_off * was_off);
    if (is_moved_[variable] == 0) {
        is_moved_[variable] = 1;
        moved_.push_back(variable);
    }
}

void AxisSolver::tie(std::uint32_t separation) {
    link(separation);
    changes_.push_back({Change::Kind::tied, separation, 0});
}

void AxisSolver::untie(std::uint32_t separation) {
    unlink(separation);
    changes_.push_back({Change::Kind::untied, separation, 0});
}

void AxisSolver::link(std::uint32_t separation) {
    tied_[separation] = 1;
    ties_of_[separations_[separation].left].push_back(separation);
    ties_of_[separations_[separation].right].push_back(separation);
}

void AxisSolver::unlink(std::uint32_t separation) {
    tied_[separation] = 0;
    std::erase(ties_of_[separations_[separation].left], separation);
    std::erase(ties_of_[separations_[separation].right], separation);
}

}  // namespace wallwright::spacing
