// The project file: JSON with a format name and a version. assets/schema/project.schema.json says
// the same to other programs.
#pragma once

#include "base/problem.h"
#include "wall/project.h"

#include <string>
#include <string_view>

namespace wallwright::store {

inline constexpr std::string_view kFormatName = "wallwright-project";
inline constexpr int kFormatVersion = 1;

/// Text to a sound project (wall/validity.h). A later version is refused with the version that is
/// needed; unknown keys are kept. `name` stands in for the file's name in problems; places are JSON
/// paths with ids ("pieces/kelp/width_mm"), and for text that is not JSON the line, with a caret.
Result<wall::Project> read_project(std::string_view text, const std::string& name);

/// Canonical text: fixed key order, lengths to 0.01 mm, two spaces, LF. read_project of it gives
/// the same project, and writing that again the same text.
std::string write_project(const wall::Project& project);

}  // namespace wallwright::store
