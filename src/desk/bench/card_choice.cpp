#include "desk/bench/card_choice.h"

#include "desk/essence.h"
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
    project = without_wall(std::move(project));
    for (wall::Piece& piece : project.pieces) {
        if (piece.state != wall::PieceState::hung)
            piece.state = wall::PieceState::waiting;
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

CardChoice::CardChoice() : plan_("Laying out the card", essence) {}

bool CardChoice::follow(Session& session, bool hold) {
    const std::uint64_t before = plan_.version();
    plan_.compare(session);
    if (!hold)
        plan_.take(session);
    if (!plan_.has_tried())
        plan_.begin([project = session.kept(), how = options](const Work::Tell& tell) {
            return planned(project, how, tell);
        });
    return plan_.version() != before;
}

void CardChoice::again() {
    ++options.seed;
    plan_.try_again();
}

bool CardChoice::take_off_stock(Session& session) {
    plan_.compare(session);
    if (is_stale())
        return false;
    const mounts::AfterCutting after = mounts::after_cutting(*plan());
    edits::CutCard cut{{}, after.left, after.cut};
    for (const mounts::AfterCutting::Used& one : after.used)
        cut.used.push_back({one.sheet, one.count});
    return session.apply("Take the cut card off the stock", edits::use_card(session.kept(), cut));
}

}  // namespace wallwright::desk
