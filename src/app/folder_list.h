// What a folder holds, as a file dialog lists it.
#pragma once

#include <filesystem>
#include <span>
#include <string>
#include <vector>

namespace wallwright::app {

struct FolderList {
    std::filesystem::path folder;
    std::vector<std::string> folders;
    std::vector<std::string> files;
    std::string problem;  ///< Why it could not be read; empty when it could.
};

/// Names in the order of the alphabet, whatever their case; files with one of the endings
/// (".json"), whatever its case. What begins with a dot is left out.
FolderList list_folder(const std::filesystem::path& folder, std::span<const std::string> endings);

/// Whether the name ends in one of the endings, whatever its case.
bool has_ending(const std::filesystem::path& name, std::span<const std::string> endings);

}  // namespace wallwright::app
