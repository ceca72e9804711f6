#include "app/folder_list.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>

namespace wallwright::app {

namespace {

/// ASCII alone: other alphabets keep their bytes, which puts them after it.
std::string lower(std::string text) {
    for (char& c : text)
        c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return text;
}

void sort_names(std::vector<std::string>& names) {
    std::ranges::sort(names, [](const std::string& a, const std::string& b) {
        return std::pair(lower(a), a) < std::pair(lower(b), b);
    });
}

/// What a link points to may be gone or out of reach: such an entry is not listed.
void add(FolderList& list, const std::filesystem::directory_entry& entry,
         std::span<const std::string> endings) {
    std::string name = entry.path().filename().string();
    std::error_code unreadable;
    if (name.starts_with('.'))
        return;
    if (entry.is_directory(unreadable))
        list.folders.push_back(std::move(name));
    else if (entry.is_regular_file(unreadable) && has_ending(name, endings))
        list.files.push_back(std::move(name));
}

}  // namespace

bool has_ending(const std::filesystem::path& name, std::span<const std::string> endings) {
    const std::string ending = lower(name.extension().string());
    return std::ranges::find(endings, ending) != endings.end();
}

FolderList list_folder(const std::filesystem::path& folder, std::span<const std::string> endings) {
    FolderList list;
    list.folder = folder;
    std::error_code error;
    std::filesystem::directory_iterator entry(folder, error);
    while (!error && entry != std::filesystem::directory_iterator()) {
        add(list, *entry, endings);
        entry.increment(error);
    }
    if (error)
        list.problem =
            fmt::format("This folder cannot be read: {}. Choose another.", error.message());
    sort_names(list.folders);
    sort_names(list.files);
    return list;
}

}  // namespace wallwright::app
