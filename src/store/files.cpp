#include "store/files.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <system_error>

namespace wallwright::store {

namespace fs = std::filesystem;

namespace {

constexpr int kMostLinks = 40;  ///< As many as Linux follows.
constexpr int kMostAttempts = 1000;
constexpr mode_t kAnyMode = 0666;    ///< Less what the umask takes away.
constexpr mode_t kOwnerOnly = 0600;  ///< Until it has the permissions of the file it replaces.
constexpr mode_t kPermissions = 0777;
constexpr mode_t kSpecial = 07000;  ///< Never handed to another owner.

/// An open file that is closed when it goes out of scope.
class OpenFile {
  public:
    OpenFile(const fs::path& path, int flags, mode_t mode = 0)
        : descriptor_(::open(path.c_str(), flags | O_CLOEXEC, mode)) {}
    OpenFile(const OpenFile&) = delete;
    OpenFile& operator=(const OpenFile&) = delete;
    ~OpenFile() { close(); }

    [[nodiscard]] bool is_open() const { return descriptor_ >= 0; }
    [[nodiscard]] int descriptor() const { return descriptor_; }
    /// False with errno set when the system held back an error until now.
    bool close() {
        const int descriptor = descriptor_;
        descriptor_ = -1;
        return descriptor < 0 || ::close(descriptor) == 0;
    }

  private:
    int descriptor_;
};

/// Takes the file at `path` away again unless it was kept.
class Scaffold {
  public:
    explicit Scaffold(fs::path path) : path_(std::move(path)) {}
    Scaffold(const Scaffold&) = delete;
    Scaffold& operator=(const Scaffold&) = delete;
    ~Scaffold() {
        if (!kept_)
            ::unlink(path_.c_str());
    }
    void keep() { kept_ = true; }

  private:
    fs::path path_;
    bool kept_ = false;
};

std::string remedy_for(int error, const fs::path& path) {
    const std::string folder = path.has_parent_path() ? path.parent_path().string() : ".";
    std::error_code ignored;
    switch (error) {
        case ENOENT:
        case ENOTDIR:
            return fs::is_directory(folder, ignored)
                       ? "look at its name"
                       : fmt::format("look whether the folder \"{}\" is there", folder);
        case EACCES:
        case EPERM:
        case EROFS:
            return "choose a place that you may write to, or change its permissions";
        case ENOSPC:
        case EDQUOT:
        case EFBIG:
            return "make room on the disk; a file that was there is as it was";
        case EISDIR:
            return "name a file, not a folder";
        default:
            return "";
    }
}

/// What the system says about `path`, from errno.
tl::unexpected<Problem> cannot(const char* what, const fs::path& path) {
    const int error = errno;
    return fail({path.string(),
                 fmt::format("cannot be {}: {}", what, std::generic_category().message(error)),
                 remedy_for(error, path), ""});
}

bool write_all(int descriptor, std::string_view bytes) {
    while (!bytes.empty()) {
        const ssize_t written = ::write(descriptor, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR)
            continue;
        if (written < 0)
            return false;
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
}

/// Where the bytes shall end up: the far end of a chain of links, also when nothing is there yet.
fs::path link_target(fs::path path) {
    std::error_code ignored;
    for (int i = 0; i < kMostLinks && fs::is_symlink(path, ignored); ++i)
        path = path.parent_path() / fs::read_symlink(path, ignored);
    return path;
}

/// A pipe, a terminal, /dev/stdout: nothing that could be replaced.
Outcome write_through(const fs::path& path, std::string_view bytes) {
    OpenFile file(path, O_WRONLY);
    if (!file.is_open() || !write_all(file.descriptor(), bytes) || !file.close())
        return cannot("written", path);
    return {};
}

/// Owner as far as the system lets us, and permissions, in this order: a change of owner takes
/// permissions away.
bool match(int descriptor, const struct stat& old) {
    struct stat now {};
    if (::fstat(descriptor, &now) != 0)
        return false;
    const bool same_owner = now.st_uid == old.st_uid && now.st_gid == old.st_gid;
    const bool ours_to_give = same_owner || ::fchown(descriptor, old.st_uid, old.st_gid) == 0;
    return ::fchmod(descriptor,
                    old.st_mode & (ours_to_give ? kPermissions | kSpecial : kPermissions)) == 0;
}

/// The rename itself is on the disk only once the folder is.
bool sync_folder(const fs::path& folder) {
    const OpenFile opened(folder, O_RDONLY | O_DIRECTORY);
    // EINVAL: some file systems have nothing to sync. Asked once, since an error is told only once.
    return opened.is_open() && (::fsync(opened.descriptor()) == 0 || errno == EINVAL);
}

fs::path scaffold_path(const fs::path& folder, int attempt) {
    return folder / fmt::format(".wallwright-{}-{}.tmp", ::getpid(), attempt);
}

Outcome replace(const fs::path& target, std::string_view bytes, const struct stat* old) {
    const fs::path folder = target.has_parent_path() ? target.parent_path() : fs::path(".");
    for (int attempt = 0; attempt < kMostAttempts; ++attempt) {
        const fs::path path = scaffold_path(folder, attempt);
        OpenFile file(path, O_WRONLY | O_CREAT | O_EXCL, old != nullptr ? kOwnerOnly : kAnyMode);
        if (!file.is_open() && errno == EEXIST)
            continue;
        if (!file.is_open())
            return cannot("written", target);
        Scaffold scaffold(path);
        if ((old != nullptr && !match(file.descriptor(), *old)) ||
            !write_all(file.descriptor(), bytes) || ::fsync(file.descriptor()) != 0 ||
            !file.close() || ::rename(path.c_str(), target.c_str()) != 0)
            return cannot("written", target);
        scaffold.keep();
        if (!sync_folder(folder))
            return cannot("written for certain", target);
        return {};
    }
    return fail(
        {target.string(),
         fmt::format("cannot be written: the folder holds {} unfinished files", kMostAttempts),
         "remove the files .wallwright-*.tmp there", ""});
}

}  // namespace

Result<std::string> read_file(const fs::path& path) {
    OpenFile file(path, O_RDONLY);
    if (!file.is_open())
        return cannot("read", path);
    std::string bytes;
    std::array<char, 65536> block{};
    for (;;) {
        const ssize_t count = ::read(file.descriptor(), block.data(), block.size());
        if (count < 0 && errno == EINTR)
            continue;
        if (count < 0)
            return cannot("read", path);
        if (count == 0)
            return bytes;
        bytes.append(block.data(), static_cast<std::size_t>(count));
    }
}

Outcome write_file(const fs::path& path, std::string_view bytes) {
    struct stat old {};
    const bool there = ::stat(path.c_str(), &old) == 0;
    if (!there && errno != ENOENT)
        return cannot("written", path);
    if (!there)
        return replace(link_target(path), bytes, nullptr);
    if (S_ISDIR(old.st_mode)) {
        errno = EISDIR;
        return cannot("written", path);
    }
    if (!S_ISREG(old.st_mode))
        return write_through(path, bytes);
    if (::access(path.c_str(), W_OK) != 0)
        return cannot("written", path);
    return replace(link_target(path), bytes, &old);
}

}  // namespace wallwright::store
