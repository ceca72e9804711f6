// A person at the whole window, with settings in a folder of their own.
#pragma once

#include "app/state.h"
#include "headless.h"
#include "support/command.h"

namespace wallwright::app {

/// A variable of the environment for as long as this is there.
class OwnVariable {
  public:
    OwnVariable(const char* name, const std::string& value);
    ~OwnVariable();
    OwnVariable(const OwnVariable&) = delete;
    OwnVariable& operator=(const OwnVariable&) = delete;

  private:
    const char* name_;
    std::optional<std::string> before_;
};

/// Settings and recovery in a folder of their own.
class OwnSettings {
  public:
    explicit OwnSettings(const std::string& folder)
        : config_("XDG_CONFIG_HOME", folder), state_("XDG_STATE_HOME", folder + "/state") {}

  private:
    OwnVariable config_;
    OwnVariable state_;
};

class Person {
  public:
    explicit Person(wall::Project project, ImVec2 size = {1280, 800}, float scale = 1);

    test::ScratchFolder folder;  ///< For files; dialogs begin in it.
    test::ScratchFolder config;
    OwnSettings settings;
    State state;
    Headless window;

    template <class Kind>
    [[nodiscard]] Kind* dialog() {
        return std::get_if<Kind>(&state.dialog);
    }
    [[nodiscard]] bool has_dialog() const {
        return !std::holds_alternative<std::monostate>(state.dialog);
    }
    /// A step of the history, so that there is work to save.
    void work();
    /// Names of items that cover a part of each other, of those whose name begins so.
    [[nodiscard]] std::vector<std::string> overlaps(const std::string& prefix) const;
    /// Names of those that are not wholly in sight.
    [[nodiscard]] std::vector<std::string> cut_off(const std::string& prefix) const;
};

}  // namespace wallwright::app
