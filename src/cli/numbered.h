// A folder of alternatives or stages: for each the project and a picture of it.
#pragma once

#include "cli/load.h"

#include <string>
#include <vector>

namespace wallwright::cli {

inline constexpr double kPixelsPerMm = 5;  ///< Of a picture's page, unless the person says.

/// Makes the folder with those above it where it is not there; a Problem names it.
Outcome make_folder(const std::string& folder);

/// What goes into the folder: NAME-FIRST.json and .png for the first project, and so on.
struct Numbered {
    std::string name;
    int first = 1;
    std::vector<wall::Project> projects;  ///< At least one.
    bool are_stages = false;              ///< Of one growth: each picture shows what is new.
};

/// Into the folder, which is there. Nothing is written before everything is painted. What to say on
/// standard error about it.
Result<std::string> write_numbered(const std::string& folder, const Numbered& numbered,
                                   const Loaded& loaded);

}  // namespace wallwright::cli
