// The names of pictures when a project goes to another folder.
#pragma once

#include "wall/project.h"

#include <filesystem>

namespace wallwright::store {

/// The project with the names of its prints' pictures, which start from the folder `from`, as they
/// read from the folder `to`. Full paths stay.
wall::Project with_pictures_from(wall::Project project, const std::filesystem::path& from,
                                 const std::filesystem::path& to);

}  // namespace wallwright::store
