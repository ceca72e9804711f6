// How the mounts of the open wall are cut from the card: the plan, and what a person does with it.
#pragma once

#include "desk/followed.h"
#include "mounts/card/card_plan.h"

#include <cstdint>

namespace wallwright::desk {

/// One a window. It is planned anew, on a thread of its own, whenever something has changed that
/// it depends on: a first plan at once, a better one while the person looks. Until then the plan
/// before stays, and is stale.
class CardChoice {
  public:
    /// Of the next plan. `only` is not used: all mounts are planned for.
    mounts::CardOptions options;

    CardChoice();

    /// Once a frame while it is looked at: takes the newest plan, begins anew when it is of another
    /// wall. While `hold`, as under a hand that drags, the plan stays. Tells when the work broke
    /// off. True when something became another.
    bool follow(Session& session, bool hold = false);
    /// What it has by now is the plan.
    void stop() { plan_.finish(); }
    /// Begins anew in the next follow(), with the next seed.
    void again();
    /// The view is left: what runs is given up, and begins anew when the view is back.
    void pause() { plan_.give_up(); }
    /// Forgets everything, for another session.
    void clear() { plan_.clear(); }

    [[nodiscard]] bool is_running() const { return plan_.is_running(); }
    [[nodiscard]] double done() const { return plan_.done(); }  ///< 0 to 1.

    /// The last one; null before the first.
    [[nodiscard]] const mounts::CardPlan* plan() const {
        return plan_.answer() ? &*plan_.answer() : nullptr;
    }
    /// It is of another wall than the session's kept one, or there is none.
    [[nodiscard]] bool is_stale() const { return plan_.is_stale(); }
    /// Grows whenever plan() or is_stale() may have changed.
    [[nodiscard]] std::uint64_t version() const { return plan_.version(); }
    /// Grows with every other plan().
    [[nodiscard]] std::uint64_t plan_number() const { return plan_.number(); }

    /// The sheets it uses are taken off the stock, and the offcuts worth keeping join it, as one
    /// step. Only while it is not stale. True when it was kept.
    bool take_off_stock(Session& session);

  private:
    Followed<mounts::CardPlan> plan_;
};

}  // namespace wallwright::desk
