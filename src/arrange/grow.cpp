#include "arrange/grow.h"

#include "arrange/finished.h"
#include "arrange/growth_beam.h"

#include <algorithm>
#include <chrono>

namespace wallwright::arrange {

namespace {

using Clock = std::chrono::steady_clock;

constexpr double kBeamShare = 0.7;           ///< Of the time; the rest goes to finished_of().
constexpr std::uint64_t kFinishTries = 240;  ///< A stage.

/// What is left of the time, and what the person says.
class Watch {
  public:
    Watch(const GrowOptions& options, const std::function<bool(double)>& go_on)
        : options_(options), go_on_(go_on) {}

    /// Asks the person; `done` counts the rounds so far.
    bool asks(std::uint64_t rounds) {
        const double of_rounds =
            part_of(static_cast<double>(rounds), static_cast<double>(options_.rounds));
        const double of_time = part_of(elapsed(), options_.seconds);
        done_ = std::clamp(std::max(of_rounds * kBeamShare, of_time), done_, 1.0);
        stopped_ = stopped_ || !go_on_(done_);
        return !stopped_;
    }
    [[nodiscard]] bool within(double share) const {
        return !stopped_ && elapsed() < share * options_.seconds;
    }
    [[nodiscard]] bool stopped() const { return stopped_; }

  private:
    /// All of it where there is nothing to do, or no time.
    static double part_of(double done, double whole) { return done < whole ? done / whole : 1; }
    [[nodiscard]] double elapsed() const {
        return std::chrono::duration<double>(Clock::now() - start_).count();
    }

    const GrowOptions& options_;
    const std::function<bool(double)>& go_on_;
    Clock::time_point start_ = Clock::now();
    double done_ = 0;
    bool stopped_ = false;
};

/// Narrow first, so that there is something at once; then wider, now and then with a blurred
/// glance.
GrowthBeam::Round round_of(std::uint64_t number, std::uint64_t seed) {
    constexpr std::size_t kWidths[] = {1, 4, 12, 50};
    constexpr double kBlur = 1.5;
    GrowthBeam::Round round;
    round.seed = Random(seed + number).next();
    if (number < std::size(kWidths)) {
        round.width = kWidths[number];
        return round;
    }
    const std::uint64_t later = number - std::size(kWidths);
    round.width = 25U << std::min<std::uint64_t>(later / 4, 5);
    round.noise = kBlur;
    return round;
}

/// The clock does not end the first round, so that all pieces have a place however little time.
void search(GrowthBeam& beam, const GrowOptions& options, Watch& watch) {
    beam.run(round_of(0, options.seed), [&] { return watch.asks(0); });
    for (std::uint64_t number = 1; number < options.rounds; ++number) {
        if (!watch.within(kBeamShare) || beam.has_tried_all())
            return;
        beam.run(round_of(number, options.seed),
                 [&] { return watch.asks(number) && watch.within(kBeamShare); });
    }
}

std::vector<Stage> stages_of(const Task& task, const GrowthBeam& beam, std::size_t per_stage) {
    std::vector<Stage> stages;
    Layout layout = fixed_part(task);
    const Layout& added = beam.best();
    for (std::size_t i = 0; i < added.size(); ++i) {
        if (i % per_stage == 0)
            stages.emplace_back();
        layout.push_back(added[i]);
        Stage& stage = stages.back();
        stage.adds.push_back(task.items[added[i].item].id);
        stage.layout = layout;
        stage.to_target = beam.to_target({added.data(), i + 1});
    }
    for (Stage& stage : stages)
        stage.score = score_of(View(task, stage.layout));
    return stages;
}

void say_how_finished(const Task& task, const GrowOptions& options, Watch& watch,
                      std::vector<Stage>& stages) {
    for (std::size_t i = 0; i < stages.size(); ++i) {
        const double share = kBeamShare + (1 - kBeamShare) * static_cast<double>(i + 1) /
                                              static_cast<double>(stages.size());
        const auto go_on = [&] { return watch.asks(options.rounds) && watch.within(share); };
        const double total = stages[i].score.total;
        const auto best =
            best_total_of_same(task, stages[i].layout, options.seed + i, kFinishTries, go_on);
        // What was stopped on the way has hardly looked, and would call the stage too good.
        if (best && !watch.stopped())
            stages[i].finished = *best > total ? total / *best : 1;
    }
}

}  // namespace

Growth grow(const Task& task, const WallRect& target, const GrowOptions& options,
            const std::function<bool(double)>& go_on) {
    Watch watch(options, go_on);
    GrowthBeam beam(task, target, options.per_stage);
    search(beam, options, watch);
    Growth growth;
    growth.stages = stages_of(task, beam, options.per_stage);
    growth.points = beam.best_points();
    growth.left_out = ids_left_out(task, beam.best());
    growth.cut_short = !beam.has_ended() && !growth.left_out.empty();
    say_how_finished(task, options, watch, growth.stages);
    return growth;
}

}  // namespace wallwright::arrange
