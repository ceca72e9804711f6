#include "desk/layout_choice.h"

#include "base/contract.h"
#include "desk/broke_off.h"
#include "desk/essence.h"
#include "edits/wishes.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

namespace wallwright::desk {

namespace {

struct PatternWords {
    std::string_view title;
    std::string_view as;
};

/// In the order of arrange::Pattern.
constexpr PatternWords kPatterns[] = {{"Rows", "rows"},
                                      {"Spine", "a spine"},
                                      {"Columns", "columns"},
                                      {"Grid", "a grid"},
                                      {"Salon", "a salon group"}};
static_assert(std::size(kPatterns) == std::size(wall::Names<arrange::Pattern>::values));

const PatternWords& words_of(arrange::Pattern pattern) {
    return kPatterns[static_cast<std::size_t>(pattern)];
}

/// The project without what layouts do not depend on, or give.
wall::Project essence(wall::Project project) {
    project = without_aims(std::move(project));
    for (wall::Piece& piece : project.pieces) {
        if (wall::is_fixed(piece))
            continue;
        piece.state = wall::PieceState::waiting;
        piece.at.reset();
        piece.stage = 0;
    }
    return project;
}

bool is_on_wall(const wall::Project& project, const arrange::Task& task,
                const arrange::Candidate& candidate) {
    constexpr double kSame = 0.02;  // mm; an edit rounds to 0.01
    const auto waits = [&project](const wall::PieceId& id) {
        const wall::Piece* piece = wall::find(project, id);
        return piece != nullptr && !piece->at;
    };
    return std::ranges::all_of(candidate.left_out, waits) &&
           std::ranges::all_of(candidate.layout, [&](const arrange::Spot& spot) {
               const wall::Piece* piece = wall::find(project, task.items[spot.item].id);
               return piece != nullptr && piece->at &&
                      geometry::length(*piece->at - spot.place.min) < kSame;
           });
}

bool is_better(const RankedLayout& a, const RankedLayout& b) {
    if (a.candidate.left_out.size() != b.candidate.left_out.size())
        return a.candidate.left_out.size() < b.candidate.left_out.size();
    return a.total > b.total;
}

}  // namespace

std::string_view title_of(arrange::Pattern pattern) {
    return words_of(pattern).title;
}

std::string step_of(arrange::Pattern pattern) {
    return fmt::format("Arrange as {}", words_of(pattern).as);
}

std::string LayoutChoice::hindrance(const Session& session) {
    const wall::Project& project = session.kept();
    if (project.pieces.empty())
        return "Add a piece first";
    return std::ranges::all_of(project.pieces, wall::is_fixed)
               ? "No piece may move, since all hang already or are pinned"
               : "";
}

void LayoutChoice::search(Session& session) {
    WW_EXPECT(hindrance(session).empty(), "there is something to arrange");
    close(session);
    task_ = std::make_shared<const arrange::Task>(
        arrange::task_of(session.kept(), session.catalogue(), arrange::Free::all_unfixed));
    wall_ = essence(session.kept());
    if (std::exchange(has_searched_, true))
        ++options.seed;
    work_ = std::make_unique<Background<Found>>();
    work_->start([task = task_, how = options](const Background<Found>::Tell& tell) {
        return arrange::arrange(*task, how, [&tell](const arrange::Progress& progress) {
            return tell(progress.done, progress.best);
        });
    });
}

void LayoutChoice::stop() {
    if (work_)
        work_->finish();
}

void LayoutChoice::close(Session& session) {
    leave(session);
    work_.reset();
    task_.reset();
    wall_.reset();
    layouts_.clear();
    ranked_for_ = 0;
    stale_ = false;
}

void LayoutChoice::update(Session& session) {
    if (!is_open())
        return;
    if (shown_ && session.version() != shown_version_)
        shown_.reset();
    if (!shown_)
        take_found();
    tell_failure(session);
    if (is_open() && ranked_for_ != session.kept_version())
        rank(session);
}

void LayoutChoice::take_found() {
    std::optional<Found> found = work_->take();
    if (!found)
        return;
    layouts_.clear();
    for (arrange::Candidate& candidate : *found)
        layouts_.push_back({std::move(candidate), 0, false, layouts_.size()});
    ranked_for_ = 0;
}

void LayoutChoice::tell_failure(Session& session) {
    const std::optional<std::string> why = work_->take_failure();
    if (!why)
        return;
    session.notice = broke_off("The search for layouts", *why);
    if (layouts_.empty())
        close(session);
}

void LayoutChoice::rank(const Session& session) {
    const wall::Project& kept = session.kept();
    ranked_for_ = session.kept_version();
    stale_ = essence(kept) != *wall_;
    if (stale_ && is_searching())
        stop();
    const std::vector<double> weights = arrange::weights_of(kept);
    for (RankedLayout& layout : layouts_) {
        layout.total = arrange::total_with(layout.candidate.score, weights);
        layout.on_wall = !stale_ && is_on_wall(kept, *task_, layout.candidate);
    }
    std::ranges::stable_sort(layouts_, is_better);
}

void LayoutChoice::preview(Session& session, const RankedLayout& layout) {
    session.preview(arrange::with_layout(session.kept(), *task_, layout.candidate.layout));
    shown_ = layout.number;
    shown_version_ = session.version();
}

/// A key may come before the next frame and its update().
bool LayoutChoice::can_show(const Session& session, std::size_t rank) {
    if (is_open() && ranked_for_ != session.kept_version())
        this->rank(session);
    return !stale_ && rank < layouts_.size();
}

void LayoutChoice::show(Session& session, std::size_t rank) {
    if (can_show(session, rank) && shown() != rank)
        preview(session, layouts_[rank]);
}

void LayoutChoice::show_next(Session& session, int step) {
    if (layouts_.empty())
        return;
    const std::size_t count = layouts_.size();
    const std::optional<std::size_t> now = shown();
    const std::size_t first = step > 0 ? 0 : count - 1;
    show(session, now ? (*now + (step > 0 ? 1 : count - 1)) % count : first);
}

void LayoutChoice::leave(Session& session) {
    if (shown_ && session.version() == shown_version_)
        session.drop_preview();
    shown_.reset();
}

std::optional<std::size_t> LayoutChoice::shown() const {
    const auto found = std::ranges::find_if(
        layouts_, [this](const RankedLayout& layout) { return shown_ == layout.number; });
    if (found == layouts_.end())
        return std::nullopt;
    return static_cast<std::size_t>(found - layouts_.begin());
}

void LayoutChoice::take(Session& session, std::size_t rank) {
    if (!can_show(session, rank))
        return;
    // The choice is made among those that are there: no later ones take their place.
    work_ = std::make_unique<Background<Found>>();
    const arrange::Candidate& taken = layouts_[rank].candidate;
    auto arranged = arrange::with_layout(session.kept(), *task_, taken.layout);
    leave(session);
    session.apply(step_of(taken.pattern), std::move(arranged));
    update(session);
}

void LayoutChoice::set_weight(Session& session, const arrange::Measure& measure, double weight) {
    const std::optional<std::size_t> shown = shown_;
    const std::string name(measure.name);
    const auto kept = weight == measure.usual_weight ? std::nullopt : std::optional(weight);
    if (!session.apply(fmt::format("Weigh: {}", measure.title),
                       edits::set_weight(session.kept(), name, kept), "weight " + name) ||
        !is_open())
        return;
    rank(session);
    for (const RankedLayout& layout : layouts_)
        if (shown == layout.number && !stale_)
            preview(session, layout);
}

}  // namespace wallwright::desk
