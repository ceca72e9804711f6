#include "spacing/layout.h"

#include "base/contract.h"
#include "spacing/rounding.h"

#include <algorithm>
#include <limits>
#include <numeric>

namespace wallwright::spacing {

namespace {

constexpr double kTooNearEps = 1e-7;  // mm; more than the solver's own rounding

std::vector<Variable> variables_along(const std::vector<Body>& bodies, Axis axis) {
    std::vector<Variable> variables;
    for (const Body& body : bodies) {
        variables.push_back({axis == Axis::horizontal ? body.place.min.x : body.place.min.y, 1});
    }
    variables.push_back({0, std::numeric_limits<double>::infinity()});
    return variables;
}

}  // namespace

Layout::Layout(std::vector<Body> bodies, double gap, double group_gap)
    : bodies_(std::move(bodies)),
      gap_(gap),
      group_gap_(group_gap),
      x_(variables_along(bodies_, Axis::horizontal)),
      y_(variables_along(bodies_, Axis::vertical)),
      by_left_edge_(bodies_.size()) {
    for (const Body& body : bodies_) {
        sizes_.push_back(body.place.size());
    }
    std::iota(by_left_edge_.begin(), by_left_edge_.end(), std::uint32_t{0});
}

WallRect Layout::place(std::size_t index) const {
    return WallRect::at({x_.at(index), y_.at(index)}, sizes_[index]);
}

double Layout::distance(Pair pair) const {
    if (!allowed_.empty()) {
        const auto own = allowed_.find(pair);
        if (own != allowed_.end()) {
            return own->second;
        }
    }
    const Body& first = bodies_[pair.first];
    const Body& second = bodies_[pair.second];
    if (first.obstacle || second.obstacle) {
        return 0;
    }
    return first.group == second.group ? gap_ : group_gap_;
}

double Layout::shortfall(Pair pair, Side side) const {
    const auto [a, b] = pair;
    switch (side) {
        case Side::left:
            return x_.at(a) + sizes_[a].width + distance(pair) - x_.at(b);
        case Side::right:
            return x_.at(b) + sizes_[b].width + distance(pair) - x_.at(a);
        case Side::below:
            return y_.at(a) + sizes_[a].height + distance(pair) - y_.at(b);
        case Side::above:
            return y_.at(b) + sizes_[b].height + distance(pair) - y_.at(a);
    }
    return 0;
}

void Layout::find_conflicts(std::vector<Conflict>& conflicts) {
    conflicts.clear();
    sweep([&conflicts](const Conflict& conflict) { conflicts.push_back(conflict); });
}

std::optional<Conflict> Layout::deepest_conflict() {
    std::optional<Conflict> deepest;
    sweep([&deepest](const Conflict& conflict) {
        if (!deepest || conflict.depth > deepest->depth ||
            (conflict.depth == deepest->depth && conflict.pair < deepest->pair)) {
            deepest = conflict;
        }
    });
    return deepest;
}

bool Layout::part(Pair pair, Side side, double cost_limit) {
    const bool first_is_low = side == Side::left || side == Side::below;
    const std::uint32_t low = first_is_low ? pair.first : pair.second;
    const std::uint32_t high = first_is_low ? pair.second : pair.first;
    const Axis axis = axis_of(side);
    const double size = axis == Axis::horizontal ? sizes_[low].width : sizes_[low].height;
    const double apart = distance(pair);
    const Cause::Kind kind = apart > gap_ ? Cause::Kind::other_group : Cause::Kind::kept_apart;
    return add(axis, {low, high, size + apart, false}, {kind, pair, apart, Line::centre},
               cost_limit);
}

bool Layout::add(Axis axis, const Separation& separation, const Cause& cause, double cost_limit) {
    AxisSolver& line = solver(axis);
    std::vector<Cause>& causes = causes_[static_cast<std::size_t>(axis)];
    causes.resize(line.separations().size());
    causes.push_back(cause);
    return line.add(from_the_wall(axis, separation), cost_limit - (cost() - line.cost()));
}

/// Held bodies are all one variable, the wall, each at its own distance from it.
Separation Layout::from_the_wall(Axis axis, Separation separation) const {
    const std::size_t wall = bodies_.size();
    if (bodies_[separation.left].held) {
        separation.gap += solver(axis).at(separation.left);
        separation.left = wall;
    }
    if (bodies_[separation.right].held) {
        separation.gap -= solver(axis).at(separation.right);
        separation.right = wall;
    }
    return separation;
}

std::vector<RingPart> Layout::ring(Axis axis) const {
    const AxisSolver& line = solver(axis);
    const std::vector<Cause>& causes = causes_[static_cast<std::size_t>(axis)];
    std::vector<RingPart> parts;
    for (const AxisSolver::RingPart& part : line.ring()) {
        parts.push_back({causes[part.separation], part.gap, part.forward});
    }
    const auto added = std::ranges::find(line.ring(), line.separations().size(),
                                         &AxisSolver::RingPart::separation);
    WW_EXPECT(added != line.ring().end(), "what could not be added is part of the ring");
    std::rotate(parts.begin(), parts.begin() + (added - line.ring().begin()), parts.end());
    if (!parts.front().forward) {
        for (RingPart& part : parts) {
            part.forward = !part.forward;
        }
    }
    return parts;
}

void Layout::undo(const Mark& mark) {
    x_.undo(mark.x);
    y_.undo(mark.y);
}

void Layout::sort_by_left_edge() {
    const auto before = [this](std::uint32_t a, std::uint32_t b) {
        return x_.at(a) != x_.at(b) ? x_.at(a) < x_.at(b) : a < b;
    };
    for (std::size_t i = 1; i < by_left_edge_.size();
         ++i) {  // nearly sorted already, so insertion is quickest
        const std::uint32_t moving = by_left_edge_[i];
        std::size_t to = i;
        for (; to > 0 && before(moving, by_left_edge_[to - 1]); --to) {
            by_left_edge_[to] = by_left_edge_[to - 1];
        }
        by_left_edge_[to] = moving;
    }
}

template <class Report>
void Layout::sweep(Report report) {
    sort_by_left_edge();
    sweep_work_ += size();
    for (std::size_t i = 0; i < by_left_edge_.size(); ++i) {
        const std::uint32_t a = by_left_edge_[i];
        const double reach = x_.at(a) + sizes_[a].width + group_gap_;
        for (std::size_t j = i + 1; j < by_left_edge_.size() && x_.at(by_left_edge_[j]) < reach;
             ++j) {
            const std::uint32_t b = by_left_edge_[j];
            const double y_depth = std::min(y_.at(a) + sizes_[a].height - y_.at(b),
                                            y_.at(b) + sizes_[b].height - y_.at(a));
            if (y_depth + group_gap_ <= kTooNearEps || (bodies_[a].held && bodies_[b].held)) {
                continue;
            }
            const double x_depth = std::min(x_.at(a) + sizes_[a].width - x_.at(b),
                                            x_.at(b) + sizes_[b].width - x_.at(a));
            const Pair pair{std::min(a, b), std::max(a, b)};
            const double depth = std::min(x_depth, y_depth) + distance(pair);
            if (depth > kTooNearEps) {
                report(Conflict{pair, without_rounding(depth)});
            }
        }
    }
}

}  // namespace wallwright::spacing
