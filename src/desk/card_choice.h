// How the mounts of the open wall are cut from the card: the plan, and what a person does with it.
#pragma once

#include "desk/background.h"
#include "desk/session.h"
#include "mounts/card/card_plan.h"

#include <cstdint>
#include <memory>
#include <optional>

namespace wallwright::desk {

/// One a window. It is planned anew, on a thread of its own, whenever something has changed that
/// it depends on: a first plan at once, a better one while the person looks. Until then the plan
/// before stays, and is stale.
class CardChoice {
  public:
    /// Of the next plan. `only` is not used: all mounts are planned for.
    mounts::CardOptions options;

    /// Once a frame while it is looked at: takes the newest plan, begins anew when it is of another
    /// wall. While `hold`, as under a hand that drags, the plan stays. Tells when the work broke
    /// off. True when something became another.
    bool follow(Session& session, bool hold = false);
    /// What it has by now is the plan.
    void stop();
    /// Begins anew in the next follow(), with the next seed.
    void again();
    /// The view is left: what runs is given up, and begins anew when the view is back.
    void pause();
    /// Forgets everything, for another session.
    void clear();

    [[nodiscard]] bool is_running() const { return work_ && work_->is_running(); }
    [[nodiscard]] double done() const { return work_ ? work_->done() : 1; }  ///< 0 to 1.

    /// The last one; null before the first.
    [[nodiscard]] const mounts::CardPlan* plan() const { return plan_ ? &*plan_ : nullptr; }
    /// It is of another wall than the session's kept one, or there is none.
    [[nodiscard]] bool is_stale() const { return !plan_ || is_stale_; }
    /// Grows whenever plan() or is_stale() may have changed.
    [[nodiscard]] std::uint64_t version() const { return version_; }
    /// Grows with every other plan().
    [[nodiscard]] std::uint64_t plan_number() const { return plan_number_; }

    /// The sheets it uses are taken off the stock, and the offcuts worth keeping join it, as one
    /// step. Only while it is not stale. True when it was kept.
    bool take_off_stock(Session& session);

  private:
    void compare(const Session& session);
    void compare_plan();
    void take_answer(Session& session);
    void begin(const Session& session);

    std::unique_ptr<Background<mounts::CardPlan>> work_;
    std::optional<mounts::CardPlan> plan_;
    // Of each only what a plan depends on.
    std::optional<wall::Project> now_;         ///< The session's kept project,
    std::uint64_t compared_ = 0;               ///< of this version.
    std::optional<wall::Project> about_;       ///< What the last work began with.
    std::optional<wall::Project> plan_about_;  ///< What plan_ is of.
    bool is_stale_ = false;
    std::uint64_t version_ = 1;
    std::uint64_t plan_number_ = 0;
};

}  // namespace wallwright::desk
