// The person's settings of the app, in a file of their own: appearance, text size, recent files.
#pragma once

#include "base/problem.h"

#include <filesystem>
#include <vector>

namespace wallwright::store {

struct Preferences {
    static constexpr double kLeastScale = 0.75;
    static constexpr double kMostScale = 2.5;
    static constexpr std::size_t kMostRecent = 10;

    bool dark = false;
    double text_scale = 1;                      ///< kLeastScale to kMostScale.
    std::vector<std::filesystem::path> recent;  ///< Newest first, at most kMostRecent.
    bool operator==(const Preferences&) const = default;
};

/// A file that cannot be read gives the usual settings, and so does each value that makes no sense.
Preferences read_preferences(const std::filesystem::path& file);
/// Makes the folder where there is none.
Outcome write_preferences(const std::filesystem::path& file, const Preferences& preferences);

/// Puts a file first among the recent ones, once.
void remember(Preferences& preferences, const std::filesystem::path& file);

}  // namespace wallwright::store
