#include "desk/match_choice.h"

#include "arrange/standard_frames.h"
#include "desk/broke_off.h"
#include "desk/match_moves.h"

#include <algorithm>
#include <utility>

namespace wallwright::desk {

namespace {

using mounts::Pair;
using wall::Project;

/// The project without what no match depends on.
Project essence(Project project) {
    project.title.clear();
    project.room = {};
    project.style = {};
    project.stock.clear();
    project.card.clear();
    project.kept_blanks.clear();
    project.mount_cut_price.reset();
    project.wishes.clear();
    project.target.reset();
    project.target_unknown.clear();
    project.weights.clear();
    project.datum = {};
    for (wall::Piece& piece : project.pieces) {
        if (!wall::is_fixed(piece))
            piece.state = wall::PieceState::waiting;
        piece.at.reset();
        piece.stage = 0;
    }
    return project;
}

std::vector<mounts::FrameOnOffer> frames_on_offer(const Project& project,
                                                  const wall::Catalogue& catalogue) {
    std::vector<mounts::FrameOnOffer> offered;
    for (const arrange::StandardFrame& one : arrange::standard_frames(project, catalogue))
        offered.push_back({one.size_name, one.frame});
    return offered;
}

template <class Id>
const Pair* pair_with(const std::optional<Matched>& found, Id Pair::*part, const Id& id) {
    if (!found)
        return nullptr;
    const auto pair = std::ranges::find(found->match.pairs, id, part);
    return pair == found->match.pairs.end() ? nullptr : &*pair;
}

}  // namespace

std::string MatchChoice::hindrance(const Session& session) {
    if (session.kept().prints.empty())
        return "There is no print yet. Add one with its size.";
    if (session.kept().pieces.empty())
        return "There is no frame yet. Add one in the step Pieces.";
    return "";
}

bool MatchChoice::follow(Session& session) {
    const std::uint64_t before = version_;
    compare(session);
    take_answer(session);
    const bool has_tried = about_ == now_;
    if (!work_ && is_stale() && !has_tried)
        begin(session);
    return version_ != before;
}

void MatchChoice::clear() {
    work_.reset();
    found_.reset();
    now_.reset();
    about_.reset();
    found_about_.reset();
    is_stale_ = false;
    compared_ = 0;
    ++version_;
}

void MatchChoice::compare(const Session& session) {
    if (compared_ == session.kept_version())
        return;
    compared_ = session.kept_version();
    now_ = essence(session.kept());
    compare_found();
}

void MatchChoice::compare_found() {
    if (const bool was_stale = std::exchange(is_stale_, found_about_ != now_);
        was_stale != is_stale_)
        ++version_;
}

void MatchChoice::take_answer(Session& session) {
    if (!work_)
        return;
    // In this order: what it says last is then taken too.
    const bool ended = !work_->is_running();
    if (std::optional<Matched> answer = work_->take()) {
        found_ = std::move(answer);
        found_about_ = about_;
        compare_found();
        ++version_;
    }
    if (!ended)
        return;
    if (const auto failure = work_->take_failure())
        session.notice = broke_off("Matching prints to frames", *failure);
    work_.reset();
    ++version_;
}

void MatchChoice::begin(const Session& session) {
    using Work = Background<Matched>;
    about_ = now_;
    work_ = std::make_unique<Work>();
    work_->start(
        [project = session.kept(), catalogue = session.catalogue()](const Work::Tell& tell) {
            Matched matched{mounts::match_prints(project), {}};
            if (tell(0.5, matched))
                matched.more = mounts::one_more_frame(project, frames_on_offer(project, catalogue));
            return matched;
        });
    ++version_;
}

const Pair* MatchChoice::pair_of(const wall::PrintId& print) const {
    return pair_with(found_, &Pair::print, print);
}

const Pair* MatchChoice::pair_of(const wall::PieceId& piece) const {
    return pair_with(found_, &Pair::piece, piece);
}

bool MatchChoice::changes_anything(const Session& session) const {
    return !is_stale() && !moves_of(session.kept(), found_->match).empty();
}

bool MatchChoice::take_all(Session& session) {
    compare(session);
    if (is_stale())
        return false;
    return session.apply("Put the prints where they match",
                         with_moves(session.kept(), moves_of(session.kept(), found_->match)));
}

bool MatchChoice::take(Session& session, const wall::PrintId& print) {
    compare(session);
    const Pair* pair = is_stale() ? nullptr : pair_of(print);
    if (pair == nullptr)
        return false;
    const wall::PieceId piece = pair->piece;
    return put_by_hand(session, print, piece);
}

}  // namespace wallwright::desk
