// What was done, step by step, each with its name: undo and redo.
#pragma once

#include "wall/project.h"

#include <cstddef>
#include <memory>
#include <string>
#include <vector>

namespace wallwright::edits {

/// States of one project in the order they were made, with a place in it that is now. The oldest go
/// when there are more than kMost.
class History {
  public:
    static constexpr std::size_t kMost = 500;

    explicit History(wall::Project first);

    [[nodiscard]] const wall::Project& now() const;

    /// Another state after now; what was undone is forgotten. A state equal to now is not kept.
    /// With a `burst` that is not empty and that of the step before, it replaces that step: arrow
    /// keys held down are one step, and none when they come back to where they began.
    void push(std::string label, wall::Project project, const std::string& burst = "");
    /// The next push begins a step of its own whatever its burst. So it does after undo, redo and
    /// mark_saved.
    void end_burst();

    [[nodiscard]] bool can_undo() const;
    [[nodiscard]] bool can_redo() const;
    /// The name of the step that undo or redo would take: "Move Kelp". Empty when there is none.
    [[nodiscard]] const std::string& undo_label() const;
    [[nodiscard]] const std::string& redo_label() const;
    /// Nothing happens when there is no step to take.
    void undo();
    void redo();

    /// Whether now is equal to what mark_saved was last called at; true for a new history.
    [[nodiscard]] bool is_saved() const;
    void mark_saved();
    /// Now counts as unsaved until mark_saved: for work that was recovered.
    void mark_unsaved();

  private:
    struct State {
        std::string label;
        std::string burst;
        std::shared_ptr<const wall::Project> project;
    };
    std::vector<State> states_;
    std::size_t now_ = 0;
    std::shared_ptr<const wall::Project> saved_;
};

}  // namespace wallwright::edits
