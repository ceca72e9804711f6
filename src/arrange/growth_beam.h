// The search for a growth: piece after piece set against the group, many ways at once.
#pragma once

#include "arrange/growth_goal.h"
#include "arrange/view.h"
#include "base/random.h"

#include <cstdint>
#include <functional>
#include <tuple>
#include <vector>

namespace wallwright::arrange {

/// Beam search (Lowerre, The HARPY speech recognition system, 1976): of all ways to add the next
/// piece to each of the layouts at hand, the best few go on. Judged by the whole score where a
/// stage ends and by a glance at the neighbourhood between.
class GrowthBeam {
  public:
    /// As GrowthGoal; the task and its pieces outlive it.
    GrowthBeam(const Task& task, const WallRect& target, std::size_t per_stage);

    struct Round {
        std::size_t width = 1;  ///< Layouts that go on.
        double noise = 0;       ///< Points by which a glance errs at most.
        std::uint64_t seed = 1;
    };
    /// Runs until every layout has all pieces or no room for more, or until `go_on`, which is asked
    /// at every piece that is looked at, gives false: then the fullest so far count. Not before one
    /// piece is up, where any has a place.
    void run(const Round& round, const std::function<bool()>& go_on);

    /// The best growth so far: most pieces, then most points. In the order to hang them.
    [[nodiscard]] const Layout& best() const { return best_; }
    [[nodiscard]] double best_points() const { return best_points_; }
    /// True once a round came to its end: what is not in the best has no place there.
    [[nodiscard]] bool has_ended() const { return has_ended_; }
    /// True once a round has tried all there is.
    [[nodiscard]] bool has_tried_all() const { return has_tried_all_; }
    /// mm from the group that grows, with these pieces, to the target.
    [[nodiscard]] double to_target(std::span<const Spot> added) const;

  private:
    struct State {
        Layout added;
        GrowthPoints points;   ///< Of the stages that are complete.
        double glance = 0;     ///< Points of the pieces since.
        double to_target = 0;  ///< mm
        bool meets_others = false;
        [[nodiscard]] double rank() const { return points.value() + glance; }
    };
    struct Step {
        std::size_t from = 0;  ///< Index of the state.
        std::uint32_t item = 0;
        WallRect place;
        double rank = 0;
    };
    using Key = std::vector<std::tuple<std::uint32_t, double, double>>;

    /// False when it was stopped.
    bool find_steps(const State& state, std::size_t index, const std::function<bool()>& go_on);
    void look_around(const State& state, std::size_t index, std::uint32_t item);
    [[nodiscard]] std::vector<std::uint32_t> next_items(const State& state);
    std::vector<State> best_next(const std::vector<State>& states,
                                 const std::function<bool()>& go_on);
    State after(const State& state, const Step& step);
    void end_stage(State& state);
    void keep(State state);
    [[nodiscard]] Layout with_fixed(const Layout& fixed, const Layout& added) const;
    static Key key_of(const Layout& added);

    const Task& task_;
    GrowthGoal goal_;
    std::size_t per_stage_;
    Layout all_;  ///< What stays.
    std::vector<std::uint32_t> free_;
    View view_;
    Random random_;
    Round round_;
    Layout best_;
    double best_points_ = 0;
    bool has_ended_ = false;
    bool has_tried_all_ = false;
    bool left_some_ = false;
    std::vector<Step> steps_;
    std::vector<Step> around_;
    std::vector<WallRect> places_;
};

}  // namespace wallwright::arrange
