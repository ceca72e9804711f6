// Growth as a person asks for it: toward what, how many pieces at a time, and the search for it.
#pragma once

#include "arrange/grow.h"
#include "desk/background.h"
#include "desk/session.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace wallwright::desk {

/// One a window. The search runs on a thread of its own and is about the wall as it was when it
/// began: it is given up when the wall becomes another.
class GrowthChoice {
  public:
    /// For the next search.
    arrange::GrowOptions options;

    /// Where the group is to grow, as one step; nothing to take the target away.
    static void set_target(Session& session, const std::optional<wall::Target>& target);

    /// Until the next press on the wall: that is to be the target.
    void ask_for_point() { wants_point_ = true; }
    void ask_for_no_point() { wants_point_ = false; }
    [[nodiscard]] bool wants_point() const { return wants_point_; }
    /// What was pressed, to a whole step of the hand and within the wall's bounds.
    void take_point(Session& session, geometry::Point<geometry::Wall> at);

    /// Why there can be no search now, in a few words; empty when there can. Pieces of an earlier
    /// growth that are planned count as waiting, since they are arranged anew; not pinned ones.
    [[nodiscard]] static std::string hindrance(const Session& session);
    /// There must be no hindrance.
    void start(const Session& session);
    /// The best so far is the answer.
    void stop(Session& session);
    /// There is no answer.
    void give_up() {
        search_.reset();
        wants_point_ = false;
    }
    [[nodiscard]] bool is_running() const { return search_ != nullptr; }
    [[nodiscard]] double done() const { return search_ ? search_->done() : 1; }

    /// Takes the answer when it is there: one step, "Grow toward Floor lamp". True then.
    bool follow(Session& session);

    /// Of the last search that became a step; null before.
    [[nodiscard]] const arrange::Growth* growth() const { return growth_ ? &*growth_ : nullptr; }

  private:
    using Search = Background<arrange::Growth>;

    void keep(Session& session, arrange::Growth growth);

    bool wants_point_ = false;
    std::unique_ptr<Search> search_;
    std::uint64_t version_ = 0;  ///< Of the wall that the search is about.
    wall::Project from_;         ///< As arrange::growth_start() gives it.
    arrange::Task task_;
    std::optional<arrange::Growth> growth_;
};

}  // namespace wallwright::desk
