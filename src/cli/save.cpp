#include "cli/save.h"

#include "store/files.h"
#include "store/json_project.h"
#include "store/picture_names.h"

namespace wallwright::cli {

std::string text_in(const std::filesystem::path& folder, const wall::Project& project,
                    const Loaded& loaded) {
    return store::write_project(store::with_pictures_from(project, loaded.folder, folder));
}

Outcome save(const wall::Project& project, const Loaded& loaded,
             const std::filesystem::path& file) {
    return store::write_file(file, text_in(file.parent_path(), project, loaded));
}

}  // namespace wallwright::cli
