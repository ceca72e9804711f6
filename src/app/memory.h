// What the panels remember from one frame to the next and no file holds: words under edit, where
// the pointer rests, labels of fixes.
#pragma once

#include "wall/finding.h"

#include <imgui.h>

#include <algorithm>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace wallwright::app {

/// Words in a field that are not yet, or cannot be, the value they stand for.
struct TextEdit {
    std::string text;
    std::string reason;    ///< Why the words cannot be read; empty while nobody asked.
    bool active = false;   ///< The field has the keyboard.
    bool refocus = false;  ///< Give it the keyboard again.
    int seen = 0;          ///< The last frame in which the field was there.
};

/// Edits by the field's id. One whose field was not there in the frame before is given up.
class TextEdits {
  public:
    /// Null where there is none. Good until the next call of open() or close().
    TextEdit* find(ImGuiID id) {
        const auto found = edits_.find(id);
        if (found == edits_.end())
            return nullptr;
        if (is_stale(found->second)) {
            edits_.erase(found);
            return nullptr;
        }
        found->second.seen = ImGui::GetFrameCount();
        return &found->second;
    }
    TextEdit& open(ImGuiID id) {
        std::erase_if(edits_, [](const auto& edit) { return is_stale(edit.second); });
        TextEdit& edit = edits_[id];
        edit.seen = ImGui::GetFrameCount();
        return edit;
    }
    void close(ImGuiID id) { edits_.erase(id); }

  private:
    static bool is_stale(const TextEdit& edit) { return edit.seen < ImGui::GetFrameCount() - 1; }

    std::map<ImGuiID, TextEdit> edits_;
};

/// The item on which the pointer rests, by its corner, and since when.
struct Rest {
    ImVec2 item{-1, -1};
    double since = 0;
    int frame = 0;
};

/// What the fix of each finding is called, worked out once for a version of the project.
struct FixLabels {
    struct Entry {
        wall::Finding finding;
        std::string label;  ///< Empty when only the person can mend it.
    };
    std::uint64_t version = 0;
    std::vector<Entry> entries;
};

struct Memory {
    bool focus_next_field = false;  ///< The next field that is drawn gets the keyboard.
    TextEdits edits;
    Rest rest;
    FixLabels fixes;
    std::string subject;             ///< Of the column in the last frame.
    bool all_measures = false;       ///< The score shows all of them, not the first few alone.
    wall::Size new_frame{400, 500};  ///< mm; of the frame that would be added next.
    /// A frame is to be drawn after so many seconds though nothing happens. The loop takes it.
    std::optional<double> wake_in;

    void wake(double seconds) { wake_in = std::min(wake_in.value_or(seconds), seconds); }
};

}  // namespace wallwright::app
