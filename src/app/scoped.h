// Begin and end of ImGui's stacks as one thing: a missed end stops the program.
#pragma once

#include <imgui.h>

namespace wallwright::app {

/// For windows of panels: arrows and Tab walk through them only while a field is typed in; else
/// they are for the wall.
inline ImGuiWindowFlags keys_for_fields() {
    return ImGui::GetIO().WantTextInput ? 0 : ImGuiWindowFlags_NoNavInputs;
}

/// The base of all: neither copied nor moved.
class Scoped {
  public:
    Scoped() = default;
    Scoped(const Scoped&) = delete;
    Scoped& operator=(const Scoped&) = delete;
    ~Scoped() = default;
};

class ScopedId : Scoped {
  public:
    explicit ScopedId(const char* id) { ImGui::PushID(id); }
    explicit ScopedId(int id) { ImGui::PushID(id); }
    ~ScopedId() { ImGui::PopID(); }
};

/// Null is ImGui's own font.
class ScopedFont : Scoped {
  public:
    explicit ScopedFont(ImFont* font) { ImGui::PushFont(font); }
    ~ScopedFont() { ImGui::PopFont(); }
};

class ScopedColour : Scoped {
  public:
    ScopedColour(ImGuiCol what, ImU32 colour) { ImGui::PushStyleColor(what, colour); }
    ~ScopedColour() { ImGui::PopStyleColor(); }
};

class ScopedGroup : Scoped {
  public:
    ScopedGroup() { ImGui::BeginGroup(); }
    ~ScopedGroup() { ImGui::EndGroup(); }
};

/// Text wraps at the right edge of what there is.
class ScopedWrap : Scoped {
  public:
    ScopedWrap() { ImGui::PushTextWrapPos(0); }
    ~ScopedWrap() { ImGui::PopTextWrapPos(); }
};

class ScopedDisabled : Scoped {
  public:
    explicit ScopedDisabled(bool disabled) { ImGui::BeginDisabled(disabled); }
    ~ScopedDisabled() { ImGui::EndDisabled(); }
};

}  // namespace wallwright::app
