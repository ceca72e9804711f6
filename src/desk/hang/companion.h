// The day at the wall: what is to be done, one thing after the other, and what of it is done.
#pragma once

#include "desk/hang/deed.h"
#include "desk/session.h"

#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

namespace wallwright::desk {

/// One of today's pieces.
struct UpToday {
    wall::PieceId piece;
    bool hangs = false;
    std::size_t first = 0;  ///< Its first deed,
    std::size_t count = 0;  ///< and how many it has.
    std::size_t done = 0;   ///< So many of them are.
};

/// Pieces of a later stage.
struct UpLater {
    int stage = 0;
    std::vector<wall::PieceId> pieces;
};

/// One a window, for as long as one wall is open. Today is the first stage that has pieces to hang.
/// A piece that went up today stays in the list, and marks keep the numbers that they had before,
/// as on the sheets that the person has in hand. That a piece hangs is never ticked but read off
/// the wall, so that undo and redo are told from it.
class Companion {
  public:
    /// Once a frame: what the wall's changes have left of the list. A deed that was done and is not
    /// any longer, because of an undo or because its place has moved, is where one goes on.
    void follow(const Session& session);
    /// Forgets everything, for another session.
    void clear() { *this = {}; }

    [[nodiscard]] const std::vector<Deed>& deeds() const { return deeds_; }
    [[nodiscard]] bool is_done(std::size_t deed) const { return done_[deed]; }
    [[nodiscard]] bool is_all_done() const;
    /// What is looked at: its index, and the deed; past the last and null where all is done or
    /// there is nothing to do.
    [[nodiscard]] std::size_t at() const { return at_; }
    [[nodiscard]] const Deed* now() const { return at_ < deeds_.size() ? &deeds_[at_] : nullptr; }

    /// What is looked at is done, and one goes on with the next that is not. A piece to be hung
    /// becomes hung, as one step of the history; false where that could not be.
    bool tick(Session& session);
    /// What is looked at can be said not to be done after all.
    [[nodiscard]] bool can_take_back() const;
    void take_back(Session& session);
    /// The deed before, done or not.
    void back();
    /// The next that is not done; this one stays to be done.
    void skip();
    void go_to(std::size_t deed);
    /// Nothing of today is done: its pieces are planned again, as one step of the history.
    void again(Session& session);
    /// Today is over; the next stage is today's.
    void next_stage(const Session& session);

    /// The wall as it was before the first of today's pieces went up, and what follows from it.
    [[nodiscard]] const std::optional<wall::Project>& before() const { return before_; }
    [[nodiscard]] const rules::Assessment& assessment() const { return assessment_; }
    [[nodiscard]] int stage() const { return stage_; }  ///< Today's; 0 for none.
    /// In the order of hanging.
    [[nodiscard]] std::vector<UpToday> today() const;
    [[nodiscard]] std::vector<UpLater> later() const;
    /// Planned, but not bought yet.
    [[nodiscard]] std::vector<wall::PieceId> not_bought() const;
    /// Planned and bought, but without a fixing that carries them.
    [[nodiscard]] std::vector<wall::PieceId> without_fixing() const;
    /// Marks of today, and how many of them come before or at what is looked at.
    [[nodiscard]] std::pair<std::size_t, std::size_t> mark_of_marks() const;
    /// The same of its pieces.
    [[nodiscard]] std::pair<std::size_t, std::size_t> piece_of_pieces() const;
    /// Grows whenever any of this may have changed.
    [[nodiscard]] std::uint64_t version() const { return version_; }

  private:
    [[nodiscard]] bool hangs(const wall::PieceId& piece) const;
    [[nodiscard]] bool is_ticked(const Deed& deed) const;
    [[nodiscard]] std::size_t next_open(std::size_t from) const;
    void take_in(const Session& session);
    void mark_done();
    /// The pieces of today that hang are planned as they were before.
    void lay_down(wall::Project& project) const;

    std::optional<wall::Project> before_;
    rules::Assessment assessment_;
    std::vector<Deed> deeds_;
    std::vector<bool> done_;
    std::vector<Deed> ticked_;
    /// Today's pieces, with their stages.
    std::vector<std::pair<wall::PieceId, int>> today_;
    std::vector<wall::PieceId> hung_;  ///< Those of them that hang by now.
    std::size_t at_ = 0;
    int stage_ = 0;
    std::uint64_t followed_ = 0;  ///< The session's kept version.
    std::uint64_t version_ = 1;
};

}  // namespace wallwright::desk
