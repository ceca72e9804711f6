// One axis of the wall, solved anew after every separation that is added, and as it was after one
// is taken back.
#pragma once

#include "spacing/separation.h"

#include <cstdint>
#include <limits>
#include <vector>

namespace wallwright::spacing {

/// Keeps the placement of least cost for the separations added so far. A dual active-set method:
/// the separations that hold exactly tie variables into blocks (trees); a broken separation pushes
/// its two blocks apart until it holds, and on the way lets go of each separation whose push has
/// fallen to nothing. The cost grows with every step, so it ends, and each state between steps is
/// the best for what has been added. Blocks after Dwyer, Marriott, Stuckey, Fast Node Overlap
/// Removal (GD 2005); steps after Goldfarb, Idnani, A numerically stable dual method for solving
/// strictly convex quadratic programs (Mathematical Programming 27, 1983).
class AxisSolver {
  public:
    static constexpr double kNoLimit = std::numeric_limits<double>::infinity();

    /// A state to come back to. Marks are taken back in the reverse order of taking.
    struct Mark {
        std::size_t separations = 0;
        std::size_t changes = 0;
        double cost = 0;
    };

    /// An infinite weight holds a variable where it is wanted; at most one variable may have it.
    explicit AxisSolver(std::vector<Variable> variables);

    /// Adds one separation. False when it cannot hold with the others, or not at a cost below the
    /// limit: then nothing has changed.
    bool add(const Separation& separation, double cost_limit = kNoLimit);
    /// Adds many at once, faster than one by one. False when they cannot all hold; then only undo()
    /// is of use.
    bool add_all(std::span<const Separation> separations);

    /// One of a ring of separations that adds up to more than nothing and so cannot hold.
    struct RingPart {
        std::size_t separation = 0;  ///< Index in order of adding; that of the new one is the last.
        double gap = 0;
        bool forward = false;  ///< The ring runs over it from left to right.
    };
    /// After add() without a limit gave false: the ring that the new separation would have closed.
    [[nodiscard]] const std::vector<RingPart>& ring() const { return ring_; }

    [[nodiscard]] Mark mark() const { return {separations_.size(), changes_.size(), cost_}; }
    void undo(const Mark& mark);
    /// Forgets how to undo: a state that is kept for good needs no way back.
    void keep();

    [[nodiscard]] double at(std::size_t variable) const { return at_[variable]; }
    [[nodiscard]] double cost() const { return cost_; }
    [[nodiscard]] const std::vector<Separation>& separations() const { return separations_; }
    /// The multiplier of every separation; 0 when it does not hold exactly.
    [[nodiscard]] std::vector<double> pushes();

    /// Variables looked at since construction: a measure of work that is the same on every machine.
    [[nodiscard]] std::uint64_t work() const { return work_; }

  private:
    static constexpr std::uint32_t kNone = 0xFFFFFFFF;

    /// One variable of a block, reached over `edge` from an earlier one.
    struct Visit {
        std::uint32_t variable = kNone;
        std::uint32_t parent = kNone;  ///< Index into the visits.
        std::uint32_t edge = kNone;    ///< A separation that holds exactly.
        bool right_end = false;        ///< The variable is at the right end of `edge`.
        double offset = 0;             ///< From the root.
        double gradient = 0;           ///< Of this variable and all reached over it.
        double weight = 0;  ///< Likewise; in a held block 1 with the held variable and 0 without.
        double push = 0;    ///< The multiplier of `edge`.
    };
    struct Block {
        std::vector<Visit> visits;  ///< Parents before children.
        double weight = 0;
        std::uint32_t held = kNone;    ///< The visit of the held variable.
        std::uint32_t target = kNone;  ///< The visit of the variable that was looked for.
    };
    /// A separation on its way to hold: it pushes `left` and `right` apart by `amount`.
    struct Pull {
        std::uint32_t left = kNone;
        std::uint32_t right = kNone;
        double gap = 0;
        double amount = 0;
        double cost = 0;  ///< What the pull has surely added to the cost (the dual's growth).
        std::uint32_t separation = kNone;
    };
    static const Pull kNoPull;
    /// The separation that stops a pull first, and by how much the pull may still grow.
    struct Stop {
        std::uint32_t edge = kNone;
        double amount = 0;
    };
    struct Change {
        enum class Kind : std::uint8_t { moved, tied, untied } kind = Kind::moved;
        std::uint32_t index = 0;
        double before = 0;
    };

    void append(const Separation& separation);
    [[nodiscard]] double shortfall(std::uint32_t separation) const;
    [[nodiscard]] std::uint32_t worst_broken(std::uint32_t variable) const;
    bool settle(double cost_limit);
    void start_from(const std::vector<std::uint32_t>& ties);
    bool let_go_of_pulling(const Block& block);
    bool enforce(std::uint32_t separation, double cost_limit);
    void fasten(std::uint32_t separation);
    [[nodiscard]] Pull pull_of(std::uint32_t separation) const;
    static void turn(Pull& pull);
    bool carry_out(Pull& pull, double cost_limit);
    bool pull_within(Pull& pull);
    void pull_apart(Pull& pull);

    [[nodiscard]] double missing(const Pull& pull) const;
    void walk(Block& block, std::uint32_t root, std::uint32_t target);
    [[nodiscard]] double moment(const Block& block, const Pull& pull) const;
    [[nodiscard]] double root_if_held(const Block& block) const;
    void place(const Block& block, const Pull& pull);
    void place_joined(const Pull& pull);
    void place_root(const Block& block, double root_at);
    void weigh(Block& block, const Pull& pull);
    void consider_stops(const Block& block, bool losing_end, Stop& stop) const;

    void move(std::uint32_t variable, double to);
    void tie(std::uint32_t separation);
    void untie(std::uint32_t separation);
    void link(std::uint32_t separation);
    void unlink(std::uint32_t separation);

    std::vector<Variable> variables_;
    std::vector<double> at_;
    double cost_ = 0;
    std::uint32_t held_ = kNone;
    std::vector<Separation> separations_;
    std::vector<std::uint8_t> tied_;                          // by separation
    std::vector<std::vector<std::uint32_t>> separations_of_;  // by variable
    std::vector<std::vector<std::uint32_t>> ties_of_;         // by variable
    std::vector<Change> changes_;
    std::vector<std::uint32_t> moved_;  // since the separations were last looked through
    std::vector<std::uint8_t> is_moved_;
    std::vector<RingPart> ring_;
    std::uint64_t work_ = 0;
    Block near_;
    Block far_;
};

}  // namespace wallwright::spacing
