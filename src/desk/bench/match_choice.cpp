#include "desk/bench/match_choice.h"

#include "arrange/standard_frames.h"
#include "desk/bench/match_moves.h"
#include "desk/essence.h"

#include <algorithm>
#include <utility>

namespace wallwright::desk {

namespace {

using mounts::Pair;
using wall::Project;

/// The project without what no match depends on.
Project essence(Project project) {
    project = without_wall(std::move(project));
    project.card.clear();
    project.kept_blanks.clear();
    project.mount_cut_price.reset();
    for (wall::Piece& piece : project.pieces)
        if (!wall::is_fixed(piece))
            piece.state = wall::PieceState::waiting;
    return project;
}

std::vector<mounts::FrameOnOffer> frames_on_offer(const Project& project,
                                                  const wall::Catalogue& catalogue) {
    std::vector<mounts::FrameOnOffer> offered;
    for (const arrange::StandardFrame& one : arrange::standard_frames(project, catalogue))
        offered.push_back({one.size_name, one.frame});
    return offered;
}

/// The match is a first answer, before it is said what one more frame would solve.
Matched matched(const Project& project, const wall::Catalogue& catalogue,
                const Followed<Matched>::Work::Tell& tell) {
    Matched all{mounts::match_prints(project), {}};
    if (tell(0.5, all))
        all.more = mounts::one_more_frame(project, frames_on_offer(project, catalogue));
    return all;
}

template <class Id>
const Pair* pair_with(const Matched* found, Id Pair::*part, const Id& id) {
    if (found == nullptr)
        return nullptr;
    const auto pair = std::ranges::find(found->match.pairs, id, part);
    return pair == found->match.pairs.end() ? nullptr : &*pair;
}

}  // namespace

MatchChoice::MatchChoice() : found_("Matching prints to frames", essence) {}

std::string MatchChoice::hindrance(const Session& session) {
    if (session.kept().prints.empty())
        return "There is no print yet. Add one with its size.";
    if (session.kept().pieces.empty())
        return "There is no frame yet. Add one in the step Pieces.";
    return "";
}

bool MatchChoice::follow(Session& session) {
    using Tell = Followed<Matched>::Work::Tell;
    const std::uint64_t before = found_.version();
    found_.compare(session);
    found_.take(session);
    if (!found_.is_at_work() && is_stale() && !found_.has_tried())
        found_.begin([project = session.kept(), catalogue = session.catalogue()](const Tell& tell) {
            return matched(project, catalogue, tell);
        });
    return found_.version() != before;
}

const Pair* MatchChoice::pair_of(const wall::PrintId& print) const {
    return pair_with(found(), &Pair::print, print);
}

const Pair* MatchChoice::pair_of(const wall::PieceId& piece) const {
    return pair_with(found(), &Pair::piece, piece);
}

bool MatchChoice::changes_anything(const Session& session) const {
    return !is_stale() && !moves_of(session.kept(), found()->match).empty();
}

bool MatchChoice::take_all(Session& session) {
    found_.compare(session);
    if (is_stale())
        return false;
    return session.apply("Put the prints where they match",
                         with_moves(session.kept(), moves_of(session.kept(), found()->match)));
}

bool MatchChoice::take(Session& session, const wall::PrintId& print) {
    found_.compare(session);
    const Pair* pair = is_stale() ? nullptr : pair_of(print);
    if (pair == nullptr)
        return false;
    const wall::PieceId piece = pair->piece;
    return put_by_hand(session, print, piece);
}

}  // namespace wallwright::desk
