// The wall as the solver sees it: rectangles that slide along two axes and are kept apart pair by
// pair.
#pragma once

#include "geometry/rect.h"
#include "spacing/axis_solver.h"
#include "spacing/facing.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <vector>

namespace wallwright::spacing {

/// A piece or an obstacle. A piece keeps the gap to other pieces and may touch an obstacle.
struct Body {
    WallRect place;  ///< Where it is, and would like to stay.
    bool held = false;
    bool obstacle = false;
    std::uint32_t group = 0;
};

/// Where the first of a pair is, seen from the second.
enum class Side : std::uint8_t { left, right, below, above };
inline constexpr std::array<Side, 4> kSides{Side::left, Side::right, Side::below, Side::above};
constexpr Axis axis_of(Side side) {
    return side == Side::left || side == Side::right ? Axis::horizontal : Axis::vertical;
}

/// Two bodies, the first before the second in the layout's order.
struct Pair {
    std::uint32_t first = 0;
    std::uint32_t second = 0;
    auto operator<=>(const Pair&) const = default;
};

inline Pair pair_of(const Facing& facing) {
    const auto [low, high] = std::minmax(facing.first, facing.second);
    return {static_cast<std::uint32_t>(low), static_cast<std::uint32_t>(high)};
}

/// A pair that is nearer than it may be along both axes; `depth` mm would part it along one.
struct Conflict {
    Pair pair;
    double depth = 0;
};

/// What two bodies may have in line: the edges on the low side (left or below), the middles, the
/// edges on the high side.
enum class Line : std::uint8_t { low, centre, high };

/// Why a separation is there.
struct Cause {
    enum class Kind : std::uint8_t { kept_apart, even_gap, other_group, lined_up };
    Kind kind = Kind::kept_apart;
    Pair pair;
    double gap = 0;            ///< mm between facing edges; for kept_apart and even_gap.
    Line line = Line::centre;  ///< For lined_up.
};

/// One of the separations that cannot hold together, seen as a ring of distances that does not
/// close: those that run forward add up to more than those that run backward.
struct RingPart {
    Cause cause;
    double gap = 0;  ///< mm between the low edges, as in Separation.
    bool forward = false;
};

class Layout {
  public:
    struct Mark {
        AxisSolver::Mark x;
        AxisSolver::Mark y;
    };

    /// Pieces keep `gap` mm from each other, and `group_gap` mm from those of other groups.
    Layout(std::vector<Body> bodies, double gap, double group_gap);
    Layout(std::vector<Body> bodies, double gap) : Layout(std::move(bodies), gap, gap) {}

    [[nodiscard]] std::size_t size() const { return bodies_.size(); }
    [[nodiscard]] const Body& body(std::size_t index) const { return bodies_[index]; }
    /// Where the body is now.
    [[nodiscard]] WallRect place(std::size_t index) const;
    /// Sum over the bodies of the squared distance from where they would like to be, in mm2.
    [[nodiscard]] double cost() const { return x_.cost() + y_.cost(); }
    /// Bodies looked at so far, the same on every machine.
    [[nodiscard]] std::uint64_t work() const { return x_.work() + y_.work() + sweep_work_; }

    [[nodiscard]] double gap() const { return gap_; }
    /// The least distance of a pair in mm, along one axis or the other.
    [[nodiscard]] double distance(Pair pair) const;
    /// Lets a pair come nearer than its kind may; an infinite negative distance lets it be.
    void allow(Pair pair, double distance) { allowed_[pair] = distance; }

    /// How far the pair is from parted on this side, in mm; 0 or less when it is.
    [[nodiscard]] double shortfall(Pair pair, Side side) const;
    /// The pairs that are too near, in no particular order.
    void find_conflicts(std::vector<Conflict>& conflicts);
    /// The deepest of them.
    std::optional<Conflict> deepest_conflict();

    /// Parts a pair on a side for as long as the layout lasts, or until undone. False when that
    /// cannot be, or not at a cost below the limit; then nothing changes.
    bool part(Pair pair, Side side, double cost_limit = AxisSolver::kNoLimit);
    /// Any separation between the low edges of two bodies; false as with part().
    bool add(Axis axis, const Separation& separation, const Cause& cause,
             double cost_limit = AxisSolver::kNoLimit);
    /// After part() or add() without a limit gave false: what cannot hold together; first of all
    /// what was to be added, which runs forward.
    [[nodiscard]] std::vector<RingPart> ring(Axis axis) const;

    [[nodiscard]] AxisSolver& solver(Axis axis) { return axis == Axis::horizontal ? x_ : y_; }
    [[nodiscard]] const AxisSolver& solver(Axis axis) const {
        return axis == Axis::horizontal ? x_ : y_;
    }
    [[nodiscard]] Mark mark() const { return {x_.mark(), y_.mark()}; }
    void undo(const Mark& mark);

  private:
    [[nodiscard]] Separation from_the_wall(Axis axis, Separation separation) const;
    template <class Report>
    void sweep(Report report);
    void sort_by_left_edge();

    std::vector<Body> bodies_;
    std::vector<geometry::Size> sizes_;
    double gap_ = 0;
    double group_gap_ = 0;
    std::map<Pair, double> allowed_;
    std::array<std::vector<Cause>, 2> causes_;  // by axis and separation
    AxisSolver x_;  // a variable a body, and the wall itself as the last one
    AxisSolver y_;
    std::vector<std::uint32_t> by_left_edge_;
    std::uint64_t sweep_work_ = 0;
};

}  // namespace wallwright::spacing
