#include "store/picture_names.h"

namespace wallwright::store {

namespace fs = std::filesystem;

namespace {

/// The folder by its full name, links followed: ".." in a name leads up from where it really is.
fs::path really(const fs::path& folder) {
    std::error_code error;
    const fs::path full = fs::absolute(folder.empty() ? "." : folder, error).lexically_normal();
    fs::path real = fs::weakly_canonical(full, error);
    return error ? full : real;
}

}  // namespace

wall::Project with_pictures_from(wall::Project project, const fs::path& from, const fs::path& to) {
    const fs::path old_folder = really(from);
    const fs::path new_folder = really(to);
    if (old_folder == new_folder)
        return project;
    for (wall::Print& print : project.prints)
        if (!print.picture.empty() && fs::path(print.picture).is_relative())
            print.picture =
                (old_folder / print.picture).lexically_normal().lexically_relative(new_folder);
    return project;
}

}  // namespace wallwright::store
