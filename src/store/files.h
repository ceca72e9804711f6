// Whole files in and out, so that a crash or a full disk never leaves half of one.
#pragma once

#include "base/problem.h"

#include <filesystem>
#include <string>
#include <string_view>

namespace wallwright::store {

/// The bytes of a file; a Problem names it and says what the system says.
Result<std::string> read_file(const std::filesystem::path& path);

/// Writes beside it, fsyncs, renames over it, fsyncs the folder: after a crash there is the old
/// file or the new one. Keeps the permissions of a file that was there. Follows a symbolic link to
/// its target. "-" is not special.
Outcome write_file(const std::filesystem::path& path, std::string_view bytes);

}  // namespace wallwright::store
