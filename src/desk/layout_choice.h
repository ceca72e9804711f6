// Layouts to choose from for the open wall: the search for them, and which of them is being shown.
#pragma once

#include "arrange/arrange.h"
#include "desk/background.h"
#include "desk/session.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace wallwright::desk {

/// "Spine".
std::string_view title_of(arrange::Pattern pattern);
/// The name of the step that takes such a layout: "Arrange as a spine".
std::string step_of(arrange::Pattern pattern);

/// One of the layouts, as it stands under the weights of now.
struct RankedLayout {
    arrange::Candidate candidate;
    double total = 0;        ///< 0 to 100.
    bool on_wall = false;    ///< The kept project has every piece where the layout has it.
    std::size_t number = 0;  ///< Which of the search's; stays while the order changes.
};

/// The layouts belong to a wall and what hangs on it. Where free pieces have their places, and how
/// much each measure counts, is no part of that, so that one can be taken after another; after any
/// other change they are stale, and neither shown nor taken until it is undone.
class LayoutChoice {
  public:
    /// Of the next search. Its seed grows by one with each search but the first.
    arrange::ArrangeOptions options;

    /// Empty when layouts can be searched for, else why not.
    [[nodiscard]] static std::string hindrance(const Session& session);

    /// Begins a search for the kept project. What was found before goes. Nothing may hinder it.
    void search(Session& session);
    /// What it has found by now stays.
    void stop();
    /// Stops, and puts the layouts away.
    void close(Session& session);

    /// Something was searched for and not yet put away.
    [[nodiscard]] bool is_open() const { return task_ != nullptr; }
    [[nodiscard]] bool is_searching() const { return work_ && work_->is_running(); }
    [[nodiscard]] double done() const { return work_ ? work_->done() : 0; }  ///< 0 to 1.

    /// Once a frame: takes what was found and puts it in order. While a layout is shown, what was
    /// found waits, so that nothing changes under the hand. Tells when the search broke off.
    void update(Session& session);

    /// As of update(), the best first: those with more pieces, then the higher total.
    [[nodiscard]] std::span<const RankedLayout> layouts() const { return layouts_; }
    [[nodiscard]] bool is_stale() const { return stale_; }
    /// What the layouts are of, and the wall that was searched for, with its free pieces waiting.
    /// Only while is_open().
    [[nodiscard]] const arrange::Task& task() const { return *task_; }
    [[nodiscard]] const wall::Project& wall() const { return *wall_; }

    /// Shows the layout of this rank on the wall, as a preview.
    void show(Session& session, std::size_t rank);
    /// The one after or before what is shown, going round; the first or the last when none is.
    void show_next(Session& session, int step);
    /// The wall is shown as it is again.
    void leave(Session& session);
    [[nodiscard]] std::optional<std::size_t> shown() const;  ///< Its rank.
    /// Keeps the layout of this rank as one step.
    void take(Session& session, std::size_t rank);

    /// How much a measure counts from now on, 0 to 10. The layouts stand in the new order at once;
    /// what is shown stays so. Changes of one measure in a row are one step.
    void set_weight(Session& session, const arrange::Measure& measure, double weight);

  private:
    using Found = std::vector<arrange::Candidate>;

    void take_found();
    void tell_failure(Session& session);
    void rank(const Session& session);
    [[nodiscard]] bool can_show(const Session& session, std::size_t rank);
    void preview(Session& session, const RankedLayout& layout);

    std::unique_ptr<Background<Found>> work_;
    std::shared_ptr<const arrange::Task> task_;
    std::optional<wall::Project> wall_;  ///< What the layouts belong to: essence() of it.
    std::vector<RankedLayout> layouts_;
    std::optional<std::size_t> shown_;  ///< Its number.
    std::uint64_t shown_version_ = 0;   ///< Of the session with the preview.
    std::uint64_t ranked_for_ = 0;      ///< Of the kept project; 0 when they are to be ranked anew.
    bool stale_ = false;
    bool has_searched_ = false;
};

}  // namespace wallwright::desk
