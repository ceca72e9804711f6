// Where each named item of the last frame stands: for tests that click by name, and for nothing
// else.
#pragma once

#include <imgui.h>

#include <map>
#include <string>

namespace wallwright::app {

struct ItemBox {
    ImVec2 min;
    ImVec2 max;
    ImVec4 clip;  ///< What of the window could be seen there.
    bool enabled = true;
};

class Probe {
  public:
    /// Call at the start of each frame.
    void begin_frame() { items_.clear(); }
    /// The item that ImGui was given last, under a name such as "column/width". Names are ours,
    /// never a person's words.
    void note(const std::string& name, bool enabled = true);
    /// Something that is painted and no item of ImGui's: a piece on the wall.
    void note_box(const std::string& name, ImVec2 min, ImVec2 max);
    [[nodiscard]] const std::map<std::string, ItemBox>& items() const { return items_; }

  private:
    std::map<std::string, ItemBox> items_;
};

}  // namespace wallwright::app
