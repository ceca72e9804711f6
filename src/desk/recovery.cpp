#include "desk/documents.h"
#include "store/files.h"
#include "store/json_project.h"
#include "store/picture_names.h"

#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>

namespace wallwright::desk {

namespace fs = std::filesystem;

namespace {

constexpr const char* kProject = ".json";
constexpr const char* kOrigin = ".txt";  ///< The original and the pictures' folder, a line each.
constexpr const char* kLock = ".lock";
constexpr int kMostFiles = 1000;

fs::path beside(fs::path file, const char* ending) {
    return file.replace_extension(ending);
}

void remove_all_of(const fs::path& file) {
    std::error_code ignored;
    for (const char* ending : {kProject, kOrigin, kLock})
        fs::remove(beside(file, ending), ignored);
}

/// Names with a line end in them cannot be told so, and are then not known.
std::string line_of(const fs::path& path) {
    const std::string name = path.string();
    return name.find('\n') == std::string::npos ? name : "";
}

void read_origin(Recovery::Found& found) {
    const auto text = store::read_file(beside(found.file, kOrigin));
    if (!text)
        return;
    const std::size_t end = std::min(text->find('\n'), text->size());
    const std::size_t next = std::min(end + 1, text->size());
    found.original = text->substr(0, end);
    found.pictures = text->substr(next, text->find('\n', next) - next);
}

std::optional<Recovery::Found> read_left_behind(const fs::path& file) {
    const auto text = store::read_file(file);
    if (!text)
        return std::nullopt;
    auto project = store::read_project(*text, file.string());
    if (!project)
        return std::nullopt;
    Recovery::Found found;
    found.file = file;
    found.project = std::move(*project);
    read_origin(found);
    return found;
}

fs::file_time_type time_of(const Recovery::Found& found) {
    std::error_code error;
    return fs::last_write_time(found.file, error);
}

std::vector<fs::path> projects_in(const fs::path& folder) {
    std::vector<fs::path> files;
    std::error_code error;
    // Going on may fail as well as opening: what was listed until then is offered.
    for (fs::directory_iterator entry(folder, error); !error && entry != fs::directory_iterator();
         entry.increment(error))
        if (entry->path().extension() == kProject)
            files.push_back(entry->path());
    std::ranges::sort(files);
    return files;
}

}  // namespace

Recovery::Recovery(fs::path folder) : folder_(std::move(folder)) {}

/// A file that no other program has and none left behind. The process id alone would not do: after
/// a crash another program may have it.
Outcome Recovery::claim_file() {
    if (lock_)
        return {};
    std::error_code error;
    fs::create_directories(folder_, error);
    for (int number = 1; number <= kMostFiles; ++number) {
        const fs::path file = folder_ / fmt::format("{}-{}{}", ::getpid(), number, kProject);
        if (fs::exists(file, error))
            continue;
        if (auto lock = FileLock::take(beside(file, kLock))) {
            lock_ = std::move(lock);
            file_ = file;
            return {};
        }
    }
    return fail({folder_.string(), "no file for recovery can be made there",
                 "look at the folder's permissions and at the room on the disk", ""});
}

Outcome Recovery::keep(const Session& session) {
    if (session.is_saved()) {
        forget();
        return {};
    }
    if (written_ == session.kept_version())
        return {};
    if (auto claimed = claim_file(); !claimed)
        return claimed;
    const fs::path& original = session.file();
    const fs::path pictures =
        original.empty() ? fs::path(session.picture_folder()) : original.parent_path();
    const wall::Project project =
        store::with_pictures_from(session.kept(), session.picture_folder(), pictures);
    // The origin first: a project is never without it.
    const std::string origin = fmt::format("{}\n{}\n", line_of(original), line_of(pictures));
    if (auto written = store::write_file(beside(file_, kOrigin), origin); !written)
        return written;
    if (auto written = store::write_file(file_, store::write_project(project)); !written)
        return written;
    written_ = session.kept_version();
    return {};
}

void Recovery::forget() {
    if (lock_)
        remove_all_of(file_);
    lock_.reset();
    file_.clear();
    written_ = 0;
}

std::vector<Recovery::Found> Recovery::found() const {
    std::vector<Found> all;
    for (const fs::path& file : projects_in(folder_)) {
        if (!FileLock::take(beside(file, kLock)))
            continue;
        if (auto one = read_left_behind(file))
            all.push_back(std::move(*one));
    }
    std::ranges::stable_sort(all, std::greater<>(), time_of);
    return all;
}

void Recovery::discard(const Found& found) {
    remove_all_of(found.file);
}

}  // namespace wallwright::desk
