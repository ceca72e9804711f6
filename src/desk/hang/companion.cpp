#include "desk/hang/companion.h"

#include "edits/pieces.h"
#include "edits/room.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace wallwright::desk {

namespace {

using wall::PieceId;
using wall::PieceState;
using wall::Project;

wall::Piece* piece_of(Project& project, const PieceId& id) {
    const auto found = std::ranges::find(project.pieces, id, &wall::Piece::id);
    return found == project.pieces.end() ? nullptr : &*found;
}

bool has(const std::vector<PieceId>& pieces, const PieceId& id) {
    return std::ranges::find(pieces, id) != pieces.end();
}

}  // namespace

void Companion::lay_down(Project& project) const {
    for (const auto& [id, stage] : today_)
        if (wall::Piece* piece = piece_of(project, id);
            piece != nullptr && piece->state == PieceState::hung) {
            piece->state = PieceState::planned;
            piece->stage = stage;
        }
}

void Companion::take_in(const Session& session) {
    followed_ = session.kept_version();
    ++version_;
    before_ = session.kept();
    hung_.clear();
    for (const auto& [id, stage] : today_)
        if (const wall::Piece* piece = wall::find(*before_, id);
            piece != nullptr && piece->state == PieceState::hung)
            hung_.push_back(id);
    lay_down(*before_);
    assessment_ = rules::assess(*before_, session.catalogue());
    stage_ = first_stage(*before_, assessment_);
    deeds_ = deeds_of(*before_, assessment_, stage_);
    today_.clear();
    for (const Deed& deed : deeds_)
        if (deed.kind == DeedKind::hang)
            today_.emplace_back(deed.piece, stage_);
    mark_done();
}

void Companion::follow(const Session& session) {
    if (followed_ == session.kept_version())
        return;
    std::vector<Deed> was_done;
    for (std::size_t i = 0; i < deeds_.size(); ++i)
        if (done_[i])
            was_done.push_back(deeds_[i]);
    const std::optional<Deed> looked_at = now() != nullptr ? std::optional(*now()) : std::nullopt;
    take_in(session);
    const auto is_again_open = [&](const Deed& deed) {
        return !done_[static_cast<std::size_t>(&deed - deeds_.data())] &&
               std::ranges::any_of(was_done, [&deed](const Deed& done) {
                   return done.kind == deed.kind && done.piece == deed.piece &&
                          done.what == deed.what;
               });
    };
    auto found = std::ranges::find_if(deeds_, is_again_open);
    if (found == deeds_.end() && looked_at)
        found = std::ranges::find_if(
            deeds_, [&looked_at](const Deed& deed) { return is_same(deed, *looked_at); });
    at_ = found != deeds_.end() ? static_cast<std::size_t>(found - deeds_.begin())
                                : next_open(deeds_.size());
}

bool Companion::hangs(const PieceId& piece) const {
    return has(hung_, piece);
}

bool Companion::is_ticked(const Deed& deed) const {
    return std::ranges::any_of(ticked_,
                               [&deed](const Deed& ticked) { return is_same(ticked, deed); });
}

void Companion::mark_done() {
    done_.clear();
    // Whatever was left out on the way, what hangs needs nothing more.
    for (const Deed& deed : deeds_)
        done_.push_back(hangs(deed.piece) || (deed.kind != DeedKind::hang && is_ticked(deed)));
    ++version_;
}

bool Companion::is_all_done() const {
    return std::ranges::find(done_, false) == done_.end();
}

std::size_t Companion::next_open(std::size_t from) const {
    for (std::size_t i = from + 1; i < deeds_.size(); ++i)
        if (!done_[i])
            return i;
    for (std::size_t i = 0; i < std::min(from, deeds_.size()); ++i)
        if (!done_[i])
            return i;
    return from < deeds_.size() && !done_[from] ? from : deeds_.size();
}

bool Companion::tick(Session& session) {
    if (now() == nullptr)
        return false;
    const Deed deed = *now();
    if (!done_[at_] && deed.kind == DeedKind::hang) {
        const PieceId ids[] = {deed.piece};
        if (!session.apply(fmt::format("Hang {}", wall::title_of(session.kept(), deed.piece)),
                           edits::set_state(session.kept(), ids, PieceState::hung)))
            return false;
        follow(session);
    } else if (!done_[at_]) {
        ticked_.push_back(deed);
        mark_done();
    }
    at_ = next_open(at_);
    ++version_;
    return true;
}

bool Companion::can_take_back() const {
    const Deed* deed = now();
    return deed != nullptr && done_[at_] && (deed->kind == DeedKind::hang || !hangs(deed->piece));
}

void Companion::take_back(Session& session) {
    if (!can_take_back())
        return;
    const Deed deed = *now();
    if (deed.kind != DeedKind::hang) {
        std::erase_if(ticked_, [&deed](const Deed& one) { return is_same(one, deed); });
        return mark_done();
    }
    const int stage = stage_;
    session.apply(fmt::format("{} is still to be hung", wall::title_of(session.kept(), deed.piece)),
                  edits::change_piece(session.kept(), deed.piece, [stage](wall::Piece& piece) {
                      piece.state = PieceState::planned;
                      piece.stage = stage;
                  }));
    follow(session);
}

void Companion::back() {
    at_ = std::min(at_, deeds_.size());
    if (at_ > 0)
        --at_;
    ++version_;
}

void Companion::skip() {
    at_ = next_open(at_);
    ++version_;
}

void Companion::go_to(std::size_t deed) {
    at_ = std::min(deed, deeds_.size());
    ++version_;
}

void Companion::again(Session& session) {
    if (!hung_.empty() &&
        !session.apply(
            "Hang all of today again",
            edits::change_project(session.kept(), [this](Project& project) { lay_down(project); })))
        return;
    ticked_.clear();
    follow(session);
    mark_done();
    at_ = 0;
}

void Companion::next_stage(const Session& session) {
    today_.clear();
    ticked_.clear();
    take_in(session);
    at_ = next_open(deeds_.size());
}

std::vector<UpToday> Companion::today() const {
    std::vector<UpToday> pieces;
    for (std::size_t i = 0; i < deeds_.size(); ++i) {
        const Deed& deed = deeds_[i];
        if (deed.kind == DeedKind::line)
            continue;
        if (pieces.empty() || pieces.back().piece != deed.piece)
            pieces.push_back({deed.piece, hangs(deed.piece), i});
        ++pieces.back().count;
        pieces.back().done += done_[i] ? 1 : 0;
    }
    return pieces;
}

std::vector<UpLater> Companion::later() const {
    std::map<int, std::vector<PieceId>> stages;
    if (!before_)
        return {};
    for (const hanging::Mark& mark : assessment_.marks.marks) {
        const wall::Piece* piece = wall::find(*before_, mark.piece);
        if (mark.stage > stage_ && piece != nullptr && !piece->wished &&
            !has(stages[mark.stage], mark.piece))
            stages[mark.stage].push_back(mark.piece);
    }
    std::vector<UpLater> later;
    for (auto& [stage, pieces] : stages)
        if (!pieces.empty())
            later.push_back({stage, std::move(pieces)});
    return later;
}

std::vector<PieceId> Companion::not_bought() const {
    std::vector<PieceId> pieces;
    if (before_)
        for (const wall::Piece& piece : before_->pieces)
            if (piece.state == PieceState::planned && piece.wished)
                pieces.push_back(piece.id);
    return pieces;
}

std::vector<PieceId> Companion::without_fixing() const {
    std::vector<PieceId> pieces;
    for (const hanging::Hanging& hanging : assessment_.hangings) {
        const wall::Piece* piece = wall::find(*before_, hanging.piece);
        if (hanging.fixings.empty() && piece != nullptr && piece->state == PieceState::planned &&
            !piece->wished)
            pieces.push_back(piece->id);
    }
    return pieces;
}

std::pair<std::size_t, std::size_t> Companion::mark_of_marks() const {
    std::pair<std::size_t, std::size_t> count{0, 0};
    for (std::size_t i = 0; i < deeds_.size(); ++i)
        if (deeds_[i].kind == DeedKind::mark) {
            ++count.second;
            count.first += i <= at_ ? 1 : 0;
        }
    return count;
}

std::pair<std::size_t, std::size_t> Companion::piece_of_pieces() const {
    const std::vector<UpToday> pieces = today();
    const auto count =
        std::ranges::count_if(pieces, [this](const UpToday& piece) { return piece.first <= at_; });
    return {static_cast<std::size_t>(count), pieces.size()};
}

}  // namespace wallwright::desk
