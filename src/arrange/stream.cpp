#include "arrange/stream.h"

#include "arrange/evened.h"
#include "arrange/packed.h"
#include "arrange/settle.h"

#include <algorithm>

namespace wallwright::arrange {

namespace {

/// Tries of all kinds in a round of a dozen pieces; fewer for more.
constexpr std::uint64_t kTries = 24;
/// The free groups have more to find than the plans.
constexpr std::uint64_t kSalonTries = 4 * kTries;
constexpr std::uint64_t kRestartAfter = 400;
/// Points; evening a layout is worth no more on the whole.
constexpr double kNearTheBest = 2;

std::uint64_t tries_for(std::size_t pieces, std::uint64_t usual) {
    const std::size_t dozens = std::max<std::size_t>(1, pieces / 12);
    return std::max<std::uint64_t>(1, usual / (dozens * dozens));
}

}  // namespace

std::optional<Found> found_of(View& view, const Plan& plan) {
    const Task& task = view.task();
    const std::optional<Layout> block = lay_out(task, plan);
    if (!block)
        return std::nullopt;
    std::optional<Layout> settled = settle(task, *block);
    if (!settled)
        return std::nullopt;
    view.look(*settled);
    const std::size_t left_out = task.items.size() - settled->size();
    return Found{plan.pattern, std::move(*settled), total_of(view), left_out};
}

Stream::Stream(const Task& task, const std::vector<Tried>& first, std::optional<Pattern> only,
               std::uint64_t seed)
    : task_(&task), random_(seed), view_(task), free_(free_items(task).size()) {
    for (const Tried& tried : first) {
        auto walk = std::ranges::find(walks_, tried.plan.pattern, &Walk::pattern);
        if (walk == walks_.end())
            walk = walks_.insert(walks_.end(), Walk{tried.plan.pattern, {}, {}, -1, {}, -1, 0});
        walk->first.push_back(tried.plan);
        take(*walk, tried.plan, tried.found);
    }
    if (!only || *only == Pattern::salon) {
        open_salon({});
        open_salon(packed(task, random_).value_or(Layout{}));
    }
}

void Stream::open_salon(Layout start) {
    offer_best_of(salons_.emplace_back(*task_, random_.next(), std::move(start)));
}

/// Nothing where no piece found a place.
bool Stream::offer_best_of(const Salon& salon) {
    return salon.left_out() < free_ &&
           offer({Pattern::salon, salon.best(), salon.total(), salon.left_out()});
}

/// What comes near the best is evened too, since that may make it the best.
bool Stream::offer(const Found& found) {
    if (!elite_.offer(found))
        return false;
    if (found.left_out > 0 || found.total < evened_from_ - kNearTheBest)
        return true;
    const Found even = evened(*task_, found);
    elite_.offer(even);
    evened_from_ = std::max(evened_from_, even.total);
    return true;
}

bool Stream::try_plan(Walk& walk, const Plan& plan) {
    const std::optional<Found> found = found_of(view_, plan);
    return found && take(walk, plan, *found);
}

/// Keeps the plan as the walk's place when it is no worse, or a little.
bool Stream::take(Walk& walk, const Plan& plan, const Found& found) {
    const double tolerance = 0.3 * random_.uniform();
    if (found.total >= walk.total - tolerance) {
        walk.now = plan;
        walk.total = found.total;
    }
    ++walk.since_better;
    if (found.total > walk.best_total) {
        walk.best = plan;
        walk.best_total = found.total;
        walk.since_better = 0;
    }
    return offer(found);
}

void Stream::restart(Walk& walk) {
    walk.now = random_.below(2) == 0 ? walk.best : walk.first[random_.below(walk.first.size())];
    walk.total = -1;
    walk.since_better = 0;
    try_plan(walk, walk.now);
}

bool Stream::walk_plans() {
    bool better = false;
    for (Walk& walk : walks_) {
        if (walk.since_better > kRestartAfter)
            restart(walk);
        for (std::uint64_t i = 0; i < tries_for(task_->items.size(), kTries); ++i)
            better = try_plan(walk, changed(walk.now, random_)) || better;
    }
    return better;
}

bool Stream::run_salons() {
    bool better = false;
    for (Salon& salon : salons_) {
        const double before = salon.total();
        salon.run(tries_for(task_->items.size(), kSalonTries));
        if (salon.total() != before)
            better = offer_best_of(salon) || better;
    }
    return better;
}

bool Stream::round() {
    const bool plans = walk_plans();
    return run_salons() || plans;
}

}  // namespace wallwright::arrange
