#include "desk/stage_view.h"

#include "desk/growth_target.h"

#include <algorithm>
#include <cmath>

namespace wallwright::desk {

namespace {

constexpr double kSecondsAStage = 1;

std::vector<wall::PieceId> added_in(const wall::Project& project, int stage) {
    std::vector<wall::PieceId> ids;
    for (const wall::Piece& piece : project.pieces)
        if (piece.stage == stage && piece.at)
            ids.push_back(piece.id);
    return ids;
}

bool is_same_place(const spacing::WallRect& a, const spacing::WallRect& b) {
    constexpr double kAsInFiles = 0.02;  // mm; places are kept to 0.01
    return std::abs(a.left() - b.left()) < kAsInFiles &&
           std::abs(a.bottom() - b.bottom()) < kAsInFiles;
}

/// Whether the wall has the stage as the search left it.
bool is_as_found(const arrange::Layout& now, const arrange::Stage& stage) {
    const auto is_there = [&stage](const arrange::Spot& spot) {
        return std::ranges::any_of(stage.layout, [&spot](const arrange::Spot& found) {
            return found.item == spot.item && is_same_place(found.place, spot.place);
        });
    };
    return now.size() == stage.layout.size() && std::ranges::all_of(now, is_there);
}

}  // namespace

void StageView::show(Session& session, int stage) {
    next_at_.reset();
    step(session, stage);
}

void StageView::step(Session& session, int stage) {
    const int whole = last(session);
    const int wanted = std::clamp(stage, 0, whole);
    if (wanted == whole)
        return leave(session);
    session.selection.clear();
    session.preview(arrange::at_stage(session.kept(), wanted));
    shown_ = wanted;
    version_ = session.version();
}

void StageView::leave(Session& session) {
    next_at_.reset();
    const bool is_ours = shown_ && session.version() == version_;
    shown_.reset();
    if (is_ours)
        session.drop_preview();
}

void StageView::play(Session& session, double now) {
    if (last(session) == 0)
        return;
    step(session, shown_.value_or(0));
    next_at_ = now + kSecondsAStage;
}

std::optional<double> StageView::due_in(double now) const {
    return next_at_ ? std::optional(std::max(0.0, *next_at_ - now)) : std::nullopt;
}

void StageView::follow(Session& session, double now) {
    if (shown_ && session.version() != version_) {
        shown_.reset();
        next_at_.reset();
    }
    if (shown_ && !session.selection.empty())
        leave(session);
    if (!next_at_ || now < *next_at_)
        return;
    next_at_ = now + kSecondsAStage;
    step(session, at(session) + 1);
}

const std::vector<StageFacts>& StageView::facts(const Session& session,
                                                const arrange::Growth* growth) {
    if (facts_version_ == session.kept_version())
        return facts_;
    facts_version_ = session.kept_version();
    facts_.clear();
    const wall::Project& kept = session.kept();
    const arrange::Task task = arrange::task_of(arrange::at_stage(kept, 0), session.catalogue(),
                                                arrange::Free::waiting_alone);
    for (int stage = 0; stage <= last(session); ++stage) {
        const wall::Project then = arrange::at_stage(kept, stage);
        const arrange::Layout layout = arrange::layout_of(then);
        StageFacts facts;
        if (stage > 0)
            facts.adds = added_in(then, stage);
        if (!layout.empty())
            facts.score = arrange::total_of(arrange::View(task, layout));
        facts.to_target = distance_to_target(then);
        const auto index = static_cast<std::size_t>(stage) - 1;
        if (growth != nullptr && stage > 0 && index < growth->stages.size() &&
            is_as_found(layout, growth->stages[index]))
            facts.finished = growth->stages[index].finished;
        facts_.push_back(std::move(facts));
    }
    return facts_;
}

}  // namespace wallwright::desk
