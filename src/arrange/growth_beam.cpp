#include "arrange/growth_beam.h"

#include "arrange/score.h"
#include "arrange/set_down.h"
#include "arrange/spots.h"
#include "arrange/standing.h"
#include "base/contract.h"

#include <algorithm>
#include <set>

namespace wallwright::arrange {

namespace {

// Our choices, by what the demo walls looked like.
constexpr double kGlance = 1;          ///< Points of the total that one of worth_of() counts as.
constexpr double kGlanceAhead = 0.5;   ///< Share of the goal's points that a glance counts.
constexpr std::size_t kPerSize = 4;    ///< Steps kept of one size from one layout.
constexpr std::size_t kPerState = 16;  ///< Steps kept from one layout.
constexpr std::size_t kJudged = 6;     ///< Steps judged for each layout that goes on.

/// Keeps the `count` best, in order.
template <class Steps>
bool keep_best(Steps& steps, std::size_t count) {
    const auto by_rank = [](const auto& a, const auto& b) {
        return std::tuple(-a.rank, a.from, a.item, a.place.min.x, a.place.min.y) <
               std::tuple(-b.rank, b.from, b.item, b.place.min.x, b.place.min.y);
    };
    std::ranges::sort(steps, by_rank);
    if (steps.size() <= count)
        return false;
    steps.resize(count);
    return true;
}

}  // namespace

GrowthBeam::GrowthBeam(const Task& task, const WallRect& target, std::size_t per_stage)
    : task_(task),
      goal_(task, target),
      per_stage_(per_stage),
      all_(fixed_part(task)),
      free_(free_items(task)),
      view_(task),
      random_(0) {
    WW_EXPECT(per_stage > 0, "a stage adds a piece at least");
}

double GrowthBeam::to_target(std::span<const Spot> added) const {
    double least = goal_.today();
    for (const Spot& spot : added)
        least = std::min(least, goal_.distance(spot.place));
    return least;
}

Layout GrowthBeam::with_fixed(const Layout& fixed, const Layout& added) const {
    Layout layout = fixed;
    layout.insert(layout.end(), added.begin(), added.end());
    return layout;
}

/// One of each size, and another by chance where there are several: they differ by colour alone.
std::vector<std::uint32_t> GrowthBeam::next_items(const State& state) {
    std::vector<std::vector<std::uint32_t>> sizes;
    for (const std::uint32_t item : free_) {
        if (std::ranges::find(state.added, item, &Spot::item) != state.added.end())
            continue;
        const auto same = std::ranges::find_if(sizes, [&](const auto& others) {
            return is_same_size(task_.items[others.front()].size, task_.items[item].size);
        });
        if (same == sizes.end())
            sizes.push_back({item});
        else
            same->push_back(item);
    }
    std::vector<std::uint32_t> items;
    for (const auto& same : sizes) {
        items.push_back(same.front());
        if (same.size() > 1)
            items.push_back(same[1 + random_.below(same.size() - 1)]);
        left_some_ = left_some_ || same.size() > 2;
    }
    return items;
}

void GrowthBeam::look_around(const State& state, std::size_t index, std::uint32_t item) {
    const Layout group = with_fixed(goal_.group(), state.added);
    touching_spots(task_, with_fixed(all_, state.added), item, places_);
    std::vector<Step> found;
    for (const WallRect& place : places_) {
        if (!touches(task_, group, place))
            continue;
        const double glance =
            kGlance * worth_of(task_, group, place) +
            kGlanceAhead * goal_.glance(state.to_target, place, state.added.size() + 1);
        found.push_back(
            {index, item, place, state.rank() + glance + round_.noise * random_.uniform(-1, 1)});
    }
    left_some_ = keep_best(found, round_.width == 1 ? 1 : kPerSize) || left_some_;
    around_.insert(around_.end(), found.begin(), found.end());
}

bool GrowthBeam::find_steps(const State& state, std::size_t index,
                            const std::function<bool()>& go_on) {
    around_.clear();
    bool goes_on = true;
    for (const std::uint32_t item : next_items(state)) {
        look_around(state, index, item);
        goes_on = goes_on && go_on();
        const bool has_any = !around_.empty() || !state.added.empty() || !best_.empty();
        if (!goes_on && has_any)
            break;
    }
    left_some_ = keep_best(around_, kPerState) || left_some_;
    steps_.insert(steps_.end(), around_.begin(), around_.end());
    return goes_on;
}

GrowthBeam::State GrowthBeam::after(const State& state, const Step& step) {
    State next = state;
    next.added.push_back({step.item, step.place});
    next.to_target = std::min(state.to_target, goal_.distance(step.place));
    next.glance += step.rank - state.rank();
    next.meets_others =
        state.meets_others ||
        (!goal_.others().empty() && distance_between(goal_.others(), step.place) <= task_.reach);
    if (next.added.size() % per_stage_ == 0)
        end_stage(next);
    return next;
}

void GrowthBeam::end_stage(State& state) {
    // Groups that the new pieces do not reach are no part of what the view counts.
    view_.look(with_fixed(state.meets_others ? all_ : goal_.group(), state.added));
    state.points.add(total_of(view_) + goal_.points(state.added, free_.size()));
    state.glance = 0;
}

GrowthBeam::Key GrowthBeam::key_of(const Layout& added) {
    Key key;
    for (const Spot& spot : added)
        key.emplace_back(spot.item, spot.place.min.x, spot.place.min.y);
    std::ranges::sort(key);
    return key;
}

std::vector<GrowthBeam::State> GrowthBeam::best_next(const std::vector<State>& states,
                                                     const std::function<bool()>& go_on) {
    left_some_ = keep_best(steps_, kJudged * round_.width) || left_some_;
    std::set<Key> known;
    std::vector<State> next;
    for (const Step& step : steps_) {
        if (!next.empty() && !go_on())
            break;
        State state = after(states[step.from], step);
        if (known.insert(key_of(state.added)).second)
            next.push_back(std::move(state));
    }
    std::ranges::stable_sort(next, std::greater<>{}, &State::rank);
    if (next.size() > round_.width) {
        next.resize(round_.width);
        left_some_ = true;
    }
    return next;
}

void GrowthBeam::keep(State state) {
    if (state.added.size() % per_stage_ != 0)
        end_stage(state);
    const double points = state.points.value();
    if (std::pair(state.added.size(), points) <= std::pair(best_.size(), best_points_))
        return;
    best_ = std::move(state.added);
    best_points_ = points;
}

void GrowthBeam::run(const Round& round, const std::function<bool()>& go_on) {
    round_ = round;
    random_ = Random(round.seed);
    left_some_ = false;
    State start;
    start.to_target = goal_.today();
    std::vector<State> states{start};
    bool stopped = false;
    const auto ask = [&] {
        stopped = stopped || !go_on();
        return !stopped;
    };
    while (!states.empty() && !stopped) {
        steps_.clear();
        for (std::size_t i = 0; i < states.size() && !stopped; ++i) {
            const std::size_t before = steps_.size();
            if (find_steps(states[i], i, ask) && steps_.size() == before)
                keep(states[i]);
        }
        const bool has_none = best_.empty() && states.front().added.empty();
        if (!stopped || has_none)
            states = best_next(states, ask);
    }
    for (const State& state : states)
        keep(state);
    has_ended_ = has_ended_ || !stopped;
    has_tried_all_ = has_tried_all_ || !(left_some_ || stopped);
}

}  // namespace wallwright::arrange
