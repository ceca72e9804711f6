// A project to where the person wants it, wherever it was read.
#pragma once

#include "cli/load.h"

#include <filesystem>
#include <string>

namespace wallwright::cli {

/// The text of a file that is to lie in `folder`: the pictures are found from there.
std::string text_in(const std::filesystem::path& folder, const wall::Project& project,
                    const Loaded& loaded);

/// Writes the file; a Problem names it.
Outcome save(const wall::Project& project, const Loaded& loaded, const std::filesystem::path& file);

}  // namespace wallwright::cli
