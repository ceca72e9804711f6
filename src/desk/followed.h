// A slow answer about the open wall, asked for anew whenever the wall is another.
#pragma once

#include "desk/background.h"
#include "desk/broke_off.h"
#include "desk/session.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string_view>
#include <utility>

namespace wallwright::desk {

/// Until another answer is there the one before stays, and is stale.
template <class Answer>
class Followed {
  public:
    using Work = Background<Answer>;
    /// The project without what no answer depends on.
    using Essence = wall::Project (*)(wall::Project);

    /// `name` as in "Laying out the card", for when it breaks off.
    Followed(std::string_view name, Essence essence) : name_(name), essence_(essence) {}

    /// With the session's kept project.
    void compare(const Session& session) {
        if (compared_ == session.kept_version())
            return;
        compared_ = session.kept_version();
        now_ = essence_(session.kept());
        compare_answer();
    }
    /// The newest answer, where there is one. Tells when the work broke off.
    void take(Session& session) {
        if (!work_)
            return;
        // In this order: what it says last is then taken too.
        const bool ended = !work_->is_running();
        if (std::optional<Answer> answer = work_->take()) {
            answer_ = std::move(answer);
            ++number_;
            answer_about_ = about_;
            compare_answer();
            ++version_;
        }
        if (!ended)
            return;
        if (const auto failure = work_->take_failure())
            session.notice = broke_off(name_, *failure);
        work_.reset();
        ++version_;
    }
    /// What runs is given up for this, which is about the project as it was compared last.
    void begin(typename Work::Work work) {
        about_ = now_;
        work_ = std::make_unique<Work>();
        work_->start(std::move(work));
        ++version_;
    }
    /// What it has by now is the answer.
    void finish() {
        if (work_)
            work_->finish();
    }
    /// has_tried() is false from now on.
    void try_again() { about_.reset(); }
    /// What runs is given up.
    void give_up() {
        if (!work_)
            return;
        work_.reset();
        about_.reset();
        ++version_;
    }
    /// Forgets everything.
    void clear() {
        work_.reset();
        answer_.reset();
        ++number_;
        now_.reset();
        about_.reset();
        answer_about_.reset();
        is_stale_ = false;
        compared_ = 0;
        ++version_;
    }

    /// The last work was about the project as it was compared last.
    [[nodiscard]] bool has_tried() const { return about_ == now_; }
    /// Something runs, or has ended and is not taken yet.
    [[nodiscard]] bool is_at_work() const { return work_ != nullptr; }
    [[nodiscard]] bool is_running() const { return work_ && work_->is_running(); }
    [[nodiscard]] double done() const { return work_ ? work_->done() : 1; }  ///< 0 to 1.

    /// The last one; empty before the first.
    [[nodiscard]] const std::optional<Answer>& answer() const { return answer_; }
    /// It is of another project than was compared last, or there is none.
    [[nodiscard]] bool is_stale() const { return !answer_ || is_stale_; }
    /// Grows whenever answer() or is_stale() may have changed, and as work begins and ends.
    [[nodiscard]] std::uint64_t version() const { return version_; }
    /// Grows with every other answer().
    [[nodiscard]] std::uint64_t number() const { return number_; }

  private:
    void compare_answer() {
        if (const bool was_stale = std::exchange(is_stale_, answer_about_ != now_);
            was_stale != is_stale_)
            ++version_;
    }

    std::string_view name_;
    Essence essence_;
    std::unique_ptr<Work> work_;
    std::optional<Answer> answer_;
    // Of each only what an answer depends on.
    std::optional<wall::Project> now_;           ///< The session's kept project,
    std::uint64_t compared_ = 0;                 ///< of this version.
    std::optional<wall::Project> about_;         ///< What the last work began with.
    std::optional<wall::Project> answer_about_;  ///< What answer_ is of.
    bool is_stale_ = false;
    std::uint64_t version_ = 1;
    std::uint64_t number_ = 0;
};

}  // namespace wallwright::desk
