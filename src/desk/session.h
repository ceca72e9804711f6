// One open wall and what a person does with it: the app without its window.
#pragma once

#include "desk/selection.h"
#include "edits/history.h"
#include "rules/assess.h"

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>

namespace wallwright::desk {

/// A sentence for the person: what could not be done, or what was.
struct Notice {
    bool is_problem = false;
    std::string text;
};

class Session {
  public:
    /// `file` is where the project came from, empty for a new one. `pictures` is where the names of
    /// its pictures start from; when empty, the folder of the file.
    explicit Session(wall::Project project, std::filesystem::path file = {},
                     std::filesystem::path pictures = {});

    /// What is to be shown: the preview of a gesture, or else the last state.
    [[nodiscard]] const wall::Project& project() const;
    /// The state that undo steps lead to and from, without any preview.
    [[nodiscard]] const wall::Project& kept() const { return history_.now(); }
    /// Of project(); worked out when it is first asked for after a change.
    [[nodiscard]] const rules::Assessment& assessment() const;
    [[nodiscard]] wall::Catalogue catalogue() const;
    /// Grows whenever project() changes; no two sessions ever have the same.
    [[nodiscard]] std::uint64_t version() const { return version_; }
    /// Grows whenever kept() may have changed.
    [[nodiscard]] std::uint64_t kept_version() const { return kept_version_; }

    /// Keeps a changed project as a step named `label`, or tells the Problem as a notice and
    /// changes nothing. Steps of one `burst` in a row are one step. True when it was kept.
    bool apply(std::string label, Result<wall::Project> changed, const std::string& burst = "");

    /// While something is dragged: shown, but no step yet. A Problem keeps the preview before it.
    void preview(Result<wall::Project> changed);
    [[nodiscard]] bool has_preview() const { return preview_.has_value(); }
    /// The preview becomes a step; nothing without one.
    void keep_preview(std::string label);
    void drop_preview();

    [[nodiscard]] const edits::History& history() const { return history_; }
    void undo();
    void redo();
    /// The next apply() begins a step of its own whatever its burst.
    void end_burst() { history_.end_burst(); }

    [[nodiscard]] const std::filesystem::path& file() const { return file_; }
    /// Where the prints' file names start from, in every step of the history: saving in another
    /// folder changes the names in the file only.
    [[nodiscard]] std::string picture_folder() const;
    [[nodiscard]] bool is_saved() const { return history_.is_saved(); }
    /// kept() has been written to `file`.
    void saved_as(std::filesystem::path file);
    void mark_unsaved() { history_.mark_unsaved(); }

    Selection selection;
    /// The place to point out on the wall, as of the finding that was chosen.
    std::optional<geometry::Rect<geometry::Wall>> pointed_out;
    std::optional<Notice> notice;
    /// A hash of what file() held when it was opened or saved here last, for desk::save.
    std::optional<std::size_t> held;

  private:
    void changed();
    void kept_changed();

    edits::History history_;
    std::optional<wall::Project> preview_;
    std::filesystem::path file_;
    std::filesystem::path pictures_;
    std::uint64_t version_;
    std::uint64_t kept_version_;
    mutable std::optional<rules::Assessment> assessment_;
};

}  // namespace wallwright::desk
