#include "desk/documents.h"

#include <cstdlib>

namespace wallwright::desk {

namespace fs = std::filesystem;

namespace {

/// A relative path in such a variable is to be ignored, says the specification.
fs::path full_path_in(const char* variable) {
    const char* value = std::getenv(variable);
    const fs::path path = value == nullptr ? "" : value;
    return path.is_absolute() ? path : fs::path();
}

fs::path folder_for_passing_things() {
    std::error_code error;
    const fs::path folder = fs::temp_directory_path(error);
    return error ? "/tmp" : folder;
}

fs::path folder(const char* variable, const char* under_home) {
    fs::path base = full_path_in(variable);
    if (base.empty()) {
        const fs::path home = full_path_in("HOME");
        base = home.empty() ? folder_for_passing_things() : home / under_home;
    }
    return base / "wallwright";
}

}  // namespace

fs::path settings_folder() {
    return folder("XDG_CONFIG_HOME", ".config");
}

fs::path state_folder() {
    return folder("XDG_STATE_HOME", ".local/state");
}

}  // namespace wallwright::desk
