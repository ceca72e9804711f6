#include "desk/card_choice.h"

#include "desk/broke_off.h"
#include "edits/card.h"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <map>
#include <utility>
#include <vector>

namespace wallwright::desk {

namespace {

using mounts::CardPlan;
using wall::Project;
using Work = Background<CardPlan>;

/// The project without what no plan depends on.
Project essence(Project project) {
    project.title.clear();
    project.room = {};
    project.style = {};
    project.stock.clear();
    project.wishes.clear();
    project.target.reset();
    project.target_unknown.clear();
    project.weights.clear();
    project.datum = {};
    for (wall::Piece& piece : project.pieces) {
        if (piece.state != wall::PieceState::hung)
            piece.state = wall::PieceState::waiting;
        piece.at.reset();
        piece.stage = 0;
        piece.pinned = false;
        piece.keeps_print = false;
        piece.weighed.reset();
        piece.fixing.reset();
        piece.hanger = {};
    }
    return project;
}

/// How many cards there may be at most to lay out one after the other.
double card_count(const Project& project) {
    std::vector<std::pair<wall::Layer, wall::Colour>> cards;
    const auto add = [&cards](const wall::Layer& card, wall::Colour colour) {
        const std::pair one{card, colour};
        if (std::ranges::find(cards, one) == cards.end())
            cards.push_back(one);
    };
    for (const wall::Mount& mount : project.mounts) {
        add(mount.card, mount.colour);
        for (const wall::UnderLayer& layer : mount.under)
            add(layer.card, layer.colour);
    }
    return static_cast<double>(std::max<std::size_t>(cards.size(), 1));
}

/// A short look gives the first plan, all the time the answer. How far it is goes by the clock.
CardPlan planned(const Project& project, const mounts::CardOptions& options,
                 const Work::Tell& tell) {
    using Clock = std::chrono::steady_clock;
    constexpr double kShort = 0.1;  // of the time
    const auto start = Clock::now();
    const double all = std::max(0.01, (1 + kShort) * options.seconds * card_count(project));
    const auto go_on = [&](std::optional<CardPlan> first) {
        const double past = std::chrono::duration<double>(Clock::now() - start).count();
        return tell(std::min(past / all, 1.0), std::move(first));
    };
    mounts::CardOptions glance = options;
    glance.seconds *= kShort;
    if (options.rounds > 0)
        glance.rounds = 1;
    CardPlan first = mounts::plan_card(project, glance, [&] { return go_on(std::nullopt); });
    if (!go_on(first))
        return first;
    return mounts::plan_card(project, options, [&] { return go_on(std::nullopt); });
}

}  // namespace

bool CardChoice::follow(Session& session, bool hold) {
    const std::uint64_t before = version_;
    compare(session);
    if (!hold)
        take_answer(session);
    const bool has_tried = about_ == now_;
    if (!has_tried)
        begin(session);
    return version_ != before;
}

void CardChoice::stop() {
    if (work_)
        work_->finish();
}

void CardChoice::again() {
    ++options.seed;
    about_.reset();
}

void CardChoice::pause() {
    if (!work_)
        return;
    work_.reset();
    about_.reset();
    ++version_;
}

void CardChoice::clear() {
    work_.reset();
    plan_.reset();
    ++plan_number_;
    now_.reset();
    about_.reset();
    plan_about_.reset();
    is_stale_ = false;
    compared_ = 0;
    ++version_;
}

void CardChoice::compare(const Session& session) {
    if (compared_ == session.kept_version())
        return;
    compared_ = session.kept_version();
    now_ = essence(session.kept());
    compare_plan();
}

void CardChoice::compare_plan() {
    if (const bool was_stale = std::exchange(is_stale_, plan_about_ != now_);
        was_stale != is_stale_)
        ++version_;
}

void CardChoice::take_answer(Session& session) {
    if (!work_)
        return;
    // In this order: what it says last is then taken too.
    const bool ended = !work_->is_running();
    if (std::optional<CardPlan> answer = work_->take()) {
        plan_ = std::move(answer);
        ++plan_number_;
        plan_about_ = about_;
        compare_plan();
        ++version_;
    }
    if (!ended)
        return;
    if (const auto failure = work_->take_failure())
        session.notice = broke_off("Laying out the card", *failure);
    work_.reset();
    ++version_;
}

void CardChoice::begin(const Session& session) {
    about_ = now_;
    work_ = std::make_unique<Work>();
    work_->start([project = session.kept(), how = options](const Work::Tell& tell) {
        return planned(project, how, tell);
    });
    ++version_;
}

bool CardChoice::take_off_stock(Session& session) {
    compare(session);
    if (is_stale())
        return false;
    const mounts::AfterCutting after = mounts::after_cutting(*plan_);
    std::vector<edits::UsedCard> used;
    for (const mounts::AfterCutting::Used& one : after.used)
        used.push_back({one.sheet, one.count});
    return session.apply("Take the cut card off the stock",
                         edits::use_card(session.kept(), used, after.left));
}

}  // namespace wallwright::desk
