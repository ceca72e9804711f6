// Which print goes into which frame: the best match of the open wall, and what a person takes of
// it.
#pragma once

#include "desk/followed.h"
#include "mounts/match/match.h"

#include <cstdint>
#include <string>
#include <vector>

namespace wallwright::desk {

/// A match, and what one more frame would solve.
struct Matched {
    mounts::Match match;
    std::vector<mounts::OneMore> more;
};

/// One a window. It is matched anew, on a thread of its own, whenever prints, frames or mounts have
/// changed; until that is done what was found before stays, and is stale.
class MatchChoice {
  public:
    MatchChoice();

    /// Why nothing can be matched, as a sentence; empty when it can.
    [[nodiscard]] static std::string hindrance(const Session& session);

    /// Once a frame while it is looked at: takes the answer when it is there, begins anew when it
    /// is of another wall. Tells when the work broke off. True when something became another.
    bool follow(Session& session);
    /// Forgets everything, for another session.
    void clear() { found_.clear(); }
    [[nodiscard]] bool is_running() const { return found_.is_running(); }

    /// The last one; null before the first. May speak of what is there no longer while is_stale().
    [[nodiscard]] const Matched* found() const {
        return found_.answer() ? &*found_.answer() : nullptr;
    }
    /// It is of another wall than the session's kept one, or there is none.
    [[nodiscard]] bool is_stale() const { return found_.is_stale(); }
    /// Grows whenever found() or is_stale() may have changed.
    [[nodiscard]] std::uint64_t version() const { return found_.version(); }
    /// Its pair with this print or piece, or null.
    [[nodiscard]] const mounts::Pair* pair_of(const wall::PrintId& print) const;
    [[nodiscard]] const mounts::Pair* pair_of(const wall::PieceId& piece) const;
    /// Some print is to go elsewhere, or some frame to be turned or emptied.
    [[nodiscard]] bool changes_anything(const Session& session) const;

    /// Every print where the match has it, as one step; frames that may move hang a quarter turn
    /// where that is better. Only while it is not stale. True when it was kept.
    bool take_all(Session& session);
    /// Only this print; what is in its new frame goes back into the drawer.
    bool take(Session& session, const wall::PrintId& print);

  private:
    Followed<Matched> found_;
};

}  // namespace wallwright::desk
